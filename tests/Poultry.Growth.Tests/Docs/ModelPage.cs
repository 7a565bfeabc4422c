using System.Globalization;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Tests.Docs;

/// <summary>The page of a model under docs/models, and their index.</summary>
internal static class ModelPage
{
    public const string Folder = "docs/models";

    public const string Index = Folder + "/README.md";

    private const string Notice = "<!-- Generated from the library; DEVELOPERS.md says how. -->";

    public static string PathOf(ModelInfo model) => $"{Folder}/{model.Id}.md";

    public static string TextOf(ModelInfo model) => Lines(
    [
        $"# {model.Name}",
        "",
        Notice,
        "",
        $"Model `{model.Id}`. How its figures are known: {Words(model.HowKnown)}.",
        "",
        "```",
        model.Equation,
        "```",
        "",
        "| symbol | meaning | unit |",
        "|---|---|---|",
        .. model.Symbols.Select(symbol => Row($"`{symbol.Symbol}`", symbol.Meaning, symbol.Unit)),
        "",
        "## Where it was measured",
        "",
        .. model.Ranges.Select(Range).DefaultIfEmpty("Nowhere: it is a form without figures of its own."),
        "",
        "## How well it agrees",
        "",
        model.Accuracy,
        "",
        "## Sources",
        "",
        .. model.Citations.Select(citation => $"- **{citation.Key}**: {citation} ({Words(citation.HowKnown)})"),
    ]);

    public static string IndexOf(IReadOnlyList<ModelInfo> models) => Lines(
    [
        "# Models",
        "",
        Notice,
        "",
        "Every equation and coefficient set of the library, with its source, where it was measured, and how its figures are known.",
        "",
        "| model | id | how known | sources |",
        "|---|---|---|---|",
        .. models.Select(model => Row(
            $"[{model.Name}]({model.Id}.md)", $"`{model.Id}`", Words(model.HowKnown), string.Join(", ", model.Citations.Select(citation => citation.Key)))),
    ]);

    private static string Range(ValidityRange range) =>
        string.Create(CultureInfo.InvariantCulture, $"- {range.Quantity}: {range.Low} to {range.High} {range.Unit}");

    internal static string Row(params IEnumerable<string> cells) =>
        "| " + string.Join(" | ", cells.Select(cell => cell.Replace("|", @"\|", StringComparison.Ordinal))) + " |";

    private static string Words(HowKnown known) => known switch
    {
        HowKnown.ReadInSource => "read in the source",
        HowKnown.Derived => "derived, by arithmetic that anyone can check",
        HowKnown.Secondary => "read in somebody else's account of the source",
        HowKnown.Memory => "recalled, unverified",
        HowKnown.CommonPractice => "common practice, no source",
        HowKnown.Assumption => "chosen, no data",
        _ => throw new ArgumentOutOfRangeException(nameof(known), known, "No words for it yet."),
    };

    internal static string Lines(IEnumerable<string> lines) => string.Join('\n', lines) + "\n";
}
