using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Turns the words of a command line into quantities and keeps every problem, so that all are told at once.</summary>
internal sealed class OptionWords(ParseResult parsed)
{
    private readonly List<string> problems = [];

    private delegate bool TryRead<T>(ReadOnlySpan<char> text, out T value, [NotNullWhen(false)] out string? problem);

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

    /// <summary>A weight above 0.</summary>
    public Mass? Weight(Option<string?> option) => Read<Mass>(option, QuantityText.TryMass) is { } weight && Holds(weight.Kilograms > 0, option, "a weight above 0")
        ? weight
        : null;

    public Age? Age(Option<string?> option) => Read<Age>(option, QuantityText.TryAge);

    public DateOnly? Date(Option<string?> option) => Read<DateOnly>(option, QuantityText.TryDate);

    public WeightUnit? WeightUnit(Option<string?> option) => Read<WeightUnit>(option, QuantityText.TryWeightUnit);

    public Temperature? Temperature(Option<string?> option) => Read<Temperature>(option, QuantityText.TryTemperature);

    public Duration? Duration(Option<string?> option) => Read<Duration>(option, QuantityText.TryDuration);

    public Length? Length(Option<string?> option) => Read<Length>(option, QuantityText.TryLength);

    public Area? Area(Option<string?> option) => Read<Area>(option, QuantityText.TryArea);

    public StockingDensity? FloorLoad(Option<string?> option) => Read<StockingDensity>(option, QuantityText.TryFloorLoad);

    public AreaDensity? FieldLoad(Option<string?> option) => Read<AreaDensity>(option, QuantityText.TryFieldLoad);

    public SpecificEnergy? FeedEnergy(Option<string?> option) => Read<SpecificEnergy>(option, QuantityText.TryFeedEnergy);

    public MassFlow? DailyWeight(Option<string?> option) => Read<MassFlow>(option, QuantityText.TryDailyWeight);

    public UnitPrice? UnitPrice(Option<string?> option) => Read<UnitPrice>(option, QuantityText.TryUnitPrice);

    public Speed? AirSpeed(Option<string?> option) => Read<Speed>(option, QuantityText.TryAirSpeed);

    public VolumeConcentration? GasContent(Option<string?> option) => Read<VolumeConcentration>(option, QuantityText.TryGasContent);

    public Money? Money(Option<string?> option) => Read<Money>(option, QuantityText.TryMoney);

    /// <summary>A temperature that birds live in; null, and a problem, where it is another.</summary>
    public Temperature? Between(Option<string?> option, Temperature? temperature) =>
        temperature is { } known && Holds(known.DegreesCelsius is >= -20 and <= 50, option, "-20C to 50C (-4F to 122F)") ? known : null;

    /// <summary>Energy that a feed has; null, and a problem, where it is another.</summary>
    public SpecificEnergy? Between(Option<string?> option, SpecificEnergy? energy) =>
        energy is { } known && Holds(known.KilojoulesPerKilogram is >= 4184 and <= 20920, option, "1000kcal/kg to 5000kcal/kg") ? known : null;

    /// <summary>A share as a fraction, within bounds given in percent.</summary>
    public double? Percent(Option<string?> option, double low, double high)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"{low} % to {high} %");
        return Read<double>(option, QuantityText.TryPercent) is { } share && Holds(100 * share >= low && 100 * share <= high, option, expected) ? share : null;
    }

    /// <summary>The chance that intervals claim: 0.90.</summary>
    public double? Level(Option<string?> option) => Number(option, 0.5, 0.999, "a number between 0.5 and 0.999, as in 0.90");

    /// <summary>A number of birds, 1 or more.</summary>
    public int? Birds(Option<string?> option)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        return TryBirds(text, out int birds)
            ? birds
            : Nothing<int>(option, "\"" + text + "\" is not a number of birds; expected a whole number of 1 or more");
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

    /// <summary>One of some names; the first where none is given.</summary>
    public T Choice<T>(Option<string?> option, params IReadOnlyList<(string Name, T Value)> choices)
    {
        string name = parsed.GetValue(option) ?? choices[0].Name;
        foreach ((string known, T value) in choices)
        {
            if (name == known)
            {
                return value;
            }
        }

        Refuse(option.Name + ": \"" + name + "\" is unknown; expected " + string.Join(", ", choices.Select(choice => choice.Name)));
        return choices[0].Value;
    }

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
        if (sign < 0 || !TryBirds(text[..sign].Trim(), out int birds))
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

    private static bool TryBirds(ReadOnlySpan<char> text, out int birds) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out birds) && birds > 0;

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

    private T? Read<T>(Option<string?> option, TryRead<T> read)
        where T : struct => parsed.GetValue(option) is not { } text ? null : read(text, out T value, out string? problem) ? value : Nothing<T>(option, problem);

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
