namespace Poultry.Growth.Tests.Docs;

/// <summary>A room's page has all its parts: whoever reads it as the first one finds the question, how to ask it, where the figures are from and what to mind.</summary>
public class RoomPageTests
{
    public static TheoryData<string> Pages() =>
    [
        "weighing", "curves", "fitting", "projection", "learning", "flock", "feeding", "feeding-water", "feeding-heat", "feeding-figures",
        "housing", "housing-pasture", "housing-crates", "housing-air", "carcass", "myopathy", "planning",
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_has_all_its_parts(string page) => Missing($"docs/{page}.md", File.ReadAllLines(Repository.PathOf($"docs/{page}.md"))).ShouldBeNone();

    [Fact]
    public void What_is_missing_is_found()
    {
        Missing("page.md", ["# Heat", "It is hot."]).Should().HaveCount(6);
        Missing("page.md", ["# Heat", "Is it hot?", "```csharp", "x", "```", "```text", "y", "```", "[a](console.md#heat)", "Weak: [b](models/b.md)", "## Cautions"]).Should().BeEmpty();
    }

    private static IEnumerable<string> Missing(string page, IReadOnlyList<string> lines)
    {
        IReadOnlyList<FencedBlock> blocks = Markdown.Blocks(page, lines);
        string[] links = [.. Markdown.Links(lines).Select(link => link.Target)];
        (string Part, bool IsThere)[] parts =
        [
            ("the question, in the title or right below it", lines.TakeWhile(line => line is not (['#', '#', ..] or ['`', '`', '`', ..])).Any(line => line.Contains('?', StringComparison.Ordinal))),
            ("code with what it prints", blocks.Zip(blocks.Skip(1)).Any(pair => pair is { First.Language: "csharp", Second: { Language: "text", LeadsOn: true } })),
            ("the command, or a link to it", blocks.Any(block => block.Language == "console") || links.Any(link => link.StartsWith("console.md#", StringComparison.Ordinal))),
            ("a link to a model with its sources", links.Any(link => link.StartsWith("models/", StringComparison.Ordinal))),
            ("what is weak", lines.Any(line => line.Contains("weak", StringComparison.OrdinalIgnoreCase))),
            ("cautions", lines.Contains("## Cautions")),
        ];
        return parts.Where(part => !part.IsThere).Select(part => $"{page}: {part.Part}");
    }
}
