using System.Globalization;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>The batches raised as bars over the calendar, and below them the shelters in use against those that there are.</summary>
internal static class SeasonChart
{
    private const string Lanes = "lanes", Used = "used";

    public static Drawing Of(SeasonAnswer answer)
    {
        SeasonComparison season = answer.Season!;
        SeasonOutcome[] raised = [.. season.Batches.Where(batch => batch.Chosen is not null)];
        string title = "Season " + season.Plan.Name;
        PlotModel plot = ChartStyle.Bare(title, "pale: brooder; dark: shelters; grey: shelters at rest; below: shelters in use, and dashed all that there are");
        plot.Axes.Add(new DateTimeAxis { Position = AxisPosition.Bottom, StringFormat = "MM-dd", Title = "month and day", MajorGridlineStyle = LineStyle.Solid, MajorGridlineColor = ChartStyle.Grid, TextColor = ChartStyle.Ink, MinorTickSize = 0, IntervalType = DateTimeIntervalType.Days, MajorStep = 28 });
        CategoryAxis lanes = new() { Position = AxisPosition.Left, Key = Lanes, TickStyle = TickStyle.None, StartPosition = 1, EndPosition = 0.42, TextColor = ChartStyle.Ink };
        lanes.Labels.AddRange(raised.Select(batch => batch.Candidate.Name));
        LinearAxis used = ChartStyle.Axis(AxisPosition.Left, "shelters", double.NaN);
        (used.Key, used.StartPosition, used.EndPosition) = (Used, 0, 0.34);
        plot.Axes.Add(lanes);
        plot.Axes.Add(used);
        int rest = (int)Math.Ceiling(season.Plan.Limits.ShelterRest.Days);
        for (int lane = 0; lane < raised.Length; lane++)
        {
            SeasonOption option = raised[lane].Chosen!.Option;
            Bar(plot, lane, option.Placed, option.MovedOut, ChartStyle.CurveBeyond, "in the brooder");
            Bar(plot, lane, option.MovedOut, option.Killed, ChartStyle.Curve, "in the shelters, and shelters in use");
            Bar(plot, lane, option.Killed, option.Killed.AddDays(rest), ChartStyle.Faint, "shelters at rest");
        }

        Shelters(plot, season, [.. raised.Select(batch => batch.Chosen!.Option)], rest);
        plot.PlotMargins = new OxyThickness(130, 16, 40, 62);
        return new(plot, title, title + ". " + string.Join(" ", raised.Select(Words)) + " " + string.Join(" ", season.BindingLimits.Select(limit => limit + ".")));
    }

    private static void Bar(PlotModel plot, int lane, DateOnly from, DateOnly to, OxyColor color, string title)
    {
        if (to > from)
        {
            LineSeries bar = new() { YAxisKey = Lanes, Color = color, StrokeThickness = 26 };
            bar.Title = plot.Series.Any(series => series.Title == title) ? null : title;
            bar.Points.AddRange([new(Place(from), lane), new(Place(to), lane)]);
            plot.Series.Add(bar);
        }
    }

    private static void Shelters(PlotModel plot, SeasonComparison season, SeasonOption[] options, int rest)
    {
        if (options.Length == 0)
        {
            return;
        }

        DateOnly first = options.Min(option => option.Placed), last = options.Max(option => option.Killed).AddDays(rest + 1);
        StairStepSeries used = new() { YAxisKey = Used, Color = ChartStyle.Curve, StrokeThickness = 2 };
        for (DateOnly day = first; day <= last; day = day.AddDays(1))
        {
            used.Points.Add(new(Place(day), options.Where(option => option.MovedOut <= day && day < option.Killed.AddDays(rest)).Sum(option => option.Needs.Shelters)));
        }

        plot.Series.Add(used);
        if (season.Plan.Limits.Shelters is { } most)
        {
            LineSeries limit = new() { Title = "shelters that there are", YAxisKey = Used, Color = ChartStyle.Weighed, LineStyle = LineStyle.Dash, StrokeThickness = 2 };
            limit.Points.AddRange([new(Place(first), most), new(Place(last), most)]);
            plot.Series.Add(limit);
        }
    }

    private static string Words(SeasonOutcome batch) => string.Create(
        CultureInfo.InvariantCulture,
        $"{batch.Candidate.Name}: chicks come {batch.Chosen!.Option.Placed:yyyy-MM-dd}, move out {batch.Chosen.Option.MovedOut:yyyy-MM-dd}, killed {batch.Chosen.Option.Killed:yyyy-MM-dd}, {batch.Candidate.Shelters} shelters.");

    private static double Place(DateOnly day) => DateTimeAxis.ToDouble(day.ToDateTime(TimeOnly.MinValue));
}
