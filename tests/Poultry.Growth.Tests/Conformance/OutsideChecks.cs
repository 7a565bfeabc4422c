using System.Text.RegularExpressions;
using Poultry.Growth.Tests.Docs;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Every room's figures from outside, each a test, and their pages.</summary>
public partial class OutsideChecks
{
    public static TheoryData<string> Ids => new(ConformanceRoom.All.SelectMany(room => room.Checks.Select(check => room.Name + " " + check.Id)));

    public static TheoryData<string> Names => new(ConformanceRoom.All.Select(room => room.Name));

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_library_agrees(string id)
    {
        OutsideCheck check = ConformanceRoom.All.SelectMany(room => room.Checks.Where(check => room.Name + " " + check.Id == id)).Single();

        check.Got.Should().BeApproximately(check.Expected, check.Tolerance, "{0} ({1})", check, check.Source);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_is_fresh(string name)
    {
        ConformanceRoom room = ConformanceRoom.All.Single(known => known.Name == name);

        GeneratedPage.ShouldBeFresh(room.Path, ConformancePages.Of(room));
    }

    [Fact]
    public void The_summary_is_fresh_and_names_every_page()
    {
        GeneratedPage.ShouldBeFresh(ConformancePages.Index, ConformancePages.Summary());
        GeneratedPage.ShouldHaveNoOthers(
            ConformanceRoom.Folder.TrimEnd('/'),
            [ConformancePages.Index, .. ConformanceRoom.All.Select(room => room.Path), .. ConformanceRoom.All.SelectMany(room => room.Details.Select(detail => detail.Path))]);
    }

    /// <summary>More digits than that are not the same on every machine.</summary>
    [Fact]
    public void No_page_prints_more_than_six_significant_digits()
    {
        foreach (string page in Repository.Files("docs/conformance", "*.md"))
        {
            Number().Matches(File.ReadAllText(Repository.PathOf(page))).Select(number => number.Value)
                .Where(number => number.Replace(".", "", StringComparison.Ordinal).TrimStart('0').Length > 6)
                .ShouldBeNone(page);
        }
    }

    [GeneratedRegex(@"(?<![\w.])\d+(\.\d+)?")]
    private static partial Regex Number();
}
