using System.Globalization;
using System.Xml.Linq;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A season as one page to print or to read on a phone: what is raised when, and what keeps it from bringing more.</summary>
internal static class SeasonReport
{
    public static string Of(SeasonAnswer answer, HarvestOptions options, Units units)
    {
        SeasonComparison season = answer.Season!;
        ReportPage page = new(
            "Season " + season.Plan.Name,
            "Every range holds " + Numbers.Percent(season.Margin.Interval.Level) + " % of " + Numbers.Whole(options.Draws) + " fates of each batch. Money is in the farm's currency.");
        page.Decision("The season", Parts.Headline(SeasonPage.Summary(season)), Parts.Facts(Facts(season)), Parts.List(season.Batches.Select(batch => batch.ToString())));
        page.Section("What is raised when", Parts.Figure(SeasonChart.Of(answer)), Batches(season, units));
        page.Section("What keeps it from bringing more", Limits(season));
        page.Flagged(answer.Suspicions);
        page.Section("Cautions", Parts.List(answer.Cautions.Select(caution => caution.Text)));
        page.Section("Sources", Parts.Sources(SeasonAnswer.Sources));
        page.Section("To make this page again", Parts.Typed(
        [
            "poultry-growth", "season", PlanReport.Quoted(answer.File), "--draws", Numbers.Whole(options.Draws), "--seed", options.Seed.ToString(CultureInfo.InvariantCulture),
            "--level", options.Level.ToString("0.####", CultureInfo.InvariantCulture), "--units", units == Units.Us ? "us" : "metric", "--report", "FILE.html",
        ]));
        return page.ToHtml();
    }

    private static IEnumerable<(string What, string HowMuch, string Note)> Facts(SeasonComparison season)
    {
        yield return ("Mean margin", Numbers.Amount(season.Margin.Value), SeasonPage.Bounds(season.Margin.Interval) + " if all batches meet the same fate");
        yield return ("Each its own fate", SeasonPage.Bounds(season.MarginApart), "the truth lies between");
        yield return ("Worst tenth", Numbers.Amount(season.BadCase), "on average");
    }

    private static XElement Batches(SeasonComparison season, Units units) => Parts.Table(
        "The batches and their best days within the limits",
        ["<batch", "<chicks come", "<killed", "head", "margin"],
        season.Batches.Select(batch => (IReadOnlyList<ReportCell>)(batch.Chosen is { } day
            ?
            [
                new(batch.Candidate.Name, "killed at " + Numbers.Days(day.Harvest.Age) + " d"),
                ReportCell.Of(day.Option.Placed),
                ReportCell.Of(day.Option.Killed),
                new(Numbers.Whole(day.Harvest.Head.Value), units.Text(day.Harvest.MeanWeight.Value, 2) + " " + units.Weight),
                new(Numbers.Amount(day.Harvest.Margin.Value), SeasonPage.Bounds(day.Harvest.Margin.Interval)),
            ]
            : [batch.Candidate.Name, "not raised", "-", "-", "-"])));

    private static XElement Limits(SeasonComparison season) => season.BindingLimits.Count == 0
        ? Parts.Paragraph("No limit keeps the season from bringing more.")
        : Parts.Table(
            "What a step more of a limit would bring",
            ["<limit", "<fullest from", "<to", "worth"],
            season.BindingLimits.Select(limit => (IReadOnlyList<ReportCell>)[limit.Step, ReportCell.Of(limit.From), ReportCell.Of(limit.To), new(Numbers.Amount(limit.Worth), SeasonPage.Bounds(limit.Range!))]));
}
