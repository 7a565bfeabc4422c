using System.Xml.Linq;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Report;

/// <summary>One page that stands by itself, on a screen, a phone and on paper: a title, what it says first, and sections in order.</summary>
/// <param name="title">Of the page; also its only first heading.</param>
/// <param name="about">What it is about, below the title.</param>
internal sealed class ReportPage(string title, string about)
{
    private readonly List<XElement> sections = [];

    /// <summary>Adds a section; parts that are not there are left out.</summary>
    public void Section(string heading, params IEnumerable<XElement?> parts) =>
        sections.Add(new XElement("section", new XElement("h2", heading), parts));

    /// <summary>Adds what looks wrong, where anything does.</summary>
    public void Flagged(IReadOnlyList<FileSuspicion> suspicions)
    {
        if (suspicions.Count > 0)
        {
            Section("Looks wrong", Parts.List(suspicions.Select(suspicion => suspicion.ToString())));
        }
    }

    /// <summary>Adds the section that must be seen first.</summary>
    public void Decision(string heading, params IEnumerable<XElement?> parts) =>
        sections.Add(new XElement("section", new XAttribute("class", "decision"), new XElement("h2", heading), parts));

    public string ToHtml() => HtmlText.Of(new XElement(
        "html",
        new XAttribute("lang", "en"),
        new XElement(
            "head",
            new XElement("meta", new XAttribute("charset", "utf-8")),
            new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
            new XElement("title", title),
            new XElement("style", ReportStyle.Sheet)),
        new XElement(
            "body",
            new XElement("header", new XElement("h1", title), new XElement("p", about)),
            new XElement("main", sections.Select(section => (object[])["\n", section])),
            "\n")));
}
