using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The batch on two days: for every pair of days the share that brings most.</summary>
internal static class SplitTable
{
    public static void Print(PlanAnswer answer, Page page)
    {
        if (answer.Splits.Count == 0)
        {
            return;
        }

        string weight = page.Units.Weight;
        page.Title("Split over two days, " + (answer.Splits[0].Birds == FirstBirds.Largest ? "the largest birds" : "those caught") + " first: the best share of each pair");
        page.Table(
            ["<first", "<then", "birds %", "head", "mean " + weight, "then head", "mean " + weight, "floor kept %", "revenue", "cost", "margin", "low", "high", "worst tenth", "gain", "better %", "decide by"],
            answer.Splits.DistinctBy(split => (split.First.Date, split.Second.Date)).Select(split => (IReadOnlyList<string>)
            [
                Numbers.Date(split.First.Date),
                Numbers.Date(split.Second.Date),
                Numbers.Percent(split.Share.Fraction),
                Numbers.Whole(split.FirstHead.Value),
                page.Units.Text(split.FirstWeight.Value, 2),
                Numbers.Whole(split.SecondHead.Value),
                page.Units.Text(split.SecondWeight.Value, 2),
                split.ChanceDensityMet is { } met ? Numbers.Percent(met.Fraction) : "-",
                Numbers.Whole(split.Revenue.Value.Amount),
                Numbers.Whole(split.Cost.Value.Amount),
                Numbers.Whole(split.Margin.Value.Amount),
                Numbers.Bound(split.Margin.Interval.Low?.Amount, 0),
                Numbers.Bound(split.Margin.Interval.High?.Amount, 0),
                Numbers.Whole(split.BadCase.Amount),
                Numbers.Whole(split.Gain.Value.Amount),
                Numbers.Percent(split.ChanceBetter.Fraction),
                Numbers.Date(split.DecideBy),
            ]));
        HarvestSplit best = answer.Splits[0];
        page.Line(best.Gain.Value.Amount > 0
            ? "The best split brings " + Numbers.Whole(best.Gain.Value.Amount) + " more on average than the single day recommended, and more than it with a chance of " + best.ChanceBetter + "."
            : "No split brings more on average than the single day recommended.");
    }
}
