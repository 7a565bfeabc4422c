using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>A batch against a standard: how much heavier or lighter, and how many days ahead or behind, at each age that was weighed.</summary>
/// <remarks>
/// Nothing is fitted: each age stands by itself. The interval holds the chance of which birds were caught, and nothing else: an error of the scale or
/// the time of day comes on top.
/// </remarks>
public static class StandardComparison
{
    /// <summary>Equation and source.</summary>
    public static ModelInfo Model { get; } = new(
        "standard-comparison",
        "Batch against a standard",
        "difference: m - S(a); ahead: S^-1(m) - a; limits: m exp(±q CV/sqrt(n)) in place of m",
        [
            new ModelSymbol("m", "mean of the birds weighed", "kg"),
            new ModelSymbol("S", "weight by the standard", "kg"),
            new ModelSymbol("a", "age", "d"),
            new ModelSymbol("n", "birds weighed at that age", "-"),
            new ModelSymbol("CV", "coefficient of variation between birds, over all weigh-ins", "-"),
            new ModelSymbol("q", "Student's t of the birds behind the CV; of the normal curve where the CV is assumed", "-"),
        ],
        [new Citation("Student1908", "Student 1908, The probable error of a mean, Biometrika 6:1-25", HowKnown.Memory)],
        "The share of intervals that hold the difference of the whole flock is the level asked for, where birds are caught at random from a large flock. The standard itself has no error here.",
        HowKnown.Derived);

    /// <summary>Compares the mean of each age with a standard; cockerels, pullets and mixed birds of one age apart.</summary>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="standard">A table of weights by age, of the same strain and sex as far as may be; its cautions go with every difference.</param>
    /// <param name="level">The chance that the intervals claim, between 0 and 1.</param>
    /// <returns>One an age and sex, by age.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public static IReadOnlyList<StandardDifference> Of(WeighInSeries weighIns, TabulatedCurve standard, double level = GrowthFit.DefaultLevel) =>
        Compare(weighIns, standard, [], level);

    /// <summary>Compares the mean of each age with a shipped standard; birds that are not of its sex are compared too, with a caution.</summary>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="standard">The standard; its cautions go with every difference.</param>
    /// <param name="level">The chance that the intervals claim, between 0 and 1.</param>
    /// <returns>One an age and sex, by age.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public static IReadOnlyList<StandardDifference> With(WeighInSeries weighIns, GrowthStandard standard, double level = GrowthFit.DefaultLevel)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        ArgumentNullException.ThrowIfNull(standard);
        bool sameSex = weighIns.All(weighIn => weighIn.Sex == standard.Sex);
        return Compare(weighIns, standard.Table, sameSex ? [] : [OtherSex(standard.Sex)], level);
    }

    private static IReadOnlyList<StandardDifference> Compare(WeighInSeries weighIns, TabulatedCurve standard, IReadOnlyList<Caution> more, double level)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        ArgumentNullException.ThrowIfNull(standard);
        Require.Share(level);
        double birdsToSpare = weighIns.Where(weighIn => weighIn.StandardDeviation is not null).Sum(weighIn => weighIn.BirdsWeighed - 1.0);
        double? variation = weighIns.PooledCoefficientOfVariation;
        double reach = variation is { } seen
            ? seen * Distributions.StudentQuantile((1 + level) / 2, birdsToSpare)
            : ErrorModel.AssumedCoefficientOfVariation * Distributions.NormalQuantile((1 + level) / 2);
        IReadOnlyList<Caution> cautions = [.. standard.Cautions, .. more, Uniformity.CaughtBirds, .. variation is null ? [FitCautions.SpreadAssumed] : Array.Empty<Caution>()];
        return [.. Uniformity.ByAge(weighIns).Select(weighed => Difference(weighed, standard, reach / Math.Sqrt(weighed.Birds), level, cautions))];
    }

    private static Caution OtherSex(Sex sex) => new(
        "standard-of-other-sex",
        "The standard is of " + (sex == Sex.Male ? "cockerels" : "pullets") + " and these birds are not, or not all: at 56 d pullets weigh 0.83 of what cockerels do, and both together lie between.");

    private static StandardDifference Difference(
        Uniformity weighed, TabulatedCurve standard, double reach, double level, IReadOnlyList<Caution> cautions)
    {
        double mean = weighed.MeanKilograms;
        (double low, double high) = (mean * Math.Exp(-reach), mean * Math.Exp(reach));
        Mass? expected = standard.Covers(weighed.Age) ? standard.WeightAt(weighed.Age) : null;
        Estimate<Mass>? difference = expected is { Kilograms: var kilograms }
            ? new(
                Mass.FromKilograms(mean - kilograms),
                Interval<Mass>.Of(Mass.FromKilograms(low - kilograms), Mass.FromKilograms(high - kilograms), level),
                Model,
                cautions)
            : null;
        Estimate<Duration>? ahead = Ahead(mean) is { } time ? new(time, Interval<Duration>.Of(Ahead(low), Ahead(high), level), Model, cautions) : null;
        return new StandardDifference(weighed, expected, difference, ahead);

        Duration? Ahead(double weight) => standard.AgeAt(Mass.FromKilograms(weight)).Age is { } age ? age - weighed.Age : null;
    }
}
