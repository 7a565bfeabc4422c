using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Weights over age as an area between limits, or as a line.</summary>
internal static class BandSeries
{
    /// <summary>How many steps a curve is drawn with.</summary>
    public const int Points = 80;

    /// <summary>Ages from one to another, both included.</summary>
    public static IEnumerable<Age> Ages(double from, double to) =>
        Enumerable.Range(0, Points + 1).Select(point => Age.FromDays(point == Points ? to : from + ((to - from) * point / Points)));

    /// <param name="at">Weights by age.</param>
    /// <param name="interval">Which limits.</param>
    /// <param name="units">Units of the chart.</param>
    /// <param name="title">As the legend has it; null keeps it out of the legend.</param>
    /// <param name="alpha">How dense, 0 to 255.</param>
    public static AreaSeries Band(
        IEnumerable<ProjectedWeight> at, Func<ProjectedWeight, Interval<Mass>> interval, Units units, string? title, byte alpha)
    {
        AreaSeries band = new() { Title = title, Color = OxyColors.Transparent, Fill = OxyColor.FromAColor(alpha, ChartStyle.Curve), RenderInLegend = title is not null };
        foreach (ProjectedWeight point in at)
        {
            // An open lower limit reaches down to no weight.
            band.Points.Add(new DataPoint(point.Age.Days, units.Of(interval(point).Low ?? Mass.Zero)));
            band.Points2.Add(new DataPoint(point.Age.Days, units.Of(interval(point).High!.Value)));
        }

        return band;
    }

    public static LineSeries Line(IEnumerable<ProjectedWeight> at, Units units, string title, OxyColor color, LineStyle style)
    {
        LineSeries line = new() { Title = title, Color = color, LineStyle = style, StrokeThickness = 2.5 };
        line.Points.AddRange(at.Select(point => new DataPoint(point.Age.Days, units.Of(point.Mean.Value))));
        return line;
    }
}
