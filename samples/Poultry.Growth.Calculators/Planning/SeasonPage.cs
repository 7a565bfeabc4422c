using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The season on one screen: what is raised when, what keeps it from bringing more, why a batch is not raised as it would be alone.</summary>
internal static class SeasonPage
{
    public static void Print(SeasonAnswer answer, Page page)
    {
        if (answer.Season is not { } season)
        {
            page.Line(SeasonAnswer.NoSeason);
            page.Flagged(answer.Suspicions);
            return;
        }

        page.Line(Summary(season));
        page.Line("Mean margin " + Numbers.Amount(season.Margin.Value) + "; " + Numbers.Percent(season.Margin.Interval.Level) + " %: " + Bounds(season.Margin.Interval)
            + " if all batches meet the same fate, " + Bounds(season.MarginApart) + " if each meets its own; the truth lies between. In the worst tenth " + Numbers.Amount(season.BadCase) + " on average.");
        Batches(season, page);
        Limits(season, page);
        page.Title("Why");
        foreach (SeasonOutcome batch in season.Batches)
        {
            page.Line(batch.ToString());
        }

        page.Flagged(answer.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(SeasonAnswer.Sources);
    }

    /// <summary>As in <c>Season Meadow 2027: 3 of 3 batches</c>.</summary>
    public static string Summary(SeasonComparison season) =>
        "Season " + season.Plan.Name + ": " + Numbers.Whole(season.Batches.Count(batch => batch.Chosen is not null)) + " of " + Numbers.Whole(season.Batches.Count) + " batches";

    public static string Bounds(Interval<Money> interval) => Numbers.Amount(interval.Low) + " to " + Numbers.Amount(interval.High);

    private static void Batches(SeasonComparison season, Page page)
    {
        page.Title("Batches (" + Numbers.Percent(season.Margin.Interval.Level) + " % intervals)");
        page.Table(
            ["<batch", "<chicks come", "<move out", "<killed", "age d", "head", "mean " + page.Units.Weight, "margin", "low", "high", "a shelter day", "ways tried", "<best alone", "margin alone"],
            season.Batches.Select(batch => (IReadOnlyList<string>)[batch.Candidate.Name, .. Chosen(batch.Chosen, page), Numbers.Whole(batch.Days.Count), Numbers.Date(batch.Alone.Option.Placed) + " to " + Numbers.Date(batch.Alone.Option.Killed), Numbers.Amount(batch.Alone.Harvest.Margin.Value)]));
    }

    private static string[] Chosen(SeasonDay? day, Page page) => day is null
        ? ["not raised", "-", "-", "-", "-", "-", "-", "-", "-", "-"]
        :
        [
            Numbers.Date(day.Option.Placed),
            Numbers.Date(day.Option.MovedOut),
            Numbers.Date(day.Option.Killed),
            Numbers.Days(day.Harvest.Age),
            Numbers.Whole(day.Harvest.Head.Value),
            page.Units.Text(day.Harvest.MeanWeight.Value, 2),
            Numbers.Amount(day.Harvest.Margin.Value),
            Numbers.Amount(day.Harvest.Margin.Interval.Low),
            Numbers.Amount(day.Harvest.Margin.Interval.High),
            Numbers.Fixed(day.Harvest.MarginPerShelterDay.Value.Amount, 2),
        ];

    private static void Limits(SeasonComparison season, Page page)
    {
        if (season.BindingLimits.Count == 0)
        {
            page.Title("No limit keeps the season from bringing more.");
            return;
        }

        page.Title("What a step more of a limit would bring (" + Numbers.Percent(season.Margin.Interval.Level) + " % intervals if all batches meet the same fate)");
        page.Table(
            ["<limit", "<fullest from", "<to", "worth", "low", "high"],
            season.BindingLimits.Select(limit => (IReadOnlyList<string>)[limit.Step, Numbers.Date(limit.From), Numbers.Date(limit.To), Numbers.Amount(limit.Worth), Numbers.Amount(limit.Range!.Low), Numbers.Amount(limit.Range!.High)]));
    }
}
