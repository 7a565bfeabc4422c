using Poultry.Growth.Evidence;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/nomenclature.md: the trade's words, written by hand, and below them every symbol of every model.</summary>
internal static class NomenclaturePage
{
    public const string Path = "docs/nomenclature.md";

    /// <summary>The hand stops here.</summary>
    private const string Below = "<!-- Below this line generated from the models; DEVELOPERS.md says how. -->";

    /// <summary>A meaning shared by more models than these names the first of them.</summary>
    private const int MostLinks = 4;

    /// <summary>What is written by hand, as the page has it.</summary>
    public static IReadOnlyList<string> Written { get; } = [.. File.ReadLines(Repository.PathOf(Path)).TakeWhile(line => line != Below)];

    public static string Text(IReadOnlyList<ModelInfo> models) => ModelPage.Lines(
    [
        .. Written,
        Below,
        "",
        "| symbol | meaning | unit | models |",
        "|---|---|---|---|",
        .. models.SelectMany(model => model.Symbols.Select(symbol => (symbol.Symbol, symbol.Meaning, symbol.Unit, Model: model)))
            .GroupBy(use => (use.Symbol, use.Meaning, use.Unit))
            .OrderBy(uses => uses.Key.Symbol, StringComparer.OrdinalIgnoreCase).ThenBy(uses => uses.Key.Symbol, StringComparer.Ordinal).ThenBy(uses => uses.Key.Meaning, StringComparer.Ordinal)
            .Select(uses => ModelPage.Row($"`{uses.Key.Symbol}`", uses.Key.Meaning, uses.Key.Unit, Links([.. uses.Select(use => use.Model).Distinct()]))),
    ]);

    /// <summary>The names of code in a row of a table written by hand: what stands in its last cell between backticks.</summary>
    public static IEnumerable<string> Code(string line) =>
        line.StartsWith("| ", StringComparison.Ordinal) ? line.TrimEnd(' ', '|').Split('|')[^1].Split('`').Where((_, part) => part % 2 == 1) : [];

    private static string Links(IReadOnlyList<ModelInfo> models) =>
        string.Join(", ", models.Take(models.Count > MostLinks ? MostLinks - 1 : MostLinks).Select(model => $"[{model.Id}](models/{model.Id}.md)"))
            + (models.Count > MostLinks ? $" and {models.Count - MostLinks + 1} more" : "");
}
