using System.Xml.Linq;
using OxyPlot;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>A plot and what it says in words: a file of its own, or a figure of a page. It is drawn once.</summary>
/// <param name="plot">What to draw.</param>
/// <param name="title">The text alternative in a few words.</param>
/// <param name="description">The text alternative in full: what a reader who sees nothing must know.</param>
internal sealed class Drawing(PlotModel plot, string title, string description)
{
    private const int UsualHeight = 300;

    public string Title => title;

    /// <summary>How high a figure is, as its width is 440.</summary>
    public int Height { get; init; } = UsualHeight;

    public string ToSvg() => SvgChart.Of(plot, title, description);

    /// <summary>The drawing, and the legend that a page sets beside it.</summary>
    public (XElement Svg, IReadOnlyList<LegendEntry> Legend) ToFigure()
    {
        IReadOnlyList<LegendEntry> legend = LegendEntry.Of(plot);
        return (SvgChart.Figure(plot, title, description, Height), legend);
    }
}
