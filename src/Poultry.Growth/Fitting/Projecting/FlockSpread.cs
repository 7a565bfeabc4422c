using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>
/// How the weights of single birds lie about the curve of a projection. One sex: normal, with a fixed share of the mean as deviation. Mixed: two
/// such curves, tied by <see cref="SexDimorphism"/>; the curve projected is the mean of the two, each sex counted once.
/// </summary>
internal sealed class FlockSpread
{
    /// <summary>An even flock of one sex (growth evidence: 5 % even, 10 % uneven; assumption): what is taken where two curves alone explain more than the spread weighed.</summary>
    private const double EvenFlock = 0.05;

    private readonly double maleShare;

    /// <param name="sex">Of the flock.</param>
    /// <param name="weighIns">What was weighed; may be nothing.</param>
    /// <param name="options">What was given.</param>
    /// <param name="known">The spread to take where neither tells; null where there is none.</param>
    public FlockSpread(Sex sex, IEnumerable<WeighIn>? weighIns, ProjectionOptions options, double? known = null)
    {
        (Sex, maleShare) = (sex, options.MaleShare);
        double? seen = options.CoefficientOfVariation ?? Within(weighIns ?? []) ?? known;
        IsAssumed = seen is null;
        SexesExplainMore = sex == Sex.Mixed && options.CoefficientOfVariation is null && seen < EvenFlock;
        Variation = SexesExplainMore ? EvenFlock : seen ?? ErrorModel.AssumedCoefficientOfVariation;
    }

    public Sex Sex { get; }

    /// <summary>Coefficient of variation between birds of one sex.</summary>
    public double Variation { get; }

    /// <summary>Whether nothing weighed and no option tells the spread.</summary>
    public bool IsAssumed { get; }

    /// <summary>Whether the spread weighed is less than a mixed flock must have.</summary>
    public bool SexesExplainMore { get; }

    /// <summary>How many normal curves a flock is.</summary>
    public int Parts => Sex == Sex.Mixed ? 2 : 1;

    /// <summary>The share of the birds in a part, and their mean over the curve projected.</summary>
    public (double Share, double Factor) Part(int part, double days) => Parts == 1
        ? (1, 1)
        : part == 0 ? (maleShare, Factor(Sex.Male, days)) : (1 - maleShare, Factor(Sex.Female, days));

    /// <summary>Mean of birds of a sex, or of the flock for mixed, over the curve projected.</summary>
    public double Factor(Sex sex, double days)
    {
        if (Parts == 1)
        {
            return 1;
        }

        double ratio = SexDimorphism.FemaleRatio(days);
        return sex switch
        {
            Sex.Male => 2 / (1 + ratio),
            Sex.Female => 2 * ratio / (1 + ratio),
            _ => 2 * (maleShare + ((1 - maleShare) * ratio)) / (1 + ratio),
        };
    }

    /// <summary>What a weigh-in says about the logarithm of the curve projected, in kg.</summary>
    public double LogCurve(WeighIn weighIn) => Math.Log(weighIn.MeanKilograms / Factor(weighIn.Sex, weighIn.AgeDays));

    /// <summary>Squared coefficient of variation of birds caught at random: within the sexes and between them, so that a catch has a random share of cockerels.</summary>
    public double Squared(Sex caught, double days)
    {
        double within = Variation * Variation;
        double between = caught == Sex.Mixed ? Between(days) : 0;
        return (within * (1 + between)) + between;
    }

    /// <summary>The share of birds lighter than a weight, where the curve projected is at another.</summary>
    public double ShareBelow(double kilograms, double curveKilograms, double days)
    {
        double sum = 0;
        for (int part = 0; part < Parts; part++)
        {
            (double share, double factor) = Part(part, days);
            double mean = factor * curveKilograms;
            sum += share * Distributions.NormalProbability((kilograms - mean) / (Variation * mean));
        }

        return sum;
    }

    /// <summary>The weight, over the curve projected, below which a share of the birds lies.</summary>
    public double Quantile(double share, double days)
    {
        NormalMixture birds = NormalMixture.In(stackalloc double[3 * Parts]);
        for (int part = 0; part < Parts; part++)
        {
            (birds.Weights[part], birds.Means[part]) = Part(part, days);
            birds.Deviations[part] = Variation * birds.Means[part];
        }

        return birds.Quantile(share);
    }

    /// <summary>The weights of all birds where their mean is known.</summary>
    public WeightDistribution Weights(double meanKilograms, double days)
    {
        double curve = meanKilograms / Factor(Sex, days);
        return Parts == 1
            ? WeightDistribution.Of(Mass.FromKilograms(meanKilograms), Variation)
            : WeightDistribution.OfSexes(
                Mass.FromKilograms(curve * Factor(Sex.Male, days)), Mass.FromKilograms(curve * Factor(Sex.Female, days)), Probability.FromFraction(maleShare), Variation);
    }

    /// <summary>Squared deviation of the two means about the flock's, over the square of the flock's; 0 for one sex.</summary>
    private double Between(double days)
    {
        if (Parts == 1)
        {
            return 0;
        }

        double difference = (Factor(Sex.Male, days) - Factor(Sex.Female, days)) / Factor(Sex.Mixed, days);
        return maleShare * (1 - maleShare) * difference * difference;
    }

    /// <summary>The spread within the sexes that the weigh-ins show: their pooled square less what the sexes explain; 0 where they explain more, null where none shows it.</summary>
    private double? Within(IEnumerable<WeighIn> weighIns)
    {
        double squares = 0, degrees = 0;
        foreach (WeighIn weighIn in weighIns)
        {
            if (weighIn.CoefficientOfVariation is { } variation)
            {
                double between = weighIn.Sex == Sex.Mixed ? Between(weighIn.AgeDays) : 0;
                squares += (weighIn.BirdsWeighed - 1) * ((variation * variation) - between) / (1 + between);
                degrees += weighIn.BirdsWeighed - 1;
            }
        }

        // Birds all of one weight say nothing about spread.
        return degrees == 0 || (squares <= 0 && Parts == 1) ? null : Math.Sqrt(Math.Max(0, squares / degrees));
    }
}
