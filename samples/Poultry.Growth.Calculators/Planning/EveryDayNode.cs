using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A day of killing, whether it is offered or not, for programs.</summary>
internal sealed record EveryDayNode(DateOnly Date, double AgeDays, OutcomeNode MeanKg, OutcomeNode Margin)
{
    public static EveryDayNode Of(HarvestOption option) => new(
        option.Date.Date, option.Age.Days, OutcomeNode.Of(option.MeanWeight, weight => weight.Kilograms), OutcomeNode.Of(option.Margin, money => money.Amount));
}

/// <summary>What it costs that the plant kills on a few days only.</summary>
internal sealed record CalendarCostNode(DateOnly BestDate, double AgeDays, OutcomeNode Cost)
{
    public static CalendarCostNode Of(CalendarCost calendar) => new(
        calendar.Best.Date.Date, calendar.Best.Age.Days, OutcomeNode.Of(calendar.Cost, money => money.Amount));
}
