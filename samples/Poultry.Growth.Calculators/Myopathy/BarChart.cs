using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Upright bars with a word below each.</summary>
internal static class BarChart
{
    private const double HalfWidth = 0.42;

    public static PlotModel Of(string title, string subtitle, string below, IReadOnlyList<string> labels, string beside, IReadOnlyList<double> heights)
    {
        CategoryAxis words = new()
        {
            Position = AxisPosition.Bottom, Title = below, TextColor = ChartStyle.Ink, TitleColor = ChartStyle.Ink, TicklineColor = ChartStyle.Faint, Angle = labels.Any(label => label.Length > 4) ? 40 : 0, GapWidth = 0.2,
            AxisTitleDistance = 12,
        };
        foreach (string label in labels)
        {
            words.Labels.Add(label);
        }

        PlotModel plot = ChartStyle.Plot(title, subtitle, words, ChartStyle.Axis(AxisPosition.Left, beside, double.NaN));
        plot.PlotMargins = new OxyThickness(78, 16, 30, 100);
        plot.Legends.Clear();
        RectangleBarSeries bars = new() { FillColor = ChartStyle.Curve, StrokeThickness = 0 };
        for (int at = 0; at < heights.Count; at++)
        {
            bars.Items.Add(new RectangleBarItem(at - HalfWidth, 0, at + HalfWidth, heights[at]));
        }

        plot.Series.Add(bars);
        return plot;
    }
}
