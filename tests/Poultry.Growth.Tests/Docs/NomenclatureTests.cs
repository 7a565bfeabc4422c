using System.Reflection;
using Poultry.Growth.Evidence;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/nomenclature.md names every symbol, and its words lead to code that is there.</summary>
public class NomenclatureTests
{
    [Fact]
    public void The_page_is_fresh() => GeneratedPage.ShouldBeFresh(NomenclaturePage.Path, NomenclaturePage.Text(Models.All));

    [Fact]
    public void A_symbol_with_two_meanings_shows_both_with_their_models()
    {
        ModelInfo Model(string id, string meaning) =>
            new(id, id, "x", [new("x", meaning, "kg")], [new("Anyone1900", "Anyone 1900, Lines", HowKnown.Secondary)], "unknown", HowKnown.Secondary);

        NomenclaturePage.Text([Model("one", "feed"), Model("two", "weight"), Model("three", "feed")]).Should().ContainAll(
            "| `x` | feed | kg | [one](models/one.md), [three](models/three.md) |\n",
            "| `x` | weight | kg | [two](models/two.md) |\n");
    }

    [Fact]
    public void Every_word_leads_to_code()
    {
        string[] names = [.. NomenclaturePage.Written.SelectMany(NomenclaturePage.Code)];

        names.Should().HaveCountGreaterThan(40);
        names.Where(name => !IsThere(name)).ShouldBeNone();
    }

    [Theory]
    [InlineData("Uniformity", true)]
    [InlineData("BatchFigures.Livability", true)]
    [InlineData("Estimate<T>", true)]
    [InlineData("BatchFigures.Deadliness", false)]
    [InlineData("Evenness", false)]
    public void A_name_that_is_there_is_told_from_one_that_is_not(string name, bool isThere) => IsThere(name).Should().Be(isThere);

    /// <summary>A public type, or a public member of one.</summary>
    private static bool IsThere(string name)
    {
        string[] parts = name.Replace("<T>", "`1", StringComparison.Ordinal).Split('.');
        return Libraries.PublicTypes.Any(type => type.Name == parts[0]
            && (parts.Length == 1 || type.GetMember(parts[1], BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static).Length > 0));
    }
}
