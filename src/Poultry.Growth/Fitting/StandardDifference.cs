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

    /// <summary>One line, as in <c>28 d: 141 g (4.97 oz) behind the standard, 90 %: -181 g (-6.38 oz) to -99 g (-3.49 oz); 2.3 d behind (-3.0 to -1.6 d)</c>, in every culture.</summary>
    public override string ToString()
    {
        string weight = Difference is { Value.Kilograms: var kilograms, Interval: var interval }
            ? WeightText.Of(Math.Abs(kilograms)) + (kilograms < 0 ? " behind" : " ahead of") + " the standard, " + interval.Percent + ": "
                + Bound(interval.Low) + " to " + Bound(interval.High)
            : "the standard does not cover this age";
        string time = Ahead is { Value.Days: var days, Interval: var span }
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(days):0.#} d {(days < 0 ? "behind" : "ahead")} ({Bound(span.Low)} to {Bound(span.High)} d)")
            : "days unknown: the standard does not cover this weight";
        return Age + ": " + weight + "; " + time;
    }

    private static string Bound(Mass? weight) => weight is { } known ? WeightText.Of(known.Kilograms) : "open";

    private static string Bound(Duration? time) => time is { } known ? string.Create(CultureInfo.InvariantCulture, $"{known.Days:0.0}") : "open";
}
