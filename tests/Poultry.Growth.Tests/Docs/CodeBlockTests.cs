using System.Globalization;

namespace Poultry.Growth.Tests.Docs;

/// <summary>The C# of every page compiles, runs and prints what the page says, under whatever culture the reader has.</summary>
[Collection(ProcessWide.Name)]
public class CodeBlockTests
{
    public static TheoryData<string, string> PagesAndCultures()
    {
        TheoryData<string, string> data = [];
        foreach (string page in Markdown.Pages)
        {
            data.Add(page, "");
            data.Add(page, "de-DE");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(PagesAndCultures))]
    public void A_page_says_what_its_code_prints(string page, string culture)
    {
        IReadOnlyList<FencedBlock> blocks = Markdown.BlocksOf(page);
        IReadOnlyList<string> problems = [.. blocks.Select((block, i) => Problem(block, blocks.ElementAtOrDefault(i + 1), culture)).OfType<string>()];

        problems.ShouldBeNone();
    }

    [Fact]
    public void The_README_has_an_example_and_its_output()
    {
        IReadOnlyList<FencedBlock> blocks = Markdown.BlocksOf("README.md");
        int example = blocks.ToList().FindIndex(block => block.Language == "csharp");

        example.Should().BeGreaterThanOrEqualTo(0);
        IsOutput(blocks.ElementAtOrDefault(example + 1)).Should().BeTrue(".ci/run compares the first C# block with the text block after it");
    }

    [Theory]
    [InlineData("Console.WriteLine(Age.FromDays(42));", "42 d", null)]
    [InlineData("Console.WriteLine(Age.FromDays(42));", "42 days", "prints 42 d")]
    [InlineData("Console.WriteLine(1.5);", "1.5", "prints 1,5")]
    [InlineData("Console.WriteLine(nothing);", "", "does not compile")]
    [InlineData("throw new InvalidOperationException(\"broken\");", "", "broken")]
    public void A_wrong_page_is_found(string code, string output, string? problem)
    {
        IReadOnlyList<FencedBlock> blocks = Markdown.Blocks("docs/page.md", ["```csharp", code, "```", "prints:", "```text", output, "```"]);

        string? found = Problem(blocks[0], blocks[1], "de-DE");

        (found ?? "none").Should().Contain(problem ?? "none");
    }

#pragma warning disable CA1031 // Whatever the code of a page throws is the finding.
    private static string? Problem(FencedBlock block, FencedBlock? next, string culture)
    {
        if (block.Language != "csharp")
        {
            return null;
        }

        try
        {
            string printed = Trimmed(CodeBlock.Run(block, CultureInfo.GetCultureInfo(culture)));
            return IsOutput(next) && printed != Trimmed(next!.Text) ? $"{block} prints {printed}" : null;
        }
        catch (Exception problem)
        {
            return $"{block}: {problem.Message}";
        }
    }
#pragma warning restore CA1031

    private static bool IsOutput(FencedBlock? block) => block is { Language: "text", LeadsOn: true };

    private static string Trimmed(string text) => string.Join('\n', text.Split('\n').Select(line => line.TrimEnd())).TrimEnd();
}
