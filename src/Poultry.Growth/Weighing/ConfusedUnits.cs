using System.Collections.Immutable;

namespace Poultry.Growth.Weighing;

/// <summary>Factors by which a weight goes wrong when units or decimal points do.</summary>
internal static class ConfusedUnits
{
    /// <summary>How far, as a natural logarithm, a factor may lie from one of these and still be taken for it: 30 %, since birds and interpolation vary.</summary>
    private const double LogTolerance = 0.3;

    private static readonly ImmutableArray<(double Factor, string Cause)> Known =
    [
        (2.2046, "pounds and kilograms mixed up"),
        (10, "a slipped decimal point"),
        (16, "pounds and ounces mixed up"),
        (28.35, "ounces and grams mixed up"),
        (453.6, "pounds and grams mixed up"),
        (1000, "grams and kilograms mixed up"),
    ];

    /// <summary>The likeliest cause of a ratio, as the end of a sentence; empty where the ratio is like none.</summary>
    public static string Guess(double logRatio)
    {
        (double factor, string cause) = Known.MinBy(known => Math.Abs(Math.Abs(logRatio) - Math.Log(known.Factor)));
        return Math.Abs(Math.Abs(logRatio) - Math.Log(factor)) <= LogTolerance
            ? " (about " + Words.Times(factor) + ": " + cause + "?)"
            : "";
    }
}
