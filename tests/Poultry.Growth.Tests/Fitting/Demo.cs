using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Invented weigh-ins for tests.</summary>
internal static class Demo
{
    /// <summary>Ages in days and means in g of an invented batch, about those of fast-growing birds outdoors.</summary>
    public static readonly (double Days, double Grams)[] Means =
        [(0, 41), (7, 148), (14, 352), (21, 665), (28, 1062), (35, 1498), (42, 1967), (49, 2409)];

    public static WeighInSeries Series(double factor = 1) =>
        WeighInSeries.Of(Means.Select(row => WeighIn.Mean(Age.FromDays(row.Days), Mass.FromGrams(factor * row.Grams), 20)));

    /// <summary>The same with five single birds a day, spread evenly about the mean.</summary>
    public static WeighInSeries SingleBirds() => WeighInSeries.Of(Means.Select(row => WeighIn.Birds(
        Age.FromDays(row.Days), ((double[])[0.86, 0.95, 1, 1.04, 1.15]).Select(share => Mass.FromGrams(share * row.Grams)))));

    /// <summary>What <see cref="SingleBirds"/> says, as means with standard deviations.</summary>
    public static WeighInSeries MeansOfSingleBirds() => WeighInSeries.Of(SingleBirds().Select(weighIn =>
        WeighIn.Mean(weighIn.Age, weighIn.MeanWeight, weighIn.BirdsWeighed, weighIn.StandardDeviation)));
}
