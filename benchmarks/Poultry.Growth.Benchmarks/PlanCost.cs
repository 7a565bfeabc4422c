using BenchmarkDotNet.Attributes;
using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>
/// A plan of an invented batch, whole birds in three bands of weight and cuts of the heaviest, on one thread. Beside it one normal number for every bird and draw, which is
/// the least that a simulation bird by bird would cost.
/// </summary>
[MemoryDiagnoser]
public class PlanCost
{
    private readonly double[] sums = new double[1];

    /// <summary>Birds placed.</summary>
    [Params(300)]
    public int Birds { get; set; }

    /// <summary>Fates tried.</summary>
    [Params(10_000)]
    public int Draws { get; set; }

    /// <summary>One normal a bird and draw, by Box and Muller.</summary>
    [Benchmark(Baseline = true)]
    public double NormalsOfBirds()
    {
        Random random = new(1);
        for (int draw = 0; draw < Draws; draw++)
        {
            for (int bird = 0; bird < Birds; bird++)
            {
                sums[0] += Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            }
        }

        return sums[0];
    }

    /// <summary>One day offered: its margin with everything around it, one more day too.</summary>
    [Benchmark]
    public HarvestComparison OneDate() => HarvestComparison.Of(Plan(Birds, 56), Options(Draws));

    /// <summary>The same with half of the draws.</summary>
    [Benchmark]
    public HarvestComparison HalfTheDraws() => HarvestComparison.Of(Plan(Birds, 56), Options(Draws / 2));

    /// <summary>Three days offered.</summary>
    [Benchmark]
    public HarvestComparison ThreeDates() => HarvestComparison.Of(Plan(Birds, 49, 56, 63), Options(Draws));

    /// <summary>Ten times the birds.</summary>
    [Benchmark]
    public HarvestComparison TenTimesTheBirds() => HarvestComparison.Of(Plan(10 * Birds, 56), Options(Draws));

    /// <summary>The first question of a grower: three days, the usual draws, all cores.</summary>
    [Benchmark]
    public HarvestComparison AsAsked() => HarvestComparison.Of(Plan(Birds, 49, 56, 63));

    private static HarvestOptions Options(int draws) => new() { Draws = draws, Threads = 1 };

    private static BatchPlan Plan(int birds, params IReadOnlyList<int> ages) => new()
    {
        Name = "invented",
        Placed = new(2027, 4, 12),
        Birds = HeadCountPath.Expected(birds, Age.FromDays(1), Survival.FastGrowingOutdoor),
        Growth = Projection.Of(
            WeighInSeries.Of(
                WeighIn.Mean(Age.FromDays(14), Mass.FromGrams(390), 20),
                WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(720), 20),
                WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1150), 20)),
            GrowthPrior.FastGrowingOutdoor(Sex.Mixed)),
        Feeds = FeedingPlan.UsualDiets,
        Feeding = new()
        {
            Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(16))), HatchWeight = Mass.FromGrams(42),
        },
        Plant = new() { Dressing = Dressings.For(BirdType.Fast) },
        Order = CutOrder.HeaviestFirst(CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(40)), CutOrderLine.Of(null, Probability.FromPercent(60))),
        Offers =
        [
            Offer("whole", 1).Weighing(null, Mass.FromKilograms(1.7)), Offer("whole", 1).Weighing(Mass.FromKilograms(1.7), Mass.FromKilograms(2.3)),
            Offer("whole", 1).Weighing(Mass.FromKilograms(2.3), null), Offer("breast", 2), Offer("thigh", 4), Offer("drumstick", 4), Offer("wing", 6), Offer("frame", 1),
        ],
        Dates = [.. ages.Select(age => new OfferedDate { Date = new DateOnly(2027, 4, 12).AddDays(age - 1), Terms = new() { PerBird = Money.Of(5) } })],
        Costs = new() { Chick = Money.Of(2), LabourHour = Money.Of(18), LabourADay = Duration.FromMinutes(50) },
    };

    private static PackOffer Offer(string piece, int perPack) => PackOffer.ByWeight(piece, perPack, UnitPrice.FromAmountPerKilogram(9), Demand.Of(20, 40, 60));
}
