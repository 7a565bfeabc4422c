using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Distributions;
using Poultry.Growth.Curves;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>The chance that more than 280 of 300 birds live to 56 d, beside a thousand batches sampled by MathNet's distributions; shares of weights beside a thousand birds; heat day by day.</summary>
[MemoryDiagnoser]
public class FlockCost
{
    private const int Samples = 1000;

    private static readonly Age End = Age.FromDays(56);
    private static readonly HeadCountPath Birds = HeadCountPath.Expected(300, Age.FromDays(1), Survival.FastGrowingOutdoor);
    private static readonly WeightDistribution Weights = WeightDistribution.OfSexes(Mass.FromKilograms(3.2), Mass.FromKilograms(2.7), Probability.FromFraction(0.5), 0.1);
    private static readonly GompertzCurve Curve = GompertzCurve.FromHatchWeight(Mass.FromGrams(42), Mass.FromKilograms(4.9), DailyRate.FromPerDay(0.0415));

    private readonly Random random = new(1);

    /// <summary>Batches sampled one by one.</summary>
    [Benchmark(Baseline = true)]
    public int SampledBatches()
    {
        int more = 0;
        for (int batch = 0; batch < Samples; batch++)
        {
            double alive = Survival.FastGrowingOutdoor.ShareAliveInBatch(Age.FromDays(1), End, Normal.Sample(random, 0, 1)).Fraction;
            more += Binomial.Sample(random, alive, 300) > 280 ? 1 : 0;
        }

        return more;
    }

    /// <summary>The chance itself.</summary>
    [Benchmark]
    public double ChanceAlive() => Birds.ChanceOfMoreThan(280, End).Fraction;

    /// <summary>Birds of both sexes sampled one by one, and their share below a weight.</summary>
    [Benchmark]
    public int SampledWeights()
    {
        int below = 0;
        for (int bird = 0; bird < Samples; bird++)
        {
            double mean = random.NextDouble() < 0.5 ? 3.2 : 2.7;
            below += Normal.Sample(random, mean, 0.1 * mean) < 2.5 ? 1 : 0;
        }

        return below;
    }

    /// <summary>The share itself.</summary>
    [Benchmark]
    public double ShareBelow() => Weights.ShareBelow(Mass.FromKilograms(2.5)).Fraction;

    /// <summary>The heat of the birds alive, day by day.</summary>
    [Benchmark]
    public double Heat()
    {
        double watts = 0;
        for (int day = 1; day <= 56; day++)
        {
            Age age = Age.FromDays(day);
            watts += Birds.BirdsAt(age) * (double)BirdHeat.ChepeteXin2001.Total(Curve.WeightAt(age)).Watts;
        }

        return watts;
    }
}
