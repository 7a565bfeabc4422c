using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>All birds killed on one day.</summary>
internal sealed class HarvestDay : IHarvestChoice
{
    private readonly BatchPlan plan;
    private readonly HarvestLot lot;
    private readonly double fixedCost;

    public HarvestDay(BatchPlan plan, OfferedDate date)
    {
        (this.plan, lot) = (plan, new(plan, date, 1, flock => flock));
        fixedCost = plan.Costs.Of(plan.Birds.Placed, (Age - plan.Birds.AgeAtPlacement).Days, trips: 1) + MovingCost(plan, date);
    }

    public OfferedDate Date => lot.Date;

    public Age Age => lot.Age;

    public IReadOnlyList<Caution> Cautions => lot.Cautions;

    Age IHarvestChoice.LastAge => Age;

    /// <summary>What it costs that none of these days is the one booked.</summary>
    public static double MovingCost(BatchPlan plan, params ReadOnlySpan<OfferedDate> dates)
    {
        foreach (OfferedDate date in dates)
        {
            if (date.IsBooked)
            {
                return 0;
            }
        }

        return plan.Dates.FirstOrDefault(booked => booked.IsBooked) is { } now ? now.ChangeCost.Amount + now.Terms.Deposit.Amount : 0;
    }

    public HarvestOutcome Of(BatchFate fate, Span<double> packs)
    {
        packs.Clear();
        int head = fate.Head(Age);
        (double kilograms, (double feed, double feedCost)) = (fate.Kilograms(Age), fate.Feed(Age));
        LotOutcome plant = lot.Take(kilograms, head, fate.Inputs, packs[..(packs.Length / 2)]);
        return HarvestOutcome.Of(plan, fate.Inputs, packs, plant, fixedCost + feedCost) with { Head = head, MeanKilograms = kilograms, FeedKilograms = feed };
    }
}
