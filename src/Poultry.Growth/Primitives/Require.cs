using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>The one place where arguments are held against what makes sense: the message names the argument, its value and the allowed range.</summary>
internal static class Require
{
    public static double Positive(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > 0 ? value : throw OutOfRange(name, value, unit, "above 0");

    public static double NotNegative(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= 0 ? value : throw OutOfRange(name, value, unit, "0 or more");

    public static double Finite(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw OutOfRange(name, value, unit, "a finite number");

    public static double Between(
        double value, double low, double high, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= low && value <= high ? value : throw OutOfRange(name, value, unit, string.Create(CultureInfo.InvariantCulture, $"{low} to {high}"));

    public static double Above(double value, double low, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > low
            ? value
            : throw OutOfRange(name, value, unit, string.Create(CultureInfo.InvariantCulture, $"above {low}"));

    /// <summary>A share strictly between 0 and 1: a confidence level, say.</summary>
    public static double Share(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value is > 0 and < 1 ? value : throw OutOfRange(name, value, "", "between 0 and 1, both excluded");

    /// <summary>A band of weights in kg, each bound open where null: the lower above 0, the upper above the lower.</summary>
    public static (double Low, double High) Band(Mass? from, Mass? to)
    {
        double low = from is { } least ? Positive(least.Kilograms, "kg", nameof(from)) : 0;
        double high = to is { } most ? Positive(most.Kilograms, "kg", nameof(to)) : double.PositiveInfinity;
        return high > low ? (low, high) : throw new ArgumentOutOfRangeException(nameof(to), WeightText.Of(high) + " is not allowed; expected above " + WeightText.Of(low) + ".");
    }

    public static int AtLeast(int value, int low, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= low ? value : throw OutOfRange(name, value, "", string.Create(CultureInfo.InvariantCulture, $"{low} or more"));

    public static void SameLength(int expected, int actual, string? name = null)
    {
        if (expected != actual)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"{actual} numbers given, {expected} expected."), name);
        }
    }

    public static string Text(string value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, name);
        return value;
    }

    public static T Named<T>(T value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : struct, Enum =>
        Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(name, "Not a named value of its enumeration.");

    public static IReadOnlyList<T> Some<T>(IReadOnlyList<T> values, [CallerArgumentExpression(nameof(values))] string? name = null)
    {
        ArgumentNullException.ThrowIfNull(values, name);
        return values.Count > 0 ? values : throw new ArgumentException("Expected at least one.", name);
    }

    /// <summary>What to throw where the caller's argument goes by another name, or is known to be wrong only further in.</summary>
    public static ArgumentOutOfRangeException Refusal(string name, string message) => new(name, message);

    private static ArgumentOutOfRangeException OutOfRange(string? name, double value, string unit, string allowed)
    {
        string space = unit.Length == 0 ? "" : " ";
        return new ArgumentOutOfRangeException(
            name, string.Create(CultureInfo.InvariantCulture, $"{value}{space}{unit} is not allowed; expected {allowed}{space}{unit}."));
    }
}
