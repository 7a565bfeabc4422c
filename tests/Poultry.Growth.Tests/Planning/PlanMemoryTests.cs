using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

/// <summary>What a plan takes of memory, everything counted that is ever allocated, not only what stays.</summary>
public class PlanMemoryTests
{
    /// <summary>Estimates of a day: head, weight, feed, meat sold, dead, condemned, lesions, revenue, cost, margin, orders filled, margin a bird, a kg and a shelter-day, break-even price, share wanted; packs sold and left of one offer.</summary>
    private const int ReportedOutcomes = 18;

    [Theory]
    [InlineData(56)]
    [InlineData(49, 56, 63)]
    public void Eight_bytes_a_draw_date_and_outcome_are_enough(params int[] ages)
    {
        const int More = 8000;
        BatchPlan plan = HarvestCase.Plan(largeLoss: LargeLoss.OneBatchInThirty, dates: [.. ages.Select(age => HarvestCase.On(age))]);
        Allocated(plan, 500);

        long fewer = Allocated(plan, 1000), grown = Allocated(plan, 1000 + More) - fewer;

        // Threads have room of their own for every 250 draws, which is within the bound too.
        grown.Should().BePositive().And.BeLessThanOrEqualTo(8L * More * ages.Length * ReportedOutcomes);
        fewer.Should().BeLessThan(30_000_000, "tables of packs, feed and curves, whatever the draws");
    }

    [Fact]
    public void Ten_times_the_birds_take_no_more_memory_and_no_other_path()
    {
        BatchPlan Of(int birds) => Cut(HarvestCase.Plan(dates: HarvestCase.On(56, new())), birds);
        Allocated(Of(1000), 500);

        long thousand = Allocated(Of(1000), 500), tenThousand = Allocated(Of(10_000), 500);

        tenThousand.Should().BeCloseTo(thousand, (ulong)(0.01 * thousand));
    }

    private static BatchPlan Cut(BatchPlan plan, int birds) => new()
    {
        Name = plan.Name,
        Placed = plan.Placed,
        Birds = HeadCountPath.Expected(birds, plan.Birds.AgeAtPlacement, plan.Birds.Thereafter),
        Growth = plan.Growth,
        Feeds = plan.Feeds,
        Feeding = plan.Feeding,
        Plant = plan.Plant,
        Order = CutOrder.HeaviestFirst(CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(40)), CutOrderLine.Of(null, Probability.FromPercent(60))),
        Offers = [.. plan.Offers, PackOffer.ByWeight("thigh", 4, UnitPrice.FromAmountPerKilogram(8), Demand.Of(20, 40, 60))],
        Dates = plan.Dates,
        Costs = plan.Costs,
    };

    private static long Allocated(BatchPlan plan, int draws)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        HarvestComparison.Of(plan, new() { Draws = draws, Threads = 1 });
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
