using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// The share of birds with lesions in one batch, as the planning model or the farm's own record sees it: a distribution, never a single number.
/// It holds average events; nothing adds an <see cref="EventPrevalence"/> to it.
/// </summary>
public sealed class BatchPrevalence
{
    private readonly double susceptible;

    internal BatchPrevalence(LogitDensity density, double susceptible, IReadOnlyList<OddsRatio> oddsRatios, ModelInfo model, IReadOnlyList<Caution> cautions) =>
        (Density, this.susceptible, OddsRatios, Model, Cautions) = (density, susceptible, oddsRatios, model, cautions);

    /// <summary>What gave it.</summary>
    public ModelInfo Model { get; }

    /// <summary>What to mind; of outdoor birds first that there are no data.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The odds ratios that belong to the batch, those of 1 included for the sake of their range; assumptions are marked.</summary>
    public IReadOnlyList<OddsRatio> OddsRatios { get; }

    /// <summary>The mean over flocks like this one.</summary>
    public BirdPrevalence Mean => Birds(MeanShare);

    /// <summary>Half of such flocks have less, half have more.</summary>
    public BirdPrevalence Median => At(0.5);

    /// <summary>
    /// How much more alike birds of one flock are than birds of different flocks: variance of the share over m (1 - m), 0 to 1. It is the rho of the beta-binomial with
    /// the same mean m and spread, N m (1 - m) (1 + (N - 1) rho).
    /// </summary>
    public double IntraclassCorrelation
    {
        get
        {
            double mean = MeanShare;
            return mean is 0 or 1 ? 0 : Average(p => (p - mean) * (p - mean)) / (mean * (1 - mean));
        }
    }

    /// <summary>z of the share of birds old enough; times the susceptible share it is the share of the batch.</summary>
    internal LogitDensity Density { get; }

    /// <summary>A sum of rounded parts may pass 1 in its last digit.</summary>
    private double MeanShare => Math.Min(1, Average(p => p));

    /// <summary>The share below which such flocks lie with a probability, strictly between 0 and 1.</summary>
    /// <param name="probability">Between 0 and 1, neither of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">0 or 1.</exception>
    public BirdPrevalence Quantile(Probability probability) => At(Require.Share(probability.Fraction, nameof(probability)));

    /// <summary>The range that holds the share of such a flock with a chance, as much left out below as above.</summary>
    /// <param name="level">The chance, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval<BirdPrevalence> IntervalAt(double level) => Interval<BirdPrevalence>.Of(At((1 - Require.Share(level)) / 2), At((1 + level) / 2), level);

    /// <summary>The chance that a flock like this one has more.</summary>
    /// <param name="share">0 to 100 % of birds.</param>
    public Probability ChanceAbove(BirdPrevalence share)
    {
        double p = share.Share.Fraction;
        double chance = p >= susceptible ? 0 : p == 0 ? 1 : 1 - Density.Below(LogitDensity.Logit(p / susceptible));
        return Probability.FromFraction(Math.Clamp(chance, 0, 1));
    }

    /// <summary>The chance that the worst of several flocks has more.</summary>
    /// <param name="share">More than this share of its birds.</param>
    /// <param name="flocks">How many flocks, 1 or more, taken as independent.</param>
    /// <exception cref="ArgumentOutOfRangeException">No flock.</exception>
    public Probability ChanceWorstAbove(BirdPrevalence share, int flocks) =>
        Probability.FromFraction(1 - Math.Pow(1 - ChanceAbove(share).Fraction, Require.AtLeast(flocks, 1)));

    /// <summary>How many birds of the batch may be affected: binomial in each flock, over all that the share may be.</summary>
    /// <param name="birds">Birds of the batch, 1 or more.</param>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">No bird, or the level is not between 0 and 1.</exception>
    public AffectedBirds Among(int birds, double level = 0.90)
    {
        Require.AtLeast(birds, 1);
        Require.Share(level);
        return new(
            birds,
            birds * MeanShare,
            Interval<int>.Of(CountAt((1 - level) / 2, birds), CountAt((1 + level) / 2, birds), level),
            Probability.FromFraction(Math.Clamp(AtMost(0, birds), 0, 1)));
    }

    /// <summary>What is known after some of its birds were opened, both tenders of each.</summary>
    public BatchPrevalence After(LesionInspection inspection)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        double seen = susceptible * inspection.Detection.Fraction;
        if (seen == 0 && inspection.Found > 0)
        {
            throw new ArgumentException("Lesions were found in birds too young to have any: look at age and sex.", nameof(inspection));
        }

        return seen == 0 ? this : With(Density.Times(inspection.LogLikelihood(seen)));
    }

    /// <summary>The same batch with all odds multiplied: by a change in how it is kept, say.</summary>
    /// <param name="oddsRatio">Above 0; 1 moves nothing, 0.5 halves.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public BatchPrevalence WithOdds(double oddsRatio) => With(Density.Shifted(Math.Log(Require.Positive(oddsRatio, ""))));

    /// <summary>Mean, median and the 90 % range in one line, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"mean {Mean.Percent:G2} %, median {Median.Percent:G2} %, 90 %: {At(0.05).Percent:G2} to {At(0.95).Percent:G2} % of birds");

    internal BatchPrevalence With(LogitDensity density) => new(density, susceptible, OddsRatios, Model, Cautions);

    /// <summary>The mean of a function of the share of the batch.</summary>
    internal double Average(Func<double, double> ofShare) => Density.Mean(p => ofShare(susceptible * p));

    private static BirdPrevalence Birds(double fraction) => BirdPrevalence.Of(Probability.FromFraction(fraction));

    private BirdPrevalence At(double probability) => Birds(susceptible * LogitDensity.Logistic(Density.Quantile(probability)));

    private double AtMost(int count, int birds) => Average(p => Distributions.BinomialAtMost(count, birds, p));

    /// <summary>The smallest count that is not exceeded with a probability.</summary>
    private int CountAt(double probability, int birds)
    {
        (int low, int high) = (-1, birds);
        while (high - low > 1)
        {
            int half = low + ((high - low) / 2);
            (low, high) = AtMost(half, birds) >= probability ? (low, half) : (half, high);
        }

        return high;
    }
}
