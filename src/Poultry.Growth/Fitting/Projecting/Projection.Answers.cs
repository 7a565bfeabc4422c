using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <content>What it answers.</content>
public sealed partial class Projection
{
    /// <summary>The mean weight of the flock at an age: median, and limits that hold it with a chance.</summary>
    /// <param name="age">Any age.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public Estimate<Mass> MeanAt(Age age, double level = GrowthFit.DefaultLevel) => MeanOf(Prior.Sex, age, level);

    /// <summary>The mean weight of the flock's cockerels or pullets at an age.</summary>
    /// <param name="sex">In a mixed flock any; else the sex of the flock.</param>
    /// <param name="age">Any age.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The flock has no such birds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public Estimate<Mass> MeanOf(Sex sex, Age age, double level = GrowthFit.DefaultLevel)
    {
        Require.Share(level);
        if (sex != Prior.Sex && Prior.Sex != Sex.Mixed)
        {
            throw new ArgumentException($"{sex} is not allowed; the flock is of {Prior.Sex} birds.", nameof(sex));
        }

        return Estimated(ProjectionAnswers.Mean(fits, age.Days, 0, spread.Factor(sex, age.Days), level), age, level);
    }

    /// <summary>The mean of a next weigh-in of so many birds: the flock's mean, the chance of the catch, and the error of a whole weigh-in.</summary>
    /// <param name="age">Any age.</param>
    /// <param name="birds">How many birds will be weighed, 1 or more; in a mixed flock caught at random, so that the share of cockerels is chance too.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no bird, or the level is no share.</exception>
    public Estimate<Mass> NextWeighInAt(Age age, int birds, double level = GrowthFit.DefaultLevel)
    {
        Require.AtLeast(birds, 1);
        Require.Share(level);
        double variance = ProjectionData.Variance(spread, Prior.Sex, age.Days, birds, weighInError);
        return Estimated(ProjectionAnswers.Mean(fits, age.Days, variance, spread.Factor(Prior.Sex, age.Days), level), age, level);
    }

    /// <summary>The weight of one bird picked at random; in a mixed flock of either sex.</summary>
    /// <param name="age">Any age.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public Estimate<Mass> BirdAt(Age age, double level = GrowthFit.DefaultLevel)
    {
        Require.Share(level);
        return Estimated(ProjectionAnswers.Bird(fits, spread, age.Days, level), age, level);
    }

    /// <summary>The share of the birds that is to be expected above a weight: the chance that a bird picked at random is heavier.</summary>
    /// <param name="weight">Above 0.</param>
    /// <param name="age">Any age.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public Probability ShareAbove(Mass weight, Age age) => ShareInBands(age, weight)[1].Share;

    /// <summary>The shares of the birds that are to be expected in weight bands: below the first limit, between limits, above the last; together 1.</summary>
    /// <param name="age">Any age.</param>
    /// <param name="limits">At least one, rising, each above 0.</param>
    /// <exception cref="ArgumentException">There is no limit, or they do not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not above 0.</exception>
    public IReadOnlyList<WeightBand> ShareInBands(Age age, params ReadOnlySpan<Mass> limits)
    {
        double[] kilograms = new double[Require.Some<Mass>(limits.ToArray(), nameof(limits)).Count];
        for (int i = 0; i < kilograms.Length; i++)
        {
            kilograms[i] = Require.Positive(limits[i].Kilograms, "kg", nameof(limits));
            if (i > 0)
            {
                Require.Above(kilograms[i], kilograms[i - 1], "kg", nameof(limits));
            }
        }

        double[] below = new double[kilograms.Length];
        ProjectionAnswers.SharesBelow(fits, spread, age.Days, kilograms, below);
        WeightBand[] bands = new WeightBand[kilograms.Length + 1];
        for (int i = 0; i < bands.Length; i++)
        {
            double from = i == 0 ? 0 : below[i - 1];
            double to = i == kilograms.Length ? 1 : below[i];
            bands[i] = new(i == 0 ? null : kilograms[i - 1], i == kilograms.Length ? null : kilograms[i], to - from);
        }

        return bands;
    }

    /// <summary>The weights of all birds at an age if the flock's mean is as given: what packs are counted from.</summary>
    /// <param name="age">The age.</param>
    /// <param name="mean">The flock's mean, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mean is not above 0, or <see cref="CoefficientOfVariation"/> is above 0.3, where a normal curve would hold birds of no weight.</exception>
    public WeightDistribution WeightsAt(Age age, Mass mean) => spread.Weights(Require.Positive(mean.Kilograms, "kg", nameof(mean)), age.Days);

    /// <summary>The share of the birds within 10 % of the flock's mean. It does not depend on how sure the mean is.</summary>
    /// <param name="age">Any age; a mixed flock drifts apart with age.</param>
    public Probability UniformityAt(Age age) => Probability.FromFraction(
        spread.ShareBelow(1.1 * spread.Factor(Prior.Sex, age.Days), 1, age.Days) - spread.ShareBelow(0.9 * spread.Factor(Prior.Sex, age.Days), 1, age.Days));

    /// <summary>The chance that the flock's mean is at or above a weight at an age.</summary>
    /// <param name="weight">Above 0.</param>
    /// <param name="age">Any age.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public Probability ChanceMeanReaches(Mass weight, Age age)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        return Probability.FromFraction(ProjectionAnswers.ChanceAbove(fits, age.Days, kilograms / spread.Factor(Prior.Sex, age.Days)));
    }

    /// <summary>The age at which the flock's mean reaches a weight.</summary>
    /// <param name="weight">Above 0.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1. Open above where the mean may never come so far.</param>
    /// <returns>The age at which the chance to be there is one half; null where it never is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or the level is no share.</exception>
    public Estimate<Age>? AgeAt(Mass weight, double level = GrowthFit.DefaultLevel)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        return Aged(days => kilograms / spread.Factor(Prior.Sex, days), level);
    }

    /// <summary>The age at which a share of the birds has reached a weight.</summary>
    /// <param name="share">The share of the birds that must be as heavy, strictly between 0 and 1.</param>
    /// <param name="weight">Above 0.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1. Open above where so many may never come so far.</param>
    /// <returns>The age at which the chance to be there is one half; null where it never is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Weight, share or level is out of its range.</exception>
    public Estimate<Age>? AgeWhenShareReaches(Probability share, Mass weight, double level = GrowthFit.DefaultLevel)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        double lighter = 1 - Require.Share(share.Fraction, nameof(share));
        return Aged(days => kilograms / spread.Quantile(lighter, days), level);
    }

    /// <summary>What one more weigh-in would add to what is known about the flock's mean at a target age: when to weigh, and how many.</summary>
    /// <param name="age">The age of the further weigh-in.</param>
    /// <param name="birds">How many birds it would weigh, 1 or more.</param>
    /// <param name="target">The age whose mean is to be known.</param>
    /// <param name="level">The chance that the intervals claim, between 0 and 1.</param>
    /// <returns>The width of the interval now, and its mean over fifteen equally likely outcomes of the weigh-in; no curve is fitted again for them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no bird, the weigh-in is before 7 d, or the level is no share.</exception>
    public WeighInWorth WeighInValue(Age age, int birds, Age target, double level = GrowthFit.DefaultLevel)
    {
        Require.AtLeast(birds, 1);
        Require.Between(age.Days, ProjectionData.YoungestDays, double.MaxValue, "d", nameof(age));
        double variance = ProjectionData.Variance(spread, Prior.Sex, age.Days, birds, weighInError);
        (double now, double then) = ProjectionAnswers.Worth(fits, age.Days, variance, target.Days, Require.Share(level));
        return new WeighInWorth(age, birds, target, now, then);
    }

    /// <summary>Whole curves that the batch may be following, to try plans on.</summary>
    /// <param name="seed">Any number; the same seed draws the same curves.</param>
    /// <param name="ages">The ages at which their weights are wanted, at least one, in any order.</param>
    /// <exception cref="ArgumentException">There is no age.</exception>
    public CurveDraws Draws(long seed, params ReadOnlySpan<Age> ages)
    {
        Require.Some<Age>(ages.ToArray(), nameof(ages));
        return new CurveDraws(fits, spread, seed, ages);
    }

    private Estimate<Mass> Estimated((double Low, double Median, double High) kilograms, Age age, double level) => new(
        Mass.FromKilograms(ProjectionAnswers.Held(kilograms.Median, age.Days)),
        Interval<Mass>.Of(Mass.FromKilograms(kilograms.Low), Mass.FromKilograms(ProjectionAnswers.Held(kilograms.High, age.Days)), level),
        Model,
        ProjectionCautions.At(Cautions, age.Days));

    private Estimate<Age>? Aged(Func<double, double> thresholdKilograms, double level)
    {
        Require.Share(level);
        if (ProjectionAnswers.AgeOfChance(fits, thresholdKilograms, 0.5) is not { } days)
        {
            return null;
        }

        double low = ProjectionAnswers.AgeOfChance(fits, thresholdKilograms, (1 - level) / 2) ?? 0;
        double? high = ProjectionAnswers.AgeOfChance(fits, thresholdKilograms, (1 + level) / 2);
        Interval<Age> interval = Interval<Age>.Of(Age.FromDays(low), high is { } latest ? Age.FromDays(latest) : null, level);
        return new Estimate<Age>(Age.FromDays(days), interval, Model, ProjectionCautions.At(Cautions, days));
    }
}
