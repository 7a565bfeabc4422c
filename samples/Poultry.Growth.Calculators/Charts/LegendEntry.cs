using OxyPlot;
using OxyPlot.Series;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>What a sign of a plot stands for.</summary>
/// <param name="Sign">A band, line, dash, dot, diamond or cross.</param>
/// <param name="Color">As it is seen on white.</param>
/// <param name="Text">What it stands for.</param>
internal sealed record LegendEntry(string Sign, OxyColor Color, string Text)
{
    /// <summary>One a series that has a title, in the order of the plot.</summary>
    public static IReadOnlyList<LegendEntry> Of(PlotModel plot)
    {
        // A band lies on the wider one that was drawn before it.
        OxyColor below = OxyColors.White;
        List<LegendEntry> entries = [];
        foreach (Series series in plot.Series.Where(series => series.Title is not null && series.RenderInLegend))
        {
            below = series is AreaSeries band ? Over(below, band.ActualFill) : below;
            entries.Add(Of(series, below));
        }

        return entries;
    }

    private static LegendEntry Of(Series series, OxyColor band) => series switch
    {
        AreaSeries area => new("band", band, area.Title),
        LineSeries line => new(line.LineStyle is LineStyle.Solid or LineStyle.Automatic ? "line" : "dash", line.Color, line.Title),
        RectangleBarSeries bars => new("band", bars.FillColor, bars.Title),
        ScatterSeries { MarkerType: MarkerType.Cross } crosses => new("cross", crosses.MarkerStroke, crosses.Title),
        ScatterSeries { MarkerType: MarkerType.Circle } dots => new("dot", Over(OxyColors.White, dots.MarkerFill), dots.Title),
        ScatterErrorSeries means => new("diamond", means.MarkerFill, means.Title),
        ScatterSeries others => new("diamond", others.MarkerFill, others.Title),
        _ => throw new ArgumentException("A series without a sign for its legend: " + series.GetType().Name, nameof(series)),
    };

    /// <summary>A colour through which another is seen.</summary>
    private static OxyColor Over(OxyColor below, OxyColor color)
    {
        byte Seen(byte under, byte part) => (byte)(under + ((part - under) * color.A / 255));
        return OxyColor.FromRgb(Seen(below.R, color.R), Seen(below.G, color.G), Seen(below.B, color.B));
    }
}
