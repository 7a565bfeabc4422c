using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What it costs that the plant kills on a few days only: every day between the first and the last of them, each on the terms of the day recommended.</summary>
/// <remarks>Nothing is counted for moving a booked date, and no other day is really on offer: it tells what a plant with more days, or an own licence, is worth.</remarks>
public sealed class CalendarCost
{
    internal CalendarCost(IReadOnlyList<HarvestOption> days, HarvestOption best, Estimate<Money> cost) => (Days, Best, Cost) = (days, best, cost);

    /// <summary>Every day, in order.</summary>
    public IReadOnlyList<HarvestOption> Days { get; }

    /// <summary>The day with the highest mean margin.</summary>
    public HarvestOption Best { get; }

    /// <summary>What that day brings more than the day recommended, over the same fates; 0 where it is the same.</summary>
    public Estimate<Money> Cost { get; }

    /// <summary>In one line, in every culture.</summary>
    public override string ToString() => "best of every day " + Best.Date + ", the calendar costs " + Cost;
}
