using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>How the birds of one age stand against a standard. Made by <see cref="StandardComparison"/>.</summary>
public sealed class StandardDifference
{
    internal StandardDifference(Uniformity weighed, Mass? standardWeight, Estimate<Mass>? difference, Estimate<Duration>? ahead)
    {
        (Age, Sex, Birds, MeanWeight) = (weighed.Age, weighed.Sex, weighed.Birds, weighed.MeanWeight);
        (StandardWeight, Difference, Ahead) = (standardWeight, difference, ahead);
    }

    /// <summary>How old the birds were.</summary>
    public Age Age { get; }

    /// <summary>Which birds were weighed.</summary>
    public Sex Sex { get; }

    /// <summary>How many.</summary>
    public int Birds { get; }

    /// <summary>Their mean.</summary>
    public Mass MeanWeight { get; }

    /// <summary>What the standard says at this age; null where its table does not reach.</summary>
    public Mass? StandardWeight { get; }

    /// <summary>Mean less standard: above 0 the batch is heavier. Null where the table does not reach this age.</summary>
    public Estimate<Mass>? Difference { get; }

    /// <summary>
    /// The age at which the standard has the weight of the batch, less the age of the batch: above 0 the batch is ahead. A bound beyond the ends of the
    /// table is open. Null where the weight itself is.
    /// </summary>
    public Estimate<Duration>? Ahead { get; }

    /// <summary>One line, as in <c>28 d: 0.141 kg behind the standard (90 %: -0.181 to -0.099 kg), 2.3 d (-3.0 to -1.6 d)</c>, in every culture.</summary>
    public override string ToString()
    {
        string weight = Difference is { } difference
            ? Side(difference.Value.Kilograms, "0.###", " kg") + " the standard (" + Percent(difference.Interval) + ": "
                + Bounds(difference.Interval.Low?.Kilograms, difference.Interval.High?.Kilograms, "0.000", " kg") + ")"
            : "the standard does not cover this age";
        string time = Ahead is { } ahead
            ? Side(ahead.Value.Days, "0.#", " d") + " (" + Bounds(ahead.Interval.Low?.Days, ahead.Interval.High?.Days, "0.0", " d") + ")"
            : "days unknown: the standard does not cover this weight";
        return Age + ": " + weight + "; " + time;
    }

    private static string Percent(Interval<Mass> interval) => string.Create(CultureInfo.InvariantCulture, $"{100 * interval.Level:0.##} %");

    private static string Side(double value, string format, string unit) =>
        Math.Abs(value).ToString(format, CultureInfo.InvariantCulture) + unit + (value < 0 ? " behind" : " ahead of");

    private static string Bounds(double? low, double? high, string format, string unit) =>
        (low?.ToString(format, CultureInfo.InvariantCulture) ?? "open") + " to " + (high?.ToString(format, CultureInfo.InvariantCulture) ?? "open") + unit;
}
