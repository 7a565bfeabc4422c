using BenchmarkDotNet.Attributes;
using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>Packs of 300 birds of both sexes, the heaviest 40 % cut up: the exact law of the counts beside one sampled flock, and the search for the share to cut.</summary>
[MemoryDiagnoser]
public class PackCount
{
    private const int Birds = 300;

    private readonly DeliveredBirds flock = DeliveredBirds.Of(
        Birds, WeightDistribution.OfSexes(Mass.FromKilograms(3.2), Mass.FromKilograms(2.7), Probability.FromFraction(0.5), 0.1), LiveState.FullFed);

    private readonly PlantConditions plant = new() { Dressing = Dressings.For(BirdType.Fast), AtKilling = LiveState.OffFeed(Duration.FromHours(12)) };

    private readonly CutOrder order = CutOrder.HeaviestFirst(
        CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(40)), CutOrderLine.Of(null, Probability.FromPercent(60)));

    private readonly PackOffer[] offers =
    [
        Offer("whole", 1).Weighing(null, Mass.FromKilograms(1.9)), Offer("whole", 1).Weighing(Mass.FromKilograms(1.9), null), Offer("breast", 2), Offer("thigh", 4),
        Offer("drumstick", 4), Offer("wing", 6), Offer("frame", 1),
    ];

    private readonly double[] weights = new double[Birds];
    private readonly Random random = new(1);

    /// <summary>One flock weighed and ranked bird by bird; thousands are needed for a mean and a spread.</summary>
    [Benchmark(Baseline = true)]
    public double OneSampledFlock()
    {
        for (int bird = 0; bird < Birds; bird++)
        {
            weights[bird] = flock.Weights.WeightAt(Probability.FromFraction(Math.Clamp(random.NextDouble(), 1e-9, 1 - 1e-9))).Kilograms;
        }

        Array.Sort(weights);
        return weights[180..].Sum();
    }

    /// <summary>As many as a mean and a spread within some percent take.</summary>
    [Benchmark]
    public double ThousandSampledFlocks()
    {
        double sum = 0;
        for (int sample = 0; sample < 1000; sample++)
        {
            sum += OneSampledFlock();
        }

        return sum;
    }

    /// <summary>Expected packs, their spread and what sells of them.</summary>
    [Benchmark]
    public PlantReturn ExactCounts() => PlantReturn.Of(flock, plant, order, offers);

    /// <summary>Twenty-one shares of birds to be cut.</summary>
    [Benchmark]
    public CutAdvice SearchForTheShare() => CutAdvice.Of(flock, plant, CutSets.Rudn42Days, offers);

    private static PackOffer Offer(string piece, int perPack) => PackOffer.ByWeight(piece, perPack, UnitPrice.FromAmountPerKilogram(9), Demand.Of(20, 40, 60));
}
