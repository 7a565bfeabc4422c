using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace Poultry.Growth.Calculators.Report;

/// <summary>A tree of elements as HTML that an XML parser reads too: every text is escaped, nothing is made of pieces of text.</summary>
internal static class HtmlText
{
    /// <summary>What an earlier report starts with: a later one may replace it, and no other file.</summary>
    public const string Start = "<!DOCTYPE html>\n<!-- A report of poultry-growth: a later one may replace it. -->\n";

    private static readonly HashSet<string> Void = new(["meta", "br"], StringComparer.Ordinal);

    public static string Of(XElement html)
    {
        foreach (XText text in html.DescendantNodes().OfType<XText>())
        {
            text.Value = string.Concat(text.Value.Select(letter => XmlConvert.IsXmlChar(letter) || char.IsSurrogate(letter) ? letter : '\uFFFD'));
        }

        foreach (XElement element in html.DescendantsAndSelf().Where(element => element.IsEmpty && !Void.Contains(element.Name.LocalName) && !IsDrawn(element)))
        {
            // HTML ends an element by its end tag only.
            element.Value = "";
        }

        StringBuilder page = new(Start);
        XmlWriterSettings settings = new() { OmitXmlDeclaration = true, Indent = false, NewLineHandling = NewLineHandling.None };
        using (XmlWriter writer = XmlWriter.Create(page, settings))
        {
            html.WriteTo(writer);
        }

        return page.Append('\n').ToString();
    }

    private static bool IsDrawn(XElement element) => element.AncestorsAndSelf("svg").Any();
}
