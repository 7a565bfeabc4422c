using OxyPlot;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Measures text by a font's own table, and leaves room for the wider fonts that a reader's machine may put in its place.</summary>
internal sealed class GenerousText(double width, double height) : PdfRenderContext(width, height, OxyColors.White)
{
    /// <summary>The table takes sizes for points of 1/72 inch; in SVG they are pixels of 1/96.</summary>
    private const double PixelsPerPoint = 96.0 / 72;

    /// <summary>DejaVu Sans, the widest of the usual ones, against Arial.</summary>
    private const double Wider = 1.18;

    /// <summary>Air between a title and what stands below; labels of axes stay level with their ticks.</summary>
    private const double TallerTitle = 1.4;

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight)
    {
        OxySize size = base.MeasureText(text, fontFamily, fontSize, fontWeight);
        return new OxySize(size.Width * PixelsPerPoint * Wider, fontSize > ChartStyle.FontSize ? size.Height * TallerTitle : size.Height);
    }
}
