using System.Xml.Linq;

namespace Poultry.Growth.Calculators.Report;

/// <summary>A cell of a table.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="Note">What stands below in small letters; nothing where it is empty.</param>
internal sealed record ReportCell(string Text, string Note = "")
{
    /// <summary>Whether it stands in one line though it names its row: a date.</summary>
    private bool IsWhole { get; init; }

    public static ReportCell Of(DateOnly? date, string note = "") => new(Numbers.Date(date), note) { IsWhole = true };

    public static implicit operator ReportCell(string text) => new(text);

    /// <param name="namesItsRow">Whether it is the first.</param>
    /// <param name="isWords">Whether its column holds words.</param>
    public XElement ToHtml(bool namesItsRow, bool isWords) => new(
        namesItsRow ? "th" : "td",
        namesItsRow ? new XAttribute("scope", "row") : null,
        namesItsRow && IsWhole ? new XAttribute("class", "whole") : isWords && !namesItsRow ? new XAttribute("class", "words") : null,
        Text,
        Note.Length > 0 ? new XElement("small", Note) : null);
}
