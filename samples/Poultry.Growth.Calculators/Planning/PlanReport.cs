using System.Globalization;
using System.Xml.Linq;
using Poultry.Growth.Feeding;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A plan as one page to print or to read on a phone: the decision, what it rests on, what to do when.</summary>
internal static class PlanReport
{
    public static string Of(PlanAnswer answer, PlanQuestion question, Units units)
    {
        HarvestOptions options = question.Options;
        BatchPlan plan = answer.Plan;
        HarvestOption best = answer.Comparison.Recommended;
        ReportPage page = new(
            plan.Name + ": which day to kill",
            Numbers.Whole(plan.Birds.Placed) + " chicks placed on " + Numbers.Date(plan.Placed) + ". Every range holds " + Numbers.Percent(options.Level) + " % of "
                + Numbers.Whole(options.Draws) + " fates of the batch, the same for every day. Money is in the farm's currency.");
        page.Decision("The decision", PlanReportDecision.Of(answer));
        page.Section("The days offered", PlanReportDays.Of(answer, units));
        if (answer.Splits.Count > 0)
        {
            page.Section("The batch on two days", PlanReportSplits.Of(answer));
        }

        page.Section(
            "Growth",
            Parts.Beside(
                Parts.Figure(GrowthFanChart.Of(answer, units)),
                Parts.Figure(WeightBandsChart.Of(plan.Growth, best.Age, plan.WantedWeights, units), "On " + Numbers.Date(best.Date.Date) + Wanted(best))),
            Weighing(answer, units));
        XElement? floor = FloorChart.Of(answer, units) is { } drawn
            ? Parts.Figure(drawn, "Dots are the days offered; on " + best.Date + " the limit is kept with a chance of " + best.ChanceDensityMet + ".")
            : null;
        page.Section(floor is null ? "Feed" : "Floor and feed", Feed(answer, options, units, floor));
        page.Section("Dead tenders", Lesions(answer, units));
        page.Section("What to do when", Parts.Beside(Parts.Figure(TimelineChart.Of(answer), "Dots are days with something to do."), Ahead(answer)), Timeline(answer));
        page.Flagged(answer.Suspicions);
        page.Section("Cautions", Parts.List(answer.Cautions.Select(caution => caution.Text)));
        page.Section("Sources", Parts.Sources(answer.Sources.Concat(plan.Lesions.Model.Citations)));
        page.Section("To make this page again", Again(question, units));
        return page.ToHtml();
    }

    private static string Wanted(HarvestOption best) => best.ShareWanted is { } share ? ": " + share.Value + " of the birds are of the weights wanted" : "";

    /// <summary>What a sample should weigh, for holding the next weigh-ins against it.</summary>
    private static XElement Weighing(PlanAnswer answer, Units units)
    {
        BatchPlan plan = answer.Plan;
        Age last = answer.Comparison.Recommended.Age;
        double from = Math.Max(13, plan.Growth.WeighIns?[^1].Age.Days ?? 0), level = answer.Comparison.Recommended.Margin.Interval.Level;
        BatchCalendar calendar = new(plan.Placed, plan.Birds.AgeAtPlacement);
        Age[] ages = [.. Enumerable.Range(2, 50).Select(week => Age.FromWeeks(week)).Where(age => age.Days > from && age < last), last];
        return Parts.Table(
            string.Create(CultureInfo.InvariantCulture, $"What {PlanAnswer.BirdsWeighed} birds should weigh on average, {units.Weight}"),
            ["<day", "age, d", "mean", "low", "high"],
            ages.Select(age => (age, mean: plan.Growth.NextWeighInAt(age, PlanAnswer.BirdsWeighed, level))).Select(at => (IReadOnlyList<ReportCell>)
            [
                ReportCell.Of(calendar.DateAt(at.age)), Numbers.Days(at.age), units.Text(at.mean.Value, 2), units.Text(at.mean.Interval.Low, 2), units.Text(at.mean.Interval.High, 2),
            ]));
    }

    private static IEnumerable<XElement?> Feed(PlanAnswer answer, HarvestOptions options, Units units, XElement? floor)
    {
        BatchPlan plan = answer.Plan;
        List<string> refused = [];
        FeedQuestion question = new()
        {
            Title = plan.Name, Placed = plan.Placed, HeadCount = plan.Birds, Table = null, Projection = plan.Growth, Plan = plan.Feeds, Conditions = plan.Feeding,
            Record = plan.FeedRecord, Until = answer.Comparison.Recommended.Age, At = null, Level = options.Level,
        };
        if (FeedAnswer.To(question, options.Seed, refused.Add) is not { } feed)
        {
            return [floor, .. refused.Select(Parts.Paragraph)];
        }

        FeedForecast forecast = feed.Forecast;
        return
        [
            Parts.Beside(floor, Parts.Figure(FeedByDayChart.Of(feed, units), "Every day has its own temperature, feed and birds alive.")),
            Parts.Table(
                "To buy until " + answer.Comparison.Recommended.Date,
                ["<feed", units.Weight, "bags", "latest order", "cost"],
                forecast.Phases.Select(phase => (IReadOnlyList<ReportCell>)
                [
                    new(phase.Phase.Name, "from " + phase.Phase.From),
                    new(units.Text(phase.Feed.Value, 0), units.Text(phase.Feed.Interval.Low, 0) + " to " + units.Text(phase.Feed.Interval.High, 0)),
                    phase.Bags is { } bags ? new ReportCell(Numbers.Whole(bags), "at most " + Numbers.Whole(phase.BagsAtMost ?? bags)) : "loose",
                    FeedPhaseNode.BuyByOf(phase, plan.Placed) is { } day ? Numbers.Date(day) : "-",
                    phase.Cost is { } cost ? Numbers.Whole(cost.Amount) : "-",
                ])),
        ];
    }

    private static IEnumerable<XElement?> Lesions(PlanAnswer answer, Units units)
    {
        BatchPlan plan = answer.Plan;
        HarvestOption best = answer.Comparison.Recommended;
        BatchPrevalence batch = plan.Lesions.For(new()
        {
            KillAge = best.Age, Sex = plan.Growth.Prior.Sex, IsOutdoor = plan.Feeding.Temperatures.MoveOut is not null, LiveWeight = best.MeanWeight.Value,
        });
        double level = best.Margin.Interval.Level;
        string loss = plan.Deboned.Fraction == 0
            ? "The plant cuts out no tenders, so none are lost there; customers find what there is."
            : "Meat lost at the plant: " + units.Text(best.LesionLoss.Value, 1) + " " + units.Weight + " on average, " + units.Text(best.LesionLoss.Interval.Low, 1) + " to " + units.Text(best.LesionLoss.Interval.High, 1) + " " + units.Weight + ".";
        return
        [
            Parts.Beside(Parts.Figure(LesionChart.Draw(batch, "Dead tenders on " + best.Date, level)), Parts.Below([Parts.Paragraph("Birds with a lesion: " + SpreadTable.Percent(batch.Mean) + " % on average, half of such flocks below " + SpreadTable.Percent(batch.Median) + " %. " + loss), .. batch.Cautions.Select(caution => Parts.Paragraph(caution.Text))])),
        ];
    }

    /// <summary>What lies before the chicks, and mostly before the chart.</summary>
    private static XElement Ahead(PlanAnswer answer) => Parts.Below(
        Parts.Heading("Before the chicks come"),
        Parts.List(answer.Timeline.Where(entry => entry.Date < answer.Plan.Placed).Select(entry => Numbers.Date(entry.Date) + ": " + entry.What)));

    private static XElement Timeline(PlanAnswer answer) => Parts.Table(
        "For killing on " + answer.Comparison.Recommended.Date,
        ["<day", "<what, and why then", "<write down"],
        answer.Timeline.Select(entry => (IReadOnlyList<ReportCell>)
        [
            ReportCell.Of(entry.Date, entry.Time is { } time ? time.ToString("HH':'mm", CultureInfo.InvariantCulture) : ""),
            new(entry.What, entry.Why + (entry.Caution is { } caution ? " " + caution.Text : "")),
            entry.Record,
        ]));

    private static IEnumerable<XElement> Again(PlanQuestion question, Units units)
    {
        HarvestOptions options = question.Options;
        string[] words =
        [
            "poultry-growth", "plan", Quoted(question.File), .. question.History is { } folder ? ["--history", Quoted(folder)] : Array.Empty<string>(), "--seed", options.Seed.ToString(CultureInfo.InvariantCulture), "--draws", Numbers.Whole(options.Draws),
            "--level", options.Level.ToString("0.####", CultureInfo.InvariantCulture), "--units", units == Units.Us ? "us" : "metric",
            .. question.EveryDay ? ["--every-day"] : Array.Empty<string>(),
            .. question.SplitShares.Count > 0
                ? ["--split", string.Join(',', question.SplitShares.Select(share => share.Percent.ToString("0.######", CultureInfo.InvariantCulture) + "%")), "--split-birds", question.SplitBirds == FirstBirds.Largest ? "largest" : "caught"]
                : Array.Empty<string>(),
            "--report", "FILE.html",
        ];
        return
        [
            Parts.Typed(words),
            Parts.Paragraph(string.Create(
                CultureInfo.InvariantCulture,
                $"Seed {options.Seed}, {options.Draws} draws, version {typeof(HarvestComparison).Assembly.GetName().Version!.ToString(3)}: with the same batch file, and the files that it names, this page comes out the same.")),
        ];
    }

    public static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? "\"" + path + "\"" : path;
}
