using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Quantities as text with their units, read and written alike in every culture: for files and for the command line.</summary>
/// <remarks>
/// A number with a decimal point, then a unit, with or without a space, upper or lower case. Refused, with the reason: a bare number, a
/// decimal comma, an exponent (nobody types 1e3g on purpose), a negative number, NaN and infinity.
/// </remarks>
public static partial class QuantityText
{
    internal const double KilogramsPerPound = 0.45359237;
    internal const double KilogramsPerOunce = KilogramsPerPound / OuncesPerPound;
    internal const int OuncesPerPound = 16;

    /// <summary>A year beyond them is a slip of the keys, and a day counted on from it may be none.</summary>
    internal const int FirstYear = 1900, LastYear = 2100;

    private static readonly UnitTable Masses = new(
        "a weight", "2.6kg or 5lb11oz", [new("g", 0.001), new("kg", 1), new("lb", KilogramsPerPound), new("oz", KilogramsPerOunce)], ("lb", "oz", OuncesPerPound));

    private static readonly UnitTable Ages = new("an age", "42d", [new("d", 1), new("wk", 7)]);

    private static readonly UnitTable Percents = new("a share", "5%", [new("%", 0.01)]);

    private static readonly ImmutableArray<(string Symbol, WeightUnit Unit)> WeightUnits =
    [
        ("g", WeightUnit.Gram), ("kg", WeightUnit.Kilogram), ("lb", WeightUnit.Pound), ("oz", WeightUnit.Ounce), ("lb_oz", WeightUnit.PoundAndOunce),
    ];

    /// <summary>Reads a mass of 0 or more: <c>2.6kg</c>, <c>920 g</c>, <c>5.7lb</c>, <c>3oz</c>, <c>5lb11oz</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mass">The mass, where the text is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryMass(ReadOnlySpan<char> text, out Mass mass, [NotNullWhen(false)] out string? problem) =>
        Masses.TryRead(text, kilograms => Mass.FromKilograms(kilograms), out mass, out problem);

    /// <summary>Reads an age of 0 or more: <c>42d</c>, <c>8wk</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="age">The age, where the text is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryAge(ReadOnlySpan<char> text, out Age age, [NotNullWhen(false)] out string? problem) =>
        Ages.TryRead(text, Age.FromDays, out age, out problem);

    /// <summary>Reads a share of 0 or more: <c>5%</c> is 0.05.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fraction">The share as a fraction of 1, where the text is one; 0 otherwise.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryPercent(ReadOnlySpan<char> text, out double fraction, [NotNullWhen(false)] out string? problem) =>
        Percents.TryRead(text, share => share, out fraction, out problem);

    /// <summary>Reads a date in ISO 8601, of the years 1900 to 2100: <c>2027-04-12</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="date">The date, where the text is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryDate(ReadOnlySpan<char> text, out DateOnly date, [NotNullWhen(false)] out string? problem)
    {
        bool isDate = DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date);
        problem = !isDate ? FileProblem.Quoted(text.ToString()) + " is not a date; expected year, month and day, as in 2027-04-12"
            : date.Year is < FirstYear or > LastYear ? FileProblem.Quoted(text.ToString()) + string.Create(CultureInfo.InvariantCulture, $" is not a date of our time; expected a year from {FirstYear} to {LastYear}")
            : null;
        date = problem is null ? date : default;
        return problem is null;
    }

    /// <summary>Reads the name of a unit of weight: <c>g</c>, <c>kg</c>, <c>lb</c>, <c>oz</c>, <c>lb_oz</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">The unit, where the text names one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryWeightUnit(ReadOnlySpan<char> text, out WeightUnit unit, [NotNullWhen(false)] out string? problem)
    {
        string name = text.Trim().ToString();
        (string? symbol, unit) = WeightUnits.FirstOrDefault(known => known.Symbol.Equals(name, StringComparison.OrdinalIgnoreCase));
        problem = symbol is null ? FileProblem.Quoted(name) + " is no unit of weight; expected g, kg, lb, oz or lb_oz" : null;
        return symbol is not null;
    }

    /// <summary>Writes a mass, as in <c>2.60 kg</c> or <c>5 lb 11 oz</c>.</summary>
    /// <param name="mass">The mass, any.</param>
    /// <param name="unit">In which unit.</param>
    /// <param name="decimals">Digits behind the point, 0 to 9; of the ounces where pounds and ounces are asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit or the number of digits is out of range.</exception>
    public static string Write(Mass mass, WeightUnit unit, int decimals)
    {
        if (decimals is < 0 or > 9)
        {
            throw new ArgumentOutOfRangeException(
                nameof(decimals), string.Create(CultureInfo.InvariantCulture, $"{decimals} is not allowed; expected 0 to 9."));
        }

        return unit switch
        {
            WeightUnit.Gram => Number(1000 * mass.Kilograms, decimals) + " g",
            WeightUnit.Kilogram => Number(mass.Kilograms, decimals) + " kg",
            WeightUnit.Pound => Number(mass.Kilograms / KilogramsPerPound, decimals) + " lb",
            WeightUnit.Ounce => Number(mass.Kilograms / KilogramsPerOunce, decimals) + " oz",
            WeightUnit.PoundAndOunce => PoundsAndOunces(mass.Kilograms / KilogramsPerOunce, decimals),
            _ => throw new ArgumentOutOfRangeException(nameof(unit), "Not a unit of weight; expected a named value of WeightUnit."),
        };
    }

    /// <summary>Rounded before it is split: 95.99 oz are 6 lb 0 oz and never 5 lb 16 oz.</summary>
    private static string PoundsAndOunces(double ounces, int decimals)
    {
        double rounded = Math.Round(Math.Abs(ounces), decimals);
        double pounds = Math.Floor(rounded / OuncesPerPound);
        string sign = ounces < 0 && rounded > 0 ? "-" : "";
        return sign + Number(pounds, 0) + " lb " + Number(rounded - (pounds * OuncesPerPound), decimals) + " oz";
    }

    private static string Number(double value, int decimals) =>
        value.ToString(string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture);
}
