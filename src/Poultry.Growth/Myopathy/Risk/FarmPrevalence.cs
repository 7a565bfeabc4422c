using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// The batches of one farm that nobody inspected, one like the other: a part of what flocks differ by is the farm's own and comes back in every batch. Its average over many batches, and the worst of several,
/// which is less often bad than the worst of as many farms.
/// </summary>
public sealed class FarmPrevalence
{
    private readonly LogitDensity levels;
    private readonly double betweenBatches;
    private readonly double susceptible;

    internal FarmPrevalence(LogitDensity levels, double betweenBatchesLogit, double susceptible, ModelInfo model, IReadOnlyList<Caution> cautions) =>
        (this.levels, betweenBatches, this.susceptible, Model, Cautions) = (levels, betweenBatchesLogit, susceptible, model, cautions);

    /// <summary>What gave it.</summary>
    public ModelInfo Model { get; }

    /// <summary>What to mind; of outdoor birds first that there are no data.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The mean over farms, which is the mean over batches too.</summary>
    public BirdPrevalence Mean => Birds(levels.Mean(p => Average(LogitDensity.Logit(p))));

    /// <summary>Half of such farms have less on average over many batches, half have more.</summary>
    public BirdPrevalence Median => At(0.5);

    /// <summary>The average over many batches below which such farms lie with a probability, strictly between 0 and 1.</summary>
    /// <param name="probability">Between 0 and 1, neither of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">0 or 1.</exception>
    public BirdPrevalence Quantile(Probability probability) => At(Require.Share(probability.Fraction, nameof(probability)));

    /// <summary>The range that holds a farm's average over many batches with a chance, as much left out below as above.</summary>
    /// <param name="level">The chance, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval<BirdPrevalence> IntervalAt(double level) => Interval<BirdPrevalence>.Of(At((1 - Require.Share(level)) / 2), At((1 + level) / 2), level);

    /// <summary>The chance that the worst of several batches of one farm has more.</summary>
    /// <param name="share">More than this share of its birds.</param>
    /// <param name="batches">How many batches, 1 or more, alike but for the farm's level.</param>
    /// <exception cref="ArgumentOutOfRangeException">No batch.</exception>
    public Probability ChanceWorstAbove(BirdPrevalence share, int batches)
    {
        Require.AtLeast(batches, 1);
        double p = share.Share.Fraction;
        if (p == 0 || p >= susceptible)
        {
            return Probability.FromFraction(p >= susceptible ? 0 : 1);
        }

        double limit = LogitDensity.Logit(p / susceptible);
        return Probability.FromFraction(levels.Mean(level =>
            1 - Math.Pow(Distributions.NormalProbability((limit - LogitDensity.Logit(level)) / betweenBatches), batches)));
    }

    /// <summary>Mean, median and the 90 % range in one line, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"a farm's average: mean {Mean.Percent:G2} %, median {Median.Percent:G2} %, 90 %: {At(0.05).Percent:G2} to {At(0.95).Percent:G2} % of birds");

    /// <summary>The mean share over batches of a farm: the mean of logistic(level + e), e normal.</summary>
    private double Average(double level)
    {
        double sum = 0;
        for (int i = 0; i < GaussHermite.Points.Length; i++)
        {
            sum += GaussHermite.Weights[i] * LogitDensity.Logistic(level + (betweenBatches * GaussHermite.Points[i]));
        }

        return susceptible * sum;
    }

    private BirdPrevalence At(double probability) => Birds(Average(levels.Quantile(probability)));

    private static BirdPrevalence Birds(double fraction) => BirdPrevalence.Of(Probability.FromFraction(fraction));
}
