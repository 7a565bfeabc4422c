using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.CommandLine;

/// <content>Options of which there may be several, each a word of its own or with commas between them.</content>
internal sealed partial class OptionWords
{
    /// <summary>Ages, one a word or with commas between them.</summary>
    public IReadOnlyList<Age> Ages(Option<string[]> option) => Several<Age>(option, QuantityText.TryAge);

    /// <summary>Dates, one a word or with commas between them.</summary>
    public IReadOnlyList<DateOnly> Dates(Option<string[]> option) => Several<DateOnly>(option, QuantityText.TryDate);

    /// <summary>Weights above 0, one a word or with commas between them; in order, and each once.</summary>
    public IReadOnlyList<Mass> Weights(Option<string[]> option) =>
    [
        .. Several<Mass>(option, TryWeight).DistinctBy(weight => weight.Kilograms).OrderBy(weight => weight.Kilograms),
    ];

    /// <summary>Weigh-ins to come: how many birds at which age.</summary>
    public IReadOnlyList<(int Birds, Age Age)> WeighIns(Option<string[]> option) => Several<(int Birds, Age Age)>(option, TryWeighIn);

    private static bool TryWeight(ReadOnlySpan<char> text, out Mass weight, [NotNullWhen(false)] out string? problem)
    {
        problem = QuantityText.TryMass(text, out weight, out string? fault) && weight.Kilograms == 0
            ? "\"" + text.ToString() + "\" is out of range; expected a weight above 0"
            : fault;
        return problem is null;
    }

    private static bool TryWeighIn(ReadOnlySpan<char> text, out (int Birds, Age Age) weighIn, [NotNullWhen(false)] out string? problem)
    {
        int sign = text.IndexOf('@');
        weighIn = default;
        if (sign < 0 || !TryCount(text[..sign].Trim(), least: 1, out int birds))
        {
            problem = "\"" + text.ToString() + "\" is no weigh-in; expected a number of birds, @ and their age, as in 30@35d";
            return false;
        }

        if (!QuantityText.TryAge(text[(sign + 1)..], out Age age, out problem))
        {
            return false;
        }

        weighIn = (birds, age);
        return true;
    }

    private static IEnumerable<string> Parts(string text)
    {
        // "49,5d" is one age with a decimal comma, and is told so; a comma after a unit or a date parts two.
        int from = 0;
        for (int at = 1; at < text.Length; at++)
        {
            if (text[at] == ',' && (char.IsAsciiLetter(text[at - 1]) || text[from..at].Contains('-', StringComparison.Ordinal)))
            {
                yield return text[from..at].Trim();
                from = at + 1;
            }
        }

        yield return text[from..].Trim();
    }

    private List<T> Several<T>(Option<string[]> option, TryRead<T> read)
        where T : struct
    {
        List<T> values = [];
        foreach (string part in Texts(option).SelectMany(Parts))
        {
            if (read(part, out T value, out string? problem))
            {
                values.Add(value);
            }
            else
            {
                Refuse(option.Name + ": " + problem);
            }
        }

        return values;
    }
}
