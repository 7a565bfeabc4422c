using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>A published ratio and a farm's own, weighed as two normal laws: the more batches, the less the book counts.</summary>
internal static class DressingPool
{
    /// <summary>
    /// Squared deviations of four groups of one trial from their mean (70.89, 72.12, 70.84, 69.46 %; Wannan Yellow, Poult Sci 2019), in squared points:
    /// the only published sign of how far batches of one place lie apart. Own batches soon outvote it.
    /// </summary>
    internal const double PublishedSquares = 3.544675;

    /// <summary>Degrees of freedom of those.</summary>
    internal const int PublishedDegrees = 3;

    /// <summary>A range of a book is taken for the middle 90 % of a normal law.</summary>
    private const double NinetyPercent = 1.6448536269514722;

    /// <summary>What it is and where its figures come from.</summary>
    public static ModelInfo Model { get; } = new(
        "dressing-pooled",
        "Dressing ratio of a farm's own batches, pooled with a published one",
        "m = (m0/t^2 + n x/s^2) / (1/t^2 + n/s^2), s^2 = (S0 + S)/(3 + k - 1)",
        [
            new ModelSymbol("m", "the pooled ratio", "%"),
            new ModelSymbol("m0", "the published ratio", "%"),
            new ModelSymbol("t", "how far it may be off for this farm: its range as 90 %, and once more the spread between batches", "%"),
            new ModelSymbol("n", "own batches", "-"),
            new ModelSymbol("x", "their mean", "%"),
            new ModelSymbol("s", "standard deviation between batches", "%"),
            new ModelSymbol("S0", "squared deviations of four published groups, 3.54", "%^2"),
            new ModelSymbol("S", "squared deviations of the own batches that are known one by one", "%^2"),
            new ModelSymbol("k", "how many those are, 1 where none", "-"),
        ],
        [
            CutSources.Wannan,
            new Citation("NormalPooling", "Two normal laws multiplied; mathematics that anyone can check", HowKnown.Derived),
        ],
        "One own batch counts two thirds to three quarters, four count nine tenths. The spread between batches rests on one trial until own batches are known one by one.",
        HowKnown.Assumption);

    /// <summary>The standard deviation between batches that is taken where nothing else is known, in points.</summary>
    public static double UsualDeviation => Math.Sqrt(PublishedSquares / PublishedDegrees);

    /// <summary>What one more batch of this farm will dress to.</summary>
    public static LikelyRange<Probability> Of(LikelyRange<Probability> published, PastDressing own)
    {
        double between = (PublishedSquares + own.SquaresPercent) / (PublishedDegrees + own.BatchesWithSpread - 1);
        double half = (published.High.Percent - published.Low.Percent) / (2 * NinetyPercent);
        (double mean, double variance) = Pooled(published.Likely.Percent, (half * half) + between, own.MeanPercent, between, own.Batches);
        double next = Math.Sqrt(variance + between);
        return mean + (NinetyPercent * next) <= 100 && mean >= NinetyPercent * next
            ? Around(mean, next)
            : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The own batches lie {Math.Sqrt(between):0} points apart, so that the next could dress to anything; expected live and carcass weight of the same birds in each."), nameof(own));
    }

    /// <summary>The middle 90 % about a mean, in percent of live weight.</summary>
    public static LikelyRange<Probability> Around(double meanPercent, double deviationPercent) => LikelyRange<Probability>.Of(
        Probability.FromPercent(meanPercent - (NinetyPercent * deviationPercent)),
        Probability.FromPercent(meanPercent),
        Probability.FromPercent(meanPercent + (NinetyPercent * deviationPercent)));

    /// <summary>m = (m0/t^2 + n x/s^2) / (1/t^2 + n/s^2), and its variance.</summary>
    internal static (double Mean, double Variance) Pooled(double m0, double tSquared, double x, double sSquared, int n)
    {
        double precision = (1 / tSquared) + (n / sSquared);
        return (((m0 / tSquared) + (n * x / sSquared)) / precision, 1 / precision);
    }
}
