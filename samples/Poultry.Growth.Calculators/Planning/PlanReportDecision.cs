using System.Xml.Linq;
using Poultry.Growth.Evidence;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>What a reader of the page must know first: the day, what it brings, what may go wrong, how sure, what would change it.</summary>
internal static class PlanReportDecision
{
    public static IEnumerable<XElement?> Of(PlanAnswer answer)
    {
        HarvestComparison comparison = answer.Comparison;
        HarvestOption best = comparison.Recommended;
        yield return Parts.Headline("Kill on " + ReportDates.Full(best.Date.Date) + ", at " + best.Age);
        yield return Parts.Paragraph("Chosen for the highest mean margin of the batch. " + comparison.Doubt);
        yield return Parts.Facts(
        [
            ("Mean margin", Numbers.Amount(best.Margin.Value), Range(best.Margin) + ", " + best.MarginPerBird.Value + " a bird"),
            ("Bad case", Numbers.Amount(best.BadCase), "mean of the worst tenth"),
            ("Chance of a loss", best.ChanceOfLoss.ToString(), "the batch costs more than it brings"),
            ("Chance of missing orders", best.ChanceOrdersMissed.ToString(), best.OrdersFilled + " of the packs asked for are filled on average"),
            .. Beats(comparison),
            ("Decide by", Numbers.Date(best.DecideBy), best.Date.ChangeUntil is null ? "usual for the cut sheet; ask the plant" : "last day for changes by the plant's terms"),
        ]);
        yield return Parts.Heading("What would change it");
        yield return Parts.List(PlanWords.Changes(answer));
    }

    /// <summary>Nothing where no other day is offered.</summary>
    private static IEnumerable<(string What, string HowMuch, string Note)> Beats(HarvestComparison comparison)
    {
        HarvestOption[] others = [.. comparison.Options.Where(option => option != comparison.Recommended).OrderByDescending(option => option.Margin.Value)];
        return others.Take(1).Select(next => ("Sure of the day", PlanReportDays.Beats(comparison, next).ToString(), "chance that it beats the next best, " + next.Date));
    }

    private static string Range(Estimate<Money> money) => Numbers.Percent(money.Interval.Level) + " %: " + Numbers.Amount(money.Interval.Low) + " to " + Numbers.Amount(money.Interval.High);
}
