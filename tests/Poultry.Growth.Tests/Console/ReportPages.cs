using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>A report as a browser would take it: what every page must keep, whatever it tells.</summary>
internal sealed partial class ReportPages
{
    private ReportPages(string text) => (Text, Html) = (text, XDocument.Parse(text, LoadOptions.PreserveWhitespace).Root!);

    public string Text { get; }

    public XElement Html { get; }

    public string Sheet => Html.Descendants("style").Single().Value;

    public IEnumerable<XElement> Charts => Html.Descendants("svg");

    public static ReportPages Read(string path) => new(File.ReadAllText(path));

    /// <summary>The section below a heading.</summary>
    public XElement Section(string heading) => Html.Descendants("section").Single(section => section.Element("h2")!.Value == heading);

    /// <summary>Nothing is fetched and nothing runs.</summary>
    public void StandsByItself()
    {
        // Not the whole page in a message.
        Text.StartsWith("<!DOCTYPE html>\n", StringComparison.Ordinal).Should().BeTrue();
        string[] outside = ["http", "//", "@import", "javascript:", "expression("];
        outside.Where(word => Text.Contains(word, StringComparison.OrdinalIgnoreCase)).Should().BeEmpty();
        Sheet.Should().NotContain("url(").And.NotContain("<").And.NotContain("&", "a browser takes the sheet as it stands, an XML parser does not");
        Html.DescendantsAndSelf().Select(element => element.Name.LocalName).Should().NotContain(["script", "link", "img", "image", "iframe", "object", "embed", "base", "form", "use", "a", "foreignObject"]);
        foreach (XAttribute attribute in Html.DescendantsAndSelf().Attributes())
        {
            string name = attribute.Name.LocalName;
            name.Should().NotStartWith("on").And.NotBe("src").And.NotBe("srcset").And.NotBe("href");
            if (attribute.Value.Contains("url(", StringComparison.Ordinal))
            {
                attribute.Value.Should().MatchRegex("^url\\(#[a-z0-9A-Z-]+\\)$");
            }
        }
    }

    public void HasUniqueIdsThatAreThere()
    {
        string[] ids = [.. Html.Descendants().Attributes("id").Select(id => id.Value)];
        ids.Should().OnlyHaveUniqueItems();
        Html.Descendants().Attributes("aria-labelledby").SelectMany(names => names.Value.Split(' '))
            .Concat(Html.Descendants().Attributes().Where(reference => reference.Value.StartsWith("url(#", StringComparison.Ordinal)).Select(reference => reference.Value[5..^1]))
            .Should().NotBeEmpty().And.BeSubsetOf(ids);
    }

    public void ReadsInOrder()
    {
        Html.Attribute("lang")!.Value.Should().Be("en");
        Html.Descendants("meta").Attributes("charset").Single().Value.Should().Be("utf-8");
        Html.Descendants("meta").Should().Contain(meta => (string?)meta.Attribute("name") == "viewport");
        int[] headings = [.. Html.Descendants().Where(element => Heading().IsMatch(element.Name.LocalName)).Select(element => element.Name.LocalName[1] - '0')];
        headings[0].Should().Be(1);
        headings.Count(level => level == 1).Should().Be(1);
        headings.Zip(headings.Skip(1), (before, after) => after - before).Should().OnlyContain(step => step <= 1, "no level is jumped");
        Html.Descendants("title").First().Value.Should().Be(Html.Descendants("h1").Single().Value);
        foreach (XElement table in Html.Descendants("table"))
        {
            table.Element("caption")!.Value.Should().NotBeEmpty();
            table.Descendants("th").Should().OnlyContain(cell => cell.Attribute("scope") != null && cell.Value.Length > 0);
            table.Descendants("tr").Should().OnlyContain(row => row.Elements().First().Name == "th");
            table.Descendants("tr").Select(row => row.Elements().Count()).Distinct().Should().ContainSingle();
        }
    }

    public void SaysWhatItsChartsShow()
    {
        Charts.Should().NotBeEmpty();
        foreach (XElement svg in Charts)
        {
            svg.Attribute("viewBox")!.Value.Should().MatchRegex("^0 0 440 [0-9]+$");
            svg.Attribute("width")!.Value.Should().Be("100%");
            svg.Attribute("height").Should().BeNull();
            svg.Attribute("role")!.Value.Should().Be("img");
            svg.Elements().Take(2).Select(element => element.Name.LocalName).Should().Equal("title", "desc");
            svg.Attribute("aria-labelledby")!.Value.Should().Be(string.Join(' ', svg.Elements().Take(2).Select(element => element.Attribute("id")!.Value)));
            svg.Element("title")!.Value.Should().NotBeEmpty();
            svg.Element("desc")!.Value.Should().MatchRegex("[0-9]", "it says in figures what the chart shows");
            svg.Ancestors("figure").Single().Element("figcaption")!.Value.Should().StartWith(svg.Element("title")!.Value);
        }
    }

    /// <summary>Every colour of text against every ground of the page, which is stricter than against its own.</summary>
    public void CanBeRead()
    {
        string[] grounds = [.. Background().Matches(Sheet).Select(match => match.Groups[1].Value).Distinct()];
        string[] texts = [.. Color().Matches(Sheet).Select(match => match.Groups[1].Value).Distinct()];
        grounds.Should().Contain("#FFFFFF");
        texts.Should().HaveCountGreaterThan(1);
        texts.Should().OnlyContain(text => grounds.All(ground => Contrast.Of(text, ground) >= 4.5));
        Charts.Descendants("text").Should().NotBeEmpty().And.OnlyContain(text => Contrast.Of(text.Attribute("fill")!.Value, "#FFFFFF") >= 4.5);
        Charts.Should().OnlyContain(svg => svg.Elements("rect").First().Attribute("style")!.Value.StartsWith("fill:rgb(255,255,255)", StringComparison.Ordinal), "the ground of a chart is white");

        // Lines of the grid only guide the eye.
        string[] lines = [.. Charts.Descendants().Where(element => element.Name == "polyline").Attributes("style").Select(style => Stroke().Match(style.Value).Groups[1].Value).Where(stroke => stroke.Length > 0).Distinct()];
        lines.Should().NotBeEmpty().And.OnlyContain(line => line == "rgb(229,231,235)" || Contrast.Of(line, "#FFFFFF") >= 3);
        Html.Descendants("span").Where(sign => (string?)sign.Attribute("class") is "sign line" or "sign dash" or "sign cross" or "sign diamond").Attributes("style")
            .Should().OnlyContain(style => Contrast.Of(style.Value.Replace("color:", "", StringComparison.Ordinal), "#FFFFFF") >= 3);
    }

    public void FitsAPhoneAndPaper()
    {
        Pixels().Matches(Text).Select(match => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).Where(pixels => pixels > 390).Should().BeEmpty();
        Sheet.Should().Contain("@media print").And.Contain("break-inside: avoid").And.Contain("display: table-header-group");
        Html.Descendants().Where(element => !element.AncestorsAndSelf("svg").Any()).Attributes("width").Should().BeEmpty();
    }

    [GeneratedRegex("^h[1-6]$")]
    private static partial Regex Heading();

    [GeneratedRegex("background: (#[0-9A-F]{6})")]
    private static partial Regex Background();

    [GeneratedRegex("(?<![-a-z])color: (#[0-9A-F]{6})")]
    private static partial Regex Color();

    [GeneratedRegex("stroke:(rgb\\([0-9,]+\\))")]
    private static partial Regex Stroke();

    [GeneratedRegex("width:\\s*([0-9]+)px")]
    private static partial Regex Pixels();
}
