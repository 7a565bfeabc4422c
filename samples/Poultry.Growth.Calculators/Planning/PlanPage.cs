using System.Globalization;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The decision on one screen: the recommendation, the days side by side, what drives the doubt, what to do when.</summary>
internal static class PlanPage
{
    public static void Print(PlanAnswer answer, Page page)
    {
        HarvestComparison comparison = answer.Comparison;
        page.Line("Plan of " + answer.Plan.Name + ": " + answer.Plan.Birds.Placed.ToString(CultureInfo.InvariantCulture) + " chicks placed " + Numbers.Date(answer.Plan.Placed));
        page.Line(comparison.Recommendation);
        Options(comparison, page);
        Chances(comparison, page);
        SplitTable.Print(answer, page);
        Packs(comparison, page);
        Worth(answer, page);
        Days(answer, page);
        page.Title("What it rests on");
        foreach (PlanOrigin origin in answer.Plan.Origins)
        {
            page.Line(origin.ToString());
        }

        page.Flagged(answer.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static void Options(HarvestComparison comparison, Page page)
    {
        string weight = page.Units.Weight;
        page.Title("Days offered (" + Numbers.Percent(comparison.Options[0].Margin.Interval.Level) + " % intervals)");
        page.Table(
            ["<date", "age d", "head", "mean " + weight, "wanted %", "feed " + weight, "floor kept %", "sold " + weight, "revenue", "cost", "margin", "low", "high", "worst tenth", "a bird", "a shelter day", "decide by"],
            comparison.Options.Select(option => (IReadOnlyList<string>)
            [
                Numbers.Date(option.Date.Date) + (option == comparison.Recommended ? " <-" : ""),
                Numbers.Days(option.Age),
                Numbers.Whole(option.Head.Value),
                page.Units.Text(option.MeanWeight.Value, 2),
                Share(option.ShareWanted?.Value),
                page.Units.Text(option.Feed.Value, 0),
                Share(option.ChanceDensityMet),
                page.Units.Text(option.Sold.Value, 0),
                Numbers.Amount(option.Revenue.Value),
                Numbers.Amount(option.Cost.Value),
                Numbers.Amount(option.Margin.Value),
                Numbers.Amount(option.Margin.Interval.Low),
                Numbers.Amount(option.Margin.Interval.High),
                Numbers.Amount(option.BadCase),
                Numbers.Fixed(option.MarginPerBird.Value.Amount, 2),
                Numbers.Fixed(option.MarginPerShelterDay.Value.Amount, 2),
                Numbers.Date(option.DecideBy),
            ]));
    }

    private static void Chances(HarvestComparison comparison, Page page)
    {
        if (comparison.Options.Count < 2)
        {
            return;
        }

        page.Title("Chance that the day on the left beats the day above, in percent");
        page.Table(
            ["<", .. comparison.Options.Select(option => Numbers.Date(option.Date.Date))],
            comparison.Options.Select((option, row) => (IReadOnlyList<string>)
            [
                Numbers.Date(option.Date.Date),
                .. comparison.Options.Select((_, column) => row == column ? "-" : Numbers.Percent(comparison.ChanceBeats(row, column).Fraction)),
            ]));
    }

    private static void Packs(HarvestComparison comparison, Page page)
    {
        string weight = page.Units.Weight;
        page.Title("Packs of " + Numbers.Date(comparison.Recommended.Date.Date));
        page.Table(["<pack", "from " + weight, "to " + weight, "sold", "low", "high", "left", "low", "high"], comparison.Recommended.Packs.Select(pack => (IReadOnlyList<string>)
        [
            string.Create(CultureInfo.InvariantCulture, $"{pack.Offer.PiecesPerPack} {pack.Offer.Piece}"),
            page.Units.Text(pack.Offer.From, 2),
            page.Units.Text(pack.Offer.To, 2),
            Numbers.Whole(pack.Sold.Value),
            Numbers.Bound(pack.Sold.Interval.Low, 0),
            Numbers.Bound(pack.Sold.Interval.High, 0),
            Numbers.Whole(pack.Left.Value),
            Numbers.Bound(pack.Left.Interval.Low, 0),
            Numbers.Bound(pack.Left.Interval.High, 0),
        ]));
    }

    private static void Worth(PlanAnswer answer, Page page)
    {
        page.Title("What would change it");
        foreach (string line in PlanWords.Changes(answer))
        {
            page.Line(line);
        }
    }

    private static void Days(PlanAnswer answer, Page page)
    {
        page.Title("What to do when, for " + Numbers.Date(answer.Comparison.Recommended.Date.Date));
        page.Table(["<day", "<what", "<write down"], answer.Timeline.Select(entry => (IReadOnlyList<string>)
        [
            Numbers.Date(entry.Date) + (entry.Time is { } time ? time.ToString(" HH':'mm", CultureInfo.InvariantCulture) : ""),
            entry.What,
            entry.Record,
        ]));
    }

    private static string Share(Probability? share) => share is { } known ? Numbers.Percent(known.Fraction) : "-";
}
