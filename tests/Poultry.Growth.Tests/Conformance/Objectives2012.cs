using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// A breeder's printed performance objectives, Indian River Meat, 2012 edition, weekly body weights of 0 to 70 d, as an open collection transcribes them (secondary), and
/// Gompertz curves on record for them.
/// </summary>
/// <remarks>
/// The fits on record, rows and weights not stated, are not the least-squares points of these rows (7321 and 5680 g), but follow them as closely (14.8 against 14.6 g for males).
/// The objectives are a smoothed target: the distance of a curve from the rows says how far a Gompertz curve can follow one, not how well it predicts birds; at hatch it
/// is 24 to 27 g too heavy.
/// </remarks>
internal static class Objectives2012
{
    public static GompertzCurve Males { get; } = GompertzCurve.Of(Mass.FromGrams(7294), DailyRate.FromPerDay(0.03944), Age.FromDays(39.25));

    public static GompertzCurve Females { get; } = GompertzCurve.Of(Mass.FromGrams(5685), DailyRate.FromPerDay(0.04073), Age.FromDays(36.46));

    /// <summary>The rows of a sex: male or female.</summary>
    public static IEnumerable<(double Days, double Grams)> Rows(string sex)
    {
        (double[] days, double[] grams) = Handbook.Tables["objectives 2012 " + sex];
        return days.Zip(grams);
    }
}
