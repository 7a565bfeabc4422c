using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The page docs/studies/learning.md says what the library does today: its first farms are recomputed, its tables held to the targets of the method.</summary>
public class LearningStudyTests
{
    private const string Page = "docs/studies/learning.md";

    [Fact]
    public void The_first_farms_are_as_printed()
    {
        string[] lines = File.ReadAllLines(Repository.PathOf(Page));

        foreach (LearningCase row in LearningCase.All)
        {
            for (int number = 0; number < LearningStudy.FirstFarms; number++)
            {
                lines.Should().Contain(LearningStudy.FirstFarm(row, number, row.Farm(number)));
            }
        }
    }

    /// <summary>Median error in % at 21, 28, 35 d at most; coverage in % within; width at most this part of the shipped prior's.</summary>
    [Theory]
    [InlineData("10 batches", 3.0, 2.5, 2.1, 89, 97, 0.70)]
    [InlineData("3 batches", 3.4, 2.8, 2.3, 90, 100, 1.0)]
    public void Own_batches_help_as_much_as_promised(string row, double at21, double at28, double at35, double lowest, double highest, double width)
    {
        IReadOnlyList<(double Median, double Coverage, double Width)> own = Cells(row, "own");
        IReadOnlyList<(double Median, double Coverage, double Width)> shipped = Cells(row, "shipped");
        double[] most = [at21, at28, at35];
        for (int stop = 0; stop < most.Length; stop++)
        {
            own[stop].Median.Should().BeLessThanOrEqualTo(most[stop]);
            own[stop].Coverage.Should().BeInRange(lowest, highest);
            own[stop].Width.Should().BeLessThanOrEqualTo(width * shipped[stop].Width);
        }
    }

    [Fact]
    public void A_change_of_strain_is_borne()
    {
        (double median, double coverage, _) = Cells("10 batches, new one of another strain", "own")[0];

        median.Should().BeLessThanOrEqualTo(5.5);
        coverage.Should().BeGreaterThanOrEqualTo(84);
    }

    [Fact]
    public void Every_search_settled()
    {
        string[][] searches = [.. Rows().Where(cells => cells.Length == 6 && LearningCase.All.Any(row => row.Name == cells[0]) && cells[2] is not ("own" or "shipped"))];

        searches.Should().HaveCount(LearningCase.All.Count);
        searches.Should().AllSatisfy(cells => cells[3].Should().Be("0"));
        LearningStudy.Farms.Should().BeGreaterThanOrEqualTo(1000);
    }

    private static IReadOnlyList<(double Median, double Coverage, double Width)> Cells(string row, string prior) =>
    [
        .. Rows().Single(cells => cells[0] == row && cells[2] == prior).Skip(3).Select(cell =>
        {
            double[] numbers = [.. cell.Split(',', '/').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
            return (numbers[0], numbers[2], numbers[3]);
        }),
    ];

    private static IEnumerable<string[]> Rows() => File.ReadLines(Repository.PathOf(Page))
        .Where(line => line.StartsWith('|')).Select(line => line.Trim('|').Split('|', StringSplitOptions.TrimEntries));
}
