using System.Xml.Linq;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Calculators.Report;

/// <summary>The parts of a report: paragraphs, lists, facts, figures and tables.</summary>
internal static class Parts
{
    public static XElement Paragraph(string text) => new("p", text);

    /// <summary>A sentence that is read before all others.</summary>
    public static XElement Headline(string text) => new("p", new XAttribute("class", "headline"), text);

    /// <summary>A command as typed: a line ends between its words only.</summary>
    public static XElement Typed(IEnumerable<string> words) => new("p", new XElement("code", words.Select((word, at) => (object[])
    [
        at > 0 ? " " : "", word.StartsWith("--", StringComparison.Ordinal) ? new XElement("span", word) : word,
    ])));

    public static XElement Heading(string text) => new("h3", text);

    /// <summary>A list; null where nothing is in it.</summary>
    public static XElement? List(IEnumerable<string> items)
    {
        XElement list = new("ul", items.Select(item => new XElement("li", item)));
        return list.HasElements ? list : null;
    }

    /// <summary>Where it all comes from, in smaller letters.</summary>
    public static XElement? Sources(IEnumerable<Citation> sources)
    {
        XElement? list = List(sources.DistinctBy(source => source.Key).Select(source => source + " (" + Numbers.Words(source.HowKnown) + ")"));
        list?.SetAttributeValue("class", "sources");
        return list;
    }

    /// <summary>Figures to be seen at once: what, how much, and what belongs to it.</summary>
    public static XElement Facts(IEnumerable<(string What, string HowMuch, string Note)> facts) => new(
        "dl",
        facts.Select(fact => new XElement(
            "div", new XElement("dt", fact.What), new XElement("dd", new XAttribute("class", "amount"), fact.HowMuch), new XElement("dd", fact.Note))));

    /// <summary>A chart with its title, its legend and a remark.</summary>
    public static XElement Figure(Drawing drawing, string remark = "")
    {
        (XElement svg, IReadOnlyList<LegendEntry> legend) = drawing.ToFigure();
        return new(
            "figure",
            new XElement("figcaption", new XElement("strong", drawing.Title), remark.Length > 0 ? new object[] { new XElement("br"), remark } : null),
            legend.Count > 0 ? new XElement("ul", new XAttribute("class", "legend"), legend.Select(Entry)) : null,
            svg);
    }

    /// <summary>Parts beside each other where there is room.</summary>
    public static XElement Beside(params IEnumerable<XElement?> parts) => new("div", new XAttribute("class", "figures"), parts);

    /// <summary>Parts below each other: one part for <see cref="Beside"/>.</summary>
    public static XElement Below(params IEnumerable<XElement?> parts) => new("div", parts);

    /// <summary>A table whose first column names its rows; numbers stand on the right, columns whose header starts with &lt; on the left.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="headers">One a column.</param>
    /// <param name="rows">One cell a column.</param>
    public static XElement Table(string caption, IReadOnlyList<string> headers, IEnumerable<IReadOnlyList<ReportCell>> rows) => new(
        "table",
        new XElement("caption", caption),
        new XElement("thead", new XElement("tr", headers.Select(header => new XElement("th", new XAttribute("scope", "col"), IsWords(header) ? new XAttribute("class", "words") : null, header.TrimStart('<'))))),
        new XElement("tbody", rows.Select(row => new XElement("tr", row.Select((cell, at) => cell.ToHtml(at == 0, IsWords(headers[at])))))));

    private static bool IsWords(string header) => header.StartsWith('<');

    private static XElement Entry(LegendEntry entry) => new(
        "li",
        new XElement("span", new XAttribute("class", "sign " + entry.Sign), new XAttribute("style", "color:" + ReportStyle.Hex(entry.Color))),
        entry.Text);
}
