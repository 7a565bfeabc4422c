using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>The days offered side by side: mean margin as a dot, its range as a line, the mean of the worst tenth as a cross.</summary>
internal static class PlanChart
{
    public static Drawing Of(PlanAnswer answer)
    {
        IReadOnlyList<HarvestOption> options = answer.Comparison.Options;
        string level = Numbers.Percent(options[0].Margin.Interval.Level) + " %";
        string title = "Margin of " + answer.Plan.Name + " by day of killing";
        PlotModel plot = ChartStyle.Bare(title, "dot: mean; line: " + level + " of all fates; cross: mean of the worst tenth");
        CategoryAxis days = new() { Position = AxisPosition.Left, TickStyle = TickStyle.None, StartPosition = 1, EndPosition = 0, TextColor = ChartStyle.Ink };
        ScatterSeries means = new() { MarkerType = MarkerType.Circle, MarkerSize = 7, MarkerFill = ChartStyle.Curve, Title = "mean" };
        ScatterSeries worst = new() { MarkerType = MarkerType.Cross, MarkerSize = 7, MarkerStroke = ChartStyle.Weighed, MarkerStrokeThickness = 2, Title = "mean of the worst tenth" };
        plot.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = 0, Color = ChartStyle.Faint, StrokeThickness = 1, LineStyle = LineStyle.Solid });
        foreach ((int i, HarvestOption option) in options.Index())
        {
            days.Labels.Add(Numbers.Date(option.Date.Date) + ", " + Numbers.Days(option.Age) + " d");
            LineSeries range = new() { Color = ChartStyle.CurveBeyond, StrokeThickness = 4, Title = level + " of all fates", RenderInLegend = i == 0 };
            range.Points.AddRange([new(option.Margin.Interval.Low!.Value.Amount, i), new(option.Margin.Interval.High!.Value.Amount, i)]);
            plot.Series.Add(range);
            means.Points.Add(new(option.Margin.Value.Amount, i));
            worst.Points.Add(new(option.BadCase.Amount, i));
        }

        plot.Series.Add(means);
        plot.Series.Add(worst);
        plot.Axes.Add(days);
        LinearAxis money = ChartStyle.Axis(AxisPosition.Bottom, "margin of the batch, in the farm's currency", double.NaN);
        (money.Minimum, money.MinimumPadding) = (double.NaN, 0.05);
        plot.Axes.Add(money);
        plot.PlotMargins = new OxyThickness(170, 16, 30, 62);
        string said = string.Join(" ", options.Select(option => option.Date + ": " + Numbers.Whole(option.Margin.Value.Amount) + " on average, " + level + " between "
            + Numbers.Whole(option.Margin.Interval.Low!.Value.Amount) + " and " + Numbers.Whole(option.Margin.Interval.High!.Value.Amount) + ", worst tenth " + Numbers.Whole(option.BadCase.Amount) + "."));
        return new(plot, title, title + ". " + said + " " + answer.Comparison.Recommendation) { Height = 110 + (60 * options.Count) };
    }
}
