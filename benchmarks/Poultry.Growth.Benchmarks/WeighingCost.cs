using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Statistics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>Two hundred birds of one weigh-in summed up, and eight weigh-ins of fifty searched for doubtful figures. Beside it MathNet's statistics and histogram, and three sigmas by them.</summary>
[MemoryDiagnoser]
public class WeighingCost
{
    private readonly double[] grams = Grams(200, 2600);
    private readonly WeighIn weighIn;
    private readonly WeighIn[] weekly;
    private readonly double[][] weeklyGrams;

    /// <summary>Invented birds, repeatable.</summary>
    public WeighingCost()
    {
        weighIn = WeighIn.Birds(Age.FromDays(42), grams.Select(weight => Mass.FromGrams(weight)));
        weeklyGrams = [.. Enumerable.Range(1, 8).Select(week => Grams(50, 25 * Math.Pow(week + 2, 2)))];
        weekly = [.. weeklyGrams.Select((weights, week) => WeighIn.Birds(Age.FromWeeks(week + 1), weights.Select(weight => Mass.FromGrams(weight))))];
    }

    /// <summary>Mean, deviation, share within 10 % and histogram by MathNet.</summary>
    [Benchmark(Baseline = true)]
    public double MathNetStatistics()
    {
        DescriptiveStatistics statistics = new(grams);
        MathNet.Numerics.Statistics.Histogram histogram = new(grams, 12);
        return statistics.StandardDeviation + histogram[0].Count + grams.Count(weight => Math.Abs(weight - statistics.Mean) <= 0.1 * statistics.Mean);
    }

    /// <summary>The same with its interval and cautions.</summary>
    [Benchmark]
    public Uniformity Summary() => Uniformity.Of(weighIn);

    /// <summary>Birds beyond three sigmas of their weigh-in, by MathNet.</summary>
    [Benchmark]
    public int ThreeSigmas()
    {
        int beyond = 0;
        foreach (double[] weights in weeklyGrams)
        {
            (double mean, double deviation) = weights.MeanStandardDeviation();
            beyond += weights.Count(weight => Math.Abs(weight - mean) > 3 * deviation);
        }

        return beyond;
    }

    /// <summary>All checks of a series: units, digits, ages, falling means, spread.</summary>
    [Benchmark]
    public int Suspicions() => WeighInSeries.Of(weekly).Suspicions.Count;

    private static double[] Grams(int birds, double mean) =>
        [.. Enumerable.Range(0, birds).Select(bird => Math.Round(mean * (1 + (0.18 * Math.Sin(12.9898 * bird)))))];
}
