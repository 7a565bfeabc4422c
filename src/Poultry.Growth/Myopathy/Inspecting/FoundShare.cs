using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// What a count of affected birds says of the share of the flock, by itself and by four rules. All take the birds opened for a random sample of many, and say nothing of other batches.
/// </summary>
public sealed class FoundShare
{
    private readonly int found;
    private readonly int opened;
    private readonly double level;

    private FoundShare(int found, int opened, double level) => (this.found, this.opened, this.level) = (found, opened, level);

    /// <summary>Equations and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "found-share",
        "Interval of a counted share",
        "Wilson: (p + z²/2n ± z sqrt(p(1 - p)/n + z²/4n²)) / (1 + z²/n); Clopper-Pearson: Beta quantiles at (x, n - x + 1) and (x + 1, n - x); Jeffreys: at (x + 1/2, n - x + 1/2)",
        [
            new("n", "birds opened", "-"),
            new("x", "birds with a lesion", "-"),
            new("p", "x / n", "-"),
            new("z", "normal quantile of the level", "-"),
        ],
        [
            new Citation("Wilson1927", "Wilson E.B. 1927. Probable inference, the law of succession, and statistical inference. J. Am. Stat. Assoc. 22:209-212", HowKnown.Memory),
            new Citation("ClopperPearson1934", "Clopper C.J., Pearson E.S. 1934. The use of confidence or fiducial limits illustrated in the case of the binomial. Biometrika 26:404-413", HowKnown.Memory),
            new Citation("Newcombe1998", "Newcombe R.G. 1998. Two-sided confidence intervals for the single proportion. Statistics in Medicine 17:857-872", HowKnown.Memory),
        ],
        "Equal to R and to two other programs in 106 cases within 1e-10.",
        HowKnown.Derived);

    /// <summary>Found over opened.</summary>
    public BirdPrevalence Estimate => Birds((double)found / opened);

    /// <summary>Wilson's score interval: near its level on average.</summary>
    public Interval<BirdPrevalence> Wilson => Score(corrected: false);

    /// <summary>The same with a correction for continuity: wider.</summary>
    public Interval<BirdPrevalence> WilsonCorrected => Score(corrected: true);

    /// <summary>Clopper and Pearson's: never below its level, wide for few birds.</summary>
    public Interval<BirdPrevalence> ClopperPearson => Between(
        found == 0 ? 0 : Counting.BetaQuantile((1 - level) / 2, found, opened - found + 1),
        found == opened ? 1 : Counting.BetaQuantile((1 + level) / 2, found + 1, opened - found));

    /// <summary>Jeffreys': from a prior that favours no share; closed at the end where nothing or everything was found.</summary>
    public Interval<BirdPrevalence> Jeffreys => Between(
        found == 0 ? 0 : Counting.BetaQuantile((1 - level) / 2, found + 0.5, opened - found + 0.5),
        found == opened ? 1 : Counting.BetaQuantile((1 + level) / 2, found + 0.5, opened - found + 0.5));

    /// <summary>Of so many found among so many opened.</summary>
    /// <param name="found">Birds with a lesion, 0 to all of them.</param>
    /// <param name="opened">Birds opened, 1 or more.</param>
    /// <param name="level">The chance that the intervals claim, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static FoundShare Of(int found, int opened, double level = 0.90)
    {
        Require.AtLeast(opened, 1);
        Require.Between(found, 0, opened, "birds");
        return new(found, opened, Require.Share(level));
    }

    /// <summary>As in <c>2 of 300 birds: 0.67 % of birds (Wilson 90 %: 0.23 to 1.9 %)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{found} of {opened} birds: {Estimate} (Wilson {100 * level:0.##} %: {Wilson.Low!.Value.Percent:G2} to {Wilson.High!.Value.Percent:G2} %)");

    private static BirdPrevalence Birds(double fraction) => BirdPrevalence.Of(Probability.FromFraction(fraction));

    private Interval<BirdPrevalence> Between(double low, double high) => Interval<BirdPrevalence>.Of(Birds(low), Birds(high), level);

    /// <summary>Wilson's limits; corrected: (2np + z² ± (1 + z sqrt(z² ± 2 - 1/n + 4p(n(1 - p) ∓ 1)))) / 2(n + z²), the upper signs above.</summary>
    private Interval<BirdPrevalence> Score(bool corrected)
    {
        double n = opened, p = found / n, z = Distributions.NormalQuantile((1 + level) / 2), square = z * z;
        double Limit(int side)
        {
            double root = corrected
                ? 1 + (z * Math.Sqrt(square + (side * 2) - (1 / n) + (4 * p * ((n * (1 - p)) - side))))
                : z * Math.Sqrt(square + (4 * n * p * (1 - p)));
            return Math.Clamp(((2 * n * p) + square + (side * root)) / (2 * (n + square)), 0, 1);
        }

        return Between(found == 0 ? 0 : Limit(-1), found == opened ? 1 : Limit(1));
    }
}
