using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>How many birds to open at both tenders so that lesions, if a share of the birds has them, are found at least once with a chance. "Not attainable" is an answer.</summary>
public sealed class BirdsToOpen
{
    private const int MostClusteredWithMisses = 100_000;

    /// <summary>A tie is enough: rounding must not cost a bird.</summary>
    private const double Rounding = 1e-12;

    private BirdsToOpen(int? birds, Probability chanceOfNone, string? reason) => (Birds, ChanceOfNone, Reason) = (birds, chanceOfNone, reason);

    /// <summary>Equations and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "birds-to-open",
        "Birds to open to find lesions",
        "smallest n with P0(n) <= 1 - c; flock of N: P0 = sum_d Hyp(d; N, D, n) (1 - Se)^d, D = ceil(p N), 1 or more; large flock: (1 - Se p)^n; clustered: E (1 - Se q)^n, q ~ Beta with mean p and correlation rho",
        [
            new("n", "birds to open", "-"),
            new("P0", "chance of finding nothing though the share is p", "-"),
            new("c", "chance wanted of finding one or more", "-"),
            new("N", "birds of the flock", "-"),
            new("D", "birds affected", "-"),
            new("p", "share of birds affected", "-"),
            new("Se", "chance that an affected bird is seen to be", "-"),
            new("rho", "intraclass correlation: how much more alike birds are that come together", "-"),
        ],
        [new Citation("CannonRoe1982", "Cannon R.M., Roe R.T. 1982. Livestock disease surveys: a field manual for veterinarians", HowKnown.Memory)],
        "Equal to exact arithmetic, R and another program in 133 cases: whole birds, and chances within 1e-10.",
        HowKnown.Derived);

    /// <summary>The smallest number; null where it is not attainable.</summary>
    public int? Birds { get; }

    /// <summary>The chance of finding nothing with that many birds; with all that there are, where it is not attainable.</summary>
    public Probability ChanceOfNone { get; }

    /// <summary>Why it is not attainable; null where it is.</summary>
    public string? Reason { get; }

    /// <summary>The smallest number of birds to open.</summary>
    /// <param name="share">The share of birds affected that must not be overlooked, above 0.</param>
    /// <param name="confidenceLevel">The chance of finding one or more, between 0 and 1.</param>
    /// <param name="flock">Birds of the flock, 1 or more; null for one so large that it does not matter.</param>
    /// <param name="detection">The chance that an affected bird is seen to be, above 0; surely, where not stated.</param>
    /// <param name="intraclassCorrelation">How much more alike birds are that are opened together (of one pen, say), 0 or more and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static BirdsToOpen ToFind(
        BirdPrevalence share, double confidenceLevel = 0.95, int? flock = null, Probability? detection = null, double intraclassCorrelation = 0)
    {
        double p = Require.Positive(share.Share.Fraction, "", nameof(share)), seen = (detection ?? Probability.FromFraction(1)).Fraction;
        Require.Share(confidenceLevel);
        Require.Positive(seen, "", nameof(detection));
        Require.Between(intraclassCorrelation, 0, 1 - 1e-9, "");

        // Where every bird is affected none is more like another.
        bool isClustered = intraclassCorrelation > 0 && p < 1;
        int most = flock is { } birds ? Require.AtLeast(birds, 1, nameof(flock)) : isClustered && seen < 1 ? MostClusteredWithMisses : int.MaxValue;
        Func<int, double> none = isClustered ? Clustered(p, seen, intraclassCorrelation)
            : flock is { } all ? OfFlock(p, seen, all)
            : n => Math.Pow(1 - (seen * p), n);
        return Search(none, confidenceLevel, most, flock is not null);
    }

    /// <summary>As in <c>258 birds</c>, or why not, in every culture.</summary>
    public override string ToString() => Birds is { } birds ? string.Create(CultureInfo.InvariantCulture, $"{birds} birds") : "not attainable: " + Reason;

    private static Func<int, double> OfFlock(double p, double seen, int flock)
    {
        int affected = Math.Clamp((int)Math.Ceiling((p * flock) - 1e-9), 1, flock);
        return n => Counting.NoneSeen(flock, affected, n, 1 - seen);
    }

    /// <summary>alpha = p (1 - rho) / rho, beta = (1 - p) (1 - rho) / rho</summary>
    private static Func<int, double> Clustered(double p, double seen, double rho)
    {
        double size = (1 - rho) / rho;
        return n => seen == 1
            ? Counting.NoneOfBetaBinomial(p * size, (1 - p) * size, n)
            : Counting.NoneSeenOfBetaBinomial(p * size, (1 - p) * size, n, 1 - seen);
    }

    private static BirdsToOpen Search(Func<int, double> none, double level, int most, bool isWholeFlock)
    {
        bool Enough(int n) => none(n) <= (1 - level) * (1 + Rounding);

        // From one bird upwards in doublings: what is slow to compute is slow for many birds only.
        int tooFew = 0, enough = 1;
        while (!Enough(enough))
        {
            if (enough == most)
            {
                double left = none(most);
                string why = isWholeFlock
                    ? string.Create(CultureInfo.InvariantCulture, $"with all {most} birds opened the chance of finding nothing is still {100 * left:0.##} %")
                    : string.Create(CultureInfo.InvariantCulture, $"it takes more than {most} birds");
                return new(null, Probability.FromFraction(left), why);
            }

            (tooFew, enough) = (enough, enough > most / 2 ? most : 2 * enough);
        }

        while (enough - tooFew > 1)
        {
            int half = tooFew + ((enough - tooFew) / 2);
            (enough, tooFew) = Enough(half) ? (half, tooFew) : (enough, half);
        }

        return new(enough, Probability.FromFraction(none(enough)), null);
    }
}
