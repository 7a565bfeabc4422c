using System.Globalization;
using System.Text;
using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/standards.md: every limit that the library carries, text by text.</summary>
internal static class StandardsPage
{
    public const string Path = "docs/standards.md";

    public static string Text()
    {
        StringBuilder page = new();
        page.Append("# Standards: every limit that the library carries\n\n<!-- Generated from the library; DEVELOPERS.md says how. -->\n\n");
        page.Append(CultureInfo.InvariantCulture, $"{LimitBook.Shipped.Count} figures of {LimitBook.Shipped.Select(limit => limit.Instrument).Distinct().Count()} texts, in our words. **Not legal advice; check the current text.** Law changes, EU directives bind through national acts that may be stricter, and local codes, permits and licensed practice decide. ");
        page.Append(CultureInfo.InvariantCulture, $"{LimitBook.Shipped.Count(limit => limit.IsUnverified)} figures are from memory and **unverified**: they bind nobody, and are here so that nobody takes them for read.\n\n");
        page.Append("\"Vouch for\" is the code of a condition that only the keeper can answer for (`--meets`). How limits are used: [housing.md](housing.md); the table as data, and how to bring your own: [file-formats.md](file-formats.md#limits-csv).\n");
        foreach (IGrouping<Instrument, Limit> text in LimitBook.Shipped.GroupBy(limit => limit.Instrument).OrderBy(text => text.Key.Jurisdiction, StringComparer.Ordinal).ThenBy(text => text.Key.Name, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {text.Key.Jurisdiction}: {text.Key.Name}\n\nEdition: {text.Key.Edition}. {Kind(text.Key.Kind)}\n\n| quantity | limit | scope and conditions | applies when | vouch for | known | source |\n|---|---|---|---|---|---|---|\n");
            foreach (Limit limit in text)
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(limit.Quantity)} | {LimitText.Sign(limit.Comparison)} {limit.Printed} | {Cell(limit.Scope)} | {Cell(When(limit))} | {(limit.Requires is { } code ? "`" + code + "`" : "")} | {Known(limit.HowKnown)} | {(limit.Source is { } source ? "[read here](" + source.Replace(" ", "%20", StringComparison.Ordinal) + ")" : "")} |\n");
            }
        }

        return page.ToString();
    }

    private static string When(Limit limit) => string.Join("; ", new[]
    {
        string.Join(", ", limit.Systems.Select(LimitText.Words)),
        limit.UnsettledSystems.Count > 0 ? "not settled for " + string.Join(", ", limit.UnsettledSystems.Select(LimitText.Words)) : "",
        limit.House is { } house ? house == HouseKind.Fixed ? "fixed house" : "mobile house" : "",
        string.Join("; ", limit.When.Select(clause => clause + (clause.IsSettled ? "" : " (not settled)"))),
    }.Where(part => part.Length > 0));

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    private static string Kind(InstrumentKind kind) => kind switch
    {
        InstrumentKind.Law => "Law, or an authority's reading of it.",
        InstrumentKind.Code => "A code of practice.",
        InstrumentKind.Scheme => "A programme, label or pledge: binds those who joined it.",
        _ => "Advice: binds nobody.",
    };

    private static string Known(HowKnown howKnown) => howKnown switch
    {
        HowKnown.ReadInSource => "read in the source",
        HowKnown.Secondary => "secondary",
        HowKnown.Memory => "**memory, unverified**",
        HowKnown.CommonPractice => "common practice",
        HowKnown.Derived => "derived",
        _ => "assumption",
    };
}
