using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>Figures with their bounds in one line, weights in kg, times in d; weights in pounds too, since a line of the library must serve every grower.</summary>
internal static class RangeText<T>
    where T : struct
{
    private static bool IsWeight => default(T) is Mass;

    private static string Unit => default(T) switch { Mass => " kg", Age or Duration => " d", Power => " W", _ => "" };

    /// <summary>As in <c>47.9 d (90 %: 45.3 to 52.1)</c> or <c>2.5 kg (5.512 lb; 90 %: 2.4 to 2.6 kg, 5.291 to 5.732 lb)</c>, in every culture.</summary>
    /// <param name="value">What is likely.</param>
    /// <param name="chance">What the bounds claim, as in <c>90 %: </c>; empty where they claim nothing.</param>
    /// <param name="low">The lower bound; null where it is open.</param>
    /// <param name="high">The upper bound; null where it is open.</param>
    public static string Around(T value, string chance, T? low, T? high) => IsWeight
        ? Number(value) + Unit + " (" + Digits(Pounds(value)) + " lb; " + chance + Bounds(low, high) + Unit + ", " + PoundBounds(low, high) + " lb)"
        : Number(value) + Unit + " (" + chance + Bounds(low, high) + ")";

    /// <summary>As in <c>45.3 to 52.1 d (90 %)</c> or <c>2.4 to 2.6 kg (5.291 to 5.732 lb; 90 %)</c>, in every culture; an open bound is <c>open</c>.</summary>
    public static string Between(T? low, T? high, string chance) =>
        Bounds(low, high) + Unit + " (" + (IsWeight ? PoundBounds(low, high) + " lb; " : "") + chance + ")";

    /// <summary>The number without its unit.</summary>
    public static string Number(T? value) => value switch
    {
        null => "open",
        Age age => Digits(age.Days),
        Duration time => Digits(time.Days),
        IQuantity quantity => Digits((double)quantity.Value),
        double number => Digits(number),
        _ => string.Create(CultureInfo.InvariantCulture, $"{value.Value}"),
    };

    private static string Bounds(T? low, T? high) => Number(low) + " to " + Number(high);

    private static string PoundBounds(T? low, T? high) => Digits(Pounds(low)) + " to " + Digits(Pounds(high));

    private static double? Pounds(T? value) => value is Mass weight ? weight.Pounds : null;

    /// <summary>Four digits, and whole numbers in full: the feed of a batch is 18634 kg and not 1.863E+04.</summary>
    private static string Digits(double? value) => value is { } number
        ? number.ToString(Math.Abs(number) is >= 1e4 and < 1e7 ? "0" : "G4", CultureInfo.InvariantCulture)
        : "open";
}
