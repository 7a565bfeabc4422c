using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Legends;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>How charts look. Blue and vermilion are told apart by every eye, and by their shapes; text has a contrast of 7:1 or more on white.</summary>
internal static class ChartStyle
{
    public const double FontSize = 14;

    public static readonly OxyColor Ink = OxyColor.FromRgb(0x1F, 0x29, 0x33);
    public static readonly OxyColor Faint = OxyColor.FromRgb(0x4B, 0x55, 0x63);
    public static readonly OxyColor Grid = OxyColor.FromRgb(0xE5, 0xE7, 0xEB);
    public static readonly OxyColor Curve = OxyColor.FromRgb(0x00, 0x52, 0x8F);
    public static readonly OxyColor CurveBeyond = OxyColor.FromRgb(0x4F, 0x8F, 0xC4);
    public static readonly OxyColor Weighed = OxyColor.FromRgb(0xB8, 0x3A, 0x00);
    public static readonly OxyColor Bird = OxyColor.FromAColor(110, Weighed);

    /// <summary>Wider fonts than ours find room in these margins.</summary>
    private static readonly OxyThickness Margins = new(78, 16, 30, 62);

    /// <summary>A plot without axes.</summary>
    public static PlotModel Bare(string title, string subtitle) => new()
    {
        Title = title,
        Subtitle = subtitle,
        TitleFontSize = 20,
        SubtitleFontSize = 15,
        TitlePadding = 8,
        Padding = new OxyThickness(10, 14, 14, 10),
        PlotMargins = Margins,
        DefaultFont = "Helvetica, Arial, sans-serif",
        DefaultFontSize = FontSize,
        TextColor = Ink,
        SubtitleColor = Faint,
        Background = OxyColors.White,
        PlotAreaBorderThickness = new OxyThickness(1, 0, 0, 1),
        PlotAreaBorderColor = Faint,
    };

    /// <summary>Takes out what a page says beside the plot, and gives its room to the plot.</summary>
    public static void WithoutWords(PlotModel plot)
    {
        (plot.Title, plot.Subtitle) = (null, null);
        plot.Legends.Clear();
        plot.PlotMargins = new OxyThickness(double.NaN);
        plot.Padding = new OxyThickness(2, 6, 16, 8);
        foreach (Axis axis in plot.Axes)
        {
            axis.AxisTitleDistance = 10;
            axis.IntervalLength = 45;
        }
    }

    /// <summary>A plot of live weight by age.</summary>
    public static PlotModel Plot(string title, string subtitle, string weightUnit) =>
        Plot(title, subtitle, Axis(AxisPosition.Bottom, "age, d", 7), Axis(AxisPosition.Left, "live weight, " + weightUnit, double.NaN));

    /// <summary>A plot of anything, with a legend.</summary>
    public static PlotModel Plot(string title, string subtitle, Axis bottom, Axis left)
    {
        PlotModel plot = Bare(title, subtitle);
        plot.Axes.Add(bottom);
        plot.Axes.Add(left);
        plot.Legends.Add(new Legend
        {
            LegendPosition = LegendPosition.LeftTop,
            LegendPlacement = LegendPlacement.Inside,
            LegendBackground = OxyColor.FromAColor(235, OxyColors.White),
            LegendBorder = Grid,
            LegendFontSize = FontSize,
            LegendSymbolLength = 30,
            LegendLineSpacing = 7,
            LegendMargin = 14,
            LegendPadding = 10,
        });
        return plot;
    }

    /// <summary>A thin upright line with a word at its foot.</summary>
    public static void Mark(PlotModel plot, double age, string text)
    {
        plot.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = age, Color = Faint, LineStyle = LineStyle.Dot, StrokeThickness = 1 });
        plot.Annotations.Add(new TextAnnotation
        {
            Text = text,
            TextColor = Faint,
            TextPosition = new DataPoint(age, 0),
            Offset = new ScreenVector(8, -6),
            TextHorizontalAlignment = HorizontalAlignment.Left,
            TextVerticalAlignment = VerticalAlignment.Bottom,
            StrokeThickness = 0,
        });
    }

    /// <summary>An axis that starts at 0.</summary>
    public static LinearAxis Axis(AxisPosition position, string title, double step) => new()
    {
        Position = position,
        Title = title,
        Minimum = 0,
        MajorStep = step,
        MaximumPadding = 0.03,
        MajorGridlineStyle = LineStyle.Solid,
        MajorGridlineColor = Grid,
        MinorTickSize = 0,
        TickStyle = TickStyle.Outside,
        TicklineColor = Faint,
        TextColor = Ink,
        TitleColor = Ink,
        AxisTitleDistance = 12,
        AxislineStyle = LineStyle.None,
    };
}
