using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Every figure on a scale of its own forecast: the interval as a line, what came of it as a dot.</summary>
internal static class ReconcileChart
{
    public static string Of(ReconcileAnswer answer)
    {
        // A figure forecast at almost nothing has no scale of its own: a bird more would be hundreds of percent.
        ReconciledFigure[] figures = [.. answer.Reconciled.Figures.Where(figure => figure.Actual is not null && figure.Forecast > 0 && figure.Code is not ("lesions" or "condemned" or "dead-on-arrival"))];
        string level = Numbers.Percent(answer.Reconciled.Figures[0].Interval.Level) + " %";
        string title = "Forecast and outcome of " + answer.Reconciled.Plan.Name;
        PlotModel plot = ChartStyle.Bare(title, "line: " + level + " of all fates; dot: what came of it; the forecast is 100");
        CategoryAxis names = new() { Position = AxisPosition.Left, TickStyle = TickStyle.None, StartPosition = 1, EndPosition = 0, TextColor = ChartStyle.Ink };
        ScatterSeries actual = new() { MarkerType = MarkerType.Circle, MarkerSize = 6, MarkerFill = ChartStyle.Weighed };
        for (int i = 0; i < figures.Length; i++)
        {
            ReconciledFigure figure = figures[i];
            names.Labels.Add(figure.Name);
            LineSeries range = new() { Color = ChartStyle.CurveBeyond, StrokeThickness = 4 };
            range.Points.AddRange([new(100 * figure.Interval.Low!.Value / figure.Forecast, i), new(100 * figure.Interval.High!.Value / figure.Forecast, i)]);
            plot.Series.Add(range);
            actual.Points.Add(new(100 * figure.Actual!.Value / figure.Forecast, i));
        }

        plot.Series.Add(actual);
        plot.Axes.Add(names);
        LinearAxis percent = ChartStyle.Axis(AxisPosition.Bottom, "percent of the forecast", double.NaN);
        (percent.Minimum, percent.MinimumPadding) = (double.NaN, 0.05);
        plot.Axes.Add(percent);
        plot.PlotMargins = new OxyThickness(double.NaN, 16, 30, 62);
        return SvgChart.Of(plot, title, title + ": " + string.Join("; ", figures.Select(figure => figure.ToString())) + ".");
    }
}
