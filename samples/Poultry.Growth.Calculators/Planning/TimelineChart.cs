using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Where the birds are and what they eat from the day they come to the day of killing, and when something is to be done.</summary>
internal static class TimelineChart
{
    private const double HalfHeight = 0.3;

    /// <summary>Letters of a lane's name: the rest of a long one would take the room of the chart.</summary>
    private const int MostLetters = 14;

    /// <summary>Days drawn before the chicks come.</summary>
    private const int Before = 10;

    public static Drawing Of(PlanAnswer answer)
    {
        BatchPlan plan = answer.Plan;
        HarvestOption best = answer.Comparison.Recommended;
        DateOnly first = plan.Placed.AddDays(-Before), last = answer.Timeline[^1].Date;
        (string Lane, DateOnly From, DateOnly To)[] stays =
        [
            .. Stays(plan, best.Date.Date),
            .. plan.Feeds.Phases.Select(phase => (phase.Name, Day(plan, phase.From), phase.To is { } to && Day(plan, to) < best.Date.Date ? Day(plan, to) : best.Date.Date)),
        ];
        stays = [.. stays.Where(stay => stay.From < stay.To)];
        CategoryAxis lanes = new() { Position = AxisPosition.Left, TickStyle = TickStyle.None, StartPosition = 1, EndPosition = 0, TextColor = ChartStyle.Ink, GapWidth = 0.4 };
        LinearAxis days = ChartStyle.Axis(AxisPosition.Bottom, "", 14);
        (days.Minimum, days.Maximum, days.MajorStep) = (first.DayNumber, last.DayNumber + 3, 14);
        days.LabelFormatter = day => ReportDates.Short(DateOnly.FromDayNumber((int)Math.Round(day)));
        PlotModel plot = ChartStyle.Plot("", "", days, lanes);
        RectangleBarSeries bars = new() { FillColor = ChartStyle.CurveBeyond, StrokeThickness = 0 };
        foreach ((int at, (string lane, DateOnly from, DateOnly to)) in stays.Index())
        {
            lanes.Labels.Add(lane.Length <= MostLetters ? lane : lane[..(MostLetters - 1)] + "…");
            bars.Items.Add(new(from.DayNumber, at - HalfHeight, to.DayNumber, at + HalfHeight));
        }

        lanes.Labels.Add("to do");
        plot.Series.Add(bars);
        ScatterSeries dots = new() { MarkerType = MarkerType.Circle, MarkerSize = 4.5, MarkerFill = ChartStyle.Weighed };
        dots.Points.AddRange(answer.Timeline.Where(entry => entry.Date >= first).Select(entry => entry.Date).Distinct().Select(date => new ScatterPoint(date.DayNumber, stays.Length)));
        plot.Series.Add(dots);
        Upright(plot, best.DecideBy, "decide");
        Upright(plot, best.Date.Date, "kill");
        string earlier = string.Join(" ", answer.Timeline.Where(entry => entry.Date < first).Select(entry => entry.What + ": " + Numbers.Date(entry.Date) + "."));
        return new(plot, "The batch by date", "Chart of a batch's days. " + string.Join(" ", stays.Select(stay => stay.Lane + ": " + Numbers.Date(stay.From) + " to " + Numbers.Date(stay.To) + "."))
            + " Decide by " + Numbers.Date(best.DecideBy) + ", kill on " + Numbers.Date(best.Date.Date) + "." + (earlier.Length > 0 ? " Earlier: " + earlier : "") + " Every day with something to do stands in the table.")
        {
            Height = 110 + (34 * lanes.Labels.Count),
        };
    }

    private static IEnumerable<(string Lane, DateOnly From, DateOnly To)> Stays(BatchPlan plan, DateOnly killed)
    {
        DateOnly moved = Day(plan, plan.MoveOut);
        yield return ("brooder", plan.Placed, moved < killed ? moved : killed);
        yield return ("shelters", moved, killed);
    }

    private static DateOnly Day(BatchPlan plan, Age age) => age.ReachedOn(plan.Placed, plan.Birds.AgeAtPlacement);

    /// <summary>A line with a word before it, above the lanes.</summary>
    private static void Upright(PlotModel plot, DateOnly date, string word)
    {
        plot.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = date.DayNumber, Color = ChartStyle.Ink, LineStyle = LineStyle.Solid, StrokeThickness = 1.5 });
        plot.Annotations.Add(new TextAnnotation
        {
            Text = word, TextColor = ChartStyle.Ink, TextPosition = new DataPoint(date.DayNumber, -0.5), Offset = new ScreenVector(-5, -14), StrokeThickness = 0,
            TextHorizontalAlignment = HorizontalAlignment.Right, TextVerticalAlignment = VerticalAlignment.Middle,
        });
    }
}
