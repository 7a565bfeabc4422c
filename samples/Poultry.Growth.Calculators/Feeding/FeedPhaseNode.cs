using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>What to buy of a feed.</summary>
/// <param name="Name">As the farm calls it.</param>
/// <param name="Kg">For the whole batch, as far as the forecast goes.</param>
/// <param name="LowKg">Its lower bound.</param>
/// <param name="HighKg">Its upper bound.</param>
/// <param name="Bags">Full bags that hold it; null where it comes loose.</param>
/// <param name="BagsAtMost">Full bags that hold the upper bound.</param>
/// <param name="BuyBy">The last day to order; null where the day of placement is not known.</param>
/// <param name="BuyByDaysAfterPlacement">The same; below 0 before the chicks come.</param>
/// <param name="Cost">Of the bags; null where no price is known.</param>
/// <param name="CostLow">Of the bags that hold the lower bound.</param>
/// <param name="CostHigh">Of the bags that hold the upper bound.</param>
internal sealed record FeedPhaseNode(
    string Name, double Kg, double? LowKg, double? HighKg, int? Bags, int? BagsAtMost, DateOnly? BuyBy, double BuyByDaysAfterPlacement, double? Cost, double? CostLow, double? CostHigh)
{
    public static FeedPhaseNode Of(PhaseFeed phase, DateOnly? placed) => new(
        phase.Phase.Name,
        phase.Feed.Value.Kilograms,
        phase.Feed.Interval.Low?.Kilograms,
        phase.Feed.Interval.High?.Kilograms,
        phase.Bags,
        phase.BagsAtMost,
        BuyByOf(phase, placed),
        phase.OrderBy.Days,
        phase.Cost?.Amount,
        phase.CostInterval?.Low?.Amount,
        phase.CostInterval?.High?.Amount);

    public static DateOnly? BuyByOf(PhaseFeed phase, DateOnly? placed) => placed?.AddDays((int)Math.Floor(phase.OrderBy.Days));
}
