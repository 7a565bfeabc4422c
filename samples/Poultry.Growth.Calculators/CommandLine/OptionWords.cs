using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Turns the words of a command line into quantities and keeps every problem, so that all are told at once.</summary>
internal sealed partial class OptionWords(ParseResult parsed)
{
    private readonly List<string> problems = [];

    public IReadOnlyList<string> Problems => problems;

    public void Refuse(string problem) => problems.Add(problem);

    public string? Text(Argument<string?> argument) => parsed.GetValue(argument);

    public string? Text(Option<string?> option) => parsed.GetValue(option);

    public IReadOnlyList<string> Texts(Option<string[]> option) => parsed.GetValue(option) ?? [];

    public bool Given(Option<bool> flag) => parsed.GetValue(flag);

    /// <summary>Whether an option stands there, with a word behind it or not.</summary>
    public bool Stands(Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>Counts and figures that have no unit, as one number.</summary>
    public double? Number(Option<string?> option, double low, double high, string expected)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        bool isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number);
        string? fault = isNumber ? null : text.Contains(',', StringComparison.Ordinal) ? "has a decimal comma" : "is not a number";
        return fault is null
            ? Holds(number >= low && number <= high, option, expected) ? number : null
            : Nothing<double>(option, "\"" + text + "\" " + fault + "; expected " + expected);
    }

    /// <summary>The chance that intervals claim: 0.90.</summary>
    public double? Level(Option<string?> option) => Number(option, 0.5, 0.999, "a number between 0.5 and 0.999, as in 0.90");

    /// <summary>A number of birds, 1 or more.</summary>
    public int? Birds(Option<string?> option) => Count(option, "birds");

    /// <summary>A number of things that are counted, the least or more.</summary>
    public int? Count(Option<string?> option, string what, int least = 1)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        return TryCount(text, least, out int count)
            ? count
            : Nothing<int>(option, string.Create(CultureInfo.InvariantCulture, $"\"{text}\" is not a number of {what}; expected a whole number of {least} or more"));
    }

    /// <summary>A whole number within bounds.</summary>
    public int? Whole(Option<string?> option, int low, int high)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= low && number <= high
            ? number
            : Nothing<int>(option, "\"" + text + "\" is out of range; expected " + string.Create(CultureInfo.InvariantCulture, $"a whole number, {low} to {high}"));
    }

    /// <summary>One of some names, in capitals or not; the first where none is given.</summary>
    public T Choice<T>(Option<string?> option, params IReadOnlyList<(string Name, T Value)> choices)
    {
        string name = parsed.GetValue(option) ?? choices[0].Name;
        foreach ((string known, T value) in choices)
        {
            if (name.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        Refuse(option.Name + ": \"" + name + "\" is unknown; expected " + string.Join(", ", choices.Select(choice => choice.Name)));
        return choices[0].Value;
    }

    /// <summary>The birds; cockerels and pullets mixed where nothing is said.</summary>
    public Sex Sex(Option<string?> option) => Choice(option, ("mixed", Primitives.Sex.Mixed), ("male", Primitives.Sex.Male), ("female", Primitives.Sex.Female));

    /// <summary>The greatest number of all is left out: whoever counts one further would pass the end.</summary>
    private static bool TryCount(ReadOnlySpan<char> text, int least, out int count) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count >= least && count < int.MaxValue;

    private bool Holds(bool condition, Option<string?> option, string expected)
    {
        if (!condition)
        {
            Refuse(option.Name + ": \"" + parsed.GetValue(option) + "\" is out of range; expected " + expected);
        }

        return condition;
    }

    private T? Nothing<T>(Option option, string problem)
        where T : struct
    {
        Refuse(option.Name + ": " + problem);
        return null;
    }
}
