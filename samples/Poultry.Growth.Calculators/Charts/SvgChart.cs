using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using OxyPlot;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>
/// A plot as SVG that fits any width, says in words what it shows, and can stand beside others on one page: its ids are its own. It refers to
/// nothing outside itself.
/// </summary>
internal static partial class SvgChart
{
    private const int Width = 960, Height = 600;

    /// <summary>Half as wide: letters stay legible where a page puts a figure on a phone, or two beside each other.</summary>
    private const int FigureWidth = 440;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <param name="plot">What to draw.</param>
    /// <param name="title">The text alternative in a few words.</param>
    /// <param name="description">The text alternative in full: what a reader who sees nothing must know.</param>
    public static string Of(PlotModel plot, string title, string description) => Described(Drawn(plot, Width, Height), title, description, Width, Height) + "\n";

    /// <summary>The same as a part of a page, which says title and legend in its own letters.</summary>
    /// <param name="plot">What to draw; its title and legend are taken from it.</param>
    /// <param name="title">The text alternative in a few words.</param>
    /// <param name="description">The text alternative in full.</param>
    /// <param name="height">How high it is, as the width is 440.</param>
    public static XElement Figure(PlotModel plot, string title, string description, int height)
    {
        ChartStyle.WithoutWords(plot);
        XElement svg = Described(Drawn(plot, FigureWidth, height), title, description, FigureWidth, height);

        // Within HTML a drawing needs no name of its language, and a page without any address refers to nothing by sight.
        foreach (XElement element in svg.DescendantsAndSelf())
        {
            element.Name = element.Name.LocalName;
            element.Attributes().Where(attribute => attribute.IsNamespaceDeclaration).Remove();
        }

        return svg;
    }

    private static string Drawn(PlotModel plot, int width, int height)
    {
        // Axis labels follow the plot's culture, coordinates that of the thread.
        plot.Culture = CultureInfo.InvariantCulture;
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            SvgExporter exporter = new()
            {
                Width = width,
                Height = height,
                IsDocument = false,
                UseVerticalTextAlignmentWorkaround = true,
                TextMeasurer = new GenerousText(width, height),
            };
            return exporter.ExportToString(plot);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static XElement Described(string svg, string title, string description, int width, int height)
    {
        XElement root = XElement.Parse(svg);
        foreach (XAttribute attribute in root.Descendants().Attributes())
        {
            attribute.Value = Coordinate().Replace(attribute.Value, Hundredths);
        }

        // The same chart has the same ids, another chart has others.
        string prefix = "chart-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(title + description + root.ToString(SaveOptions.DisableFormatting))))[..8] + "-";
        foreach (XAttribute attribute in root.Descendants().Attributes())
        {
            attribute.Value = attribute.Name == "id" ? prefix + attribute.Value : attribute.Value.Replace("url(#", "url(#" + prefix, StringComparison.Ordinal);
        }

        root.Attribute("height")?.Remove();
        root.SetAttributeValue("width", "100%");
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {width} {height}"));
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", prefix + "title " + prefix + "desc");
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", prefix + "title"), title),
            new XElement(Svg + "desc", new XAttribute("id", prefix + "desc"), description));
        return root;
    }

    /// <summary>To a hundredth of a pixel: finer than any eye sees, and the same where another machine's exponential differs in its last bit.</summary>
    private static string Hundredths(Match coordinate) =>
        Math.Round(double.Parse(coordinate.ValueSpan, CultureInfo.InvariantCulture), 2).ToString("0.##", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"-?\d+\.\d{3,}")]
    private static partial Regex Coordinate();
}
