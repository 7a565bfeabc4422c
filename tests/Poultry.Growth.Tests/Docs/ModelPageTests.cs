using Poultry.Growth.Evidence;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/models says what the models say.</summary>
public class ModelPageTests
{
    [Fact]
    public void Every_model_has_its_page()
    {
        foreach (ModelInfo model in Models.All)
        {
            GeneratedPage.ShouldBeFresh(ModelPage.PathOf(model), ModelPage.TextOf(model));
        }

        GeneratedPage.ShouldHaveNoOthers(ModelPage.Folder, Models.All.Select(ModelPage.PathOf).Append(ModelPage.Index));
    }

    [Fact]
    public void The_index_names_every_model() => GeneratedPage.ShouldBeFresh(ModelPage.Index, ModelPage.IndexOf(Models.All));

    [Fact]
    public void A_page_says_everything_that_the_model_says()
    {
        ModelInfo model = new(
            "line",
            "Straight line",
            "y = a x",
            [new("a", "slope | gain", "kg/d")],
            [new("Anyone1900", "Anyone 1900, Lines", HowKnown.Secondary, "table 2")],
            "within 1 %",
            HowKnown.Memory,
            [new("age", 0.5, 42, "d")]);

        ModelPage.TextOf(model).Should().ContainAll(
            "# Straight line",
            "`line`",
            "y = a x",
            @"| `a` | slope \| gain | kg/d |",
            "- **Anyone1900**: Anyone 1900, Lines, table 2 (read in somebody else's account of the source)",
            "within 1 %",
            "recalled, unverified",
            "- age: 0.5 to 42 d");
    }

    [Fact]
    public void A_stale_page_is_told_from_a_fresh_one()
    {
        string license = File.ReadAllText(Repository.PathOf("LICENSE"));

        GeneratedPage.IsFresh("LICENSE", license.ReplaceLineEndings("\r\n")).Should().BeTrue();
        GeneratedPage.IsFresh("LICENSE", license + "More.").Should().BeFalse();
        GeneratedPage.IsFresh("docs/no-such-page.md", "Text.").Should().BeFalse();
        string[] schemas = [.. Directory.GetFiles(Repository.PathOf("docs/schema")).Select(file => "docs/schema/" + Path.GetFileName(file)).Order(StringComparer.Ordinal)];
        GeneratedPage.Others("docs/schema", schemas[1..]).Should().Equal(schemas[0]);
    }
}
