using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Priors and weigh-ins of the tests of projection.</summary>
internal static class ProjectionCases
{
    /// <summary>The prior with which the method was measured: one sex, ln A ~ N(ln 7.0, .20), ln k ~ N(ln .0395, .10), t* ~ N(38.5, 4).</summary>
    public static GrowthPrior Measured { get; } = Prior(Sex.Male, [Math.Log(7.0), Math.Log(0.0395), 38.5], [0.20, 0.10, 4]);

    /// <summary>The check case of the method: a breeder's objectives of 2012, males (secondary), weighed as 50 birds at 7 to 28 d.</summary>
    public static WeighInSeries CheckCase { get; } = Means((7, 184), (14, 477), (21, 943), (28, 1550));

    public static GrowthPrior Prior(Sex sex, double[] means, double[] deviations) => GrowthPrior.FromMoments(
        new ModelInfo(
            "test-prior", "Prior of a test", "ln A", [new("A", "mature weight", "kg")], [new Citation("Test", "invented", HowKnown.Assumption)], "none", HowKnown.Assumption),
        sex,
        means,
        [deviations[0] * deviations[0], 0, 0, 0, deviations[1] * deviations[1], 0, 0, 0, deviations[2] * deviations[2]]);

    /// <summary>Means of 50 birds without a spread: 10 % is assumed.</summary>
    public static WeighInSeries Means(params (double Days, double Grams)[] rows) =>
        WeighInSeries.Of(rows.Select(row => WeighIn.Mean(Age.FromDays(row.Days), Mass.FromGrams(row.Grams), 50)));

    public static double[] Kilograms(Estimate<Mass> estimate) =>
        [estimate.Interval.Low!.Value.Kilograms, estimate.Value.Kilograms, estimate.Interval.High!.Value.Kilograms];
}
