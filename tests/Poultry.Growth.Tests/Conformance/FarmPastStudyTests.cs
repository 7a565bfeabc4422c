using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The page docs/studies/farm-past.md says what the library does today: its first farms are recomputed, and where the model holds its intervals do.</summary>
public class FarmPastStudyTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.PathOf("docs/studies/farm-past.md"));

    [Fact]
    public void The_first_farms_are_as_printed()
    {
        for (int number = 0; number < FarmPastStudy.FirstFarms; number++)
        {
            foreach (int batches in FarmPastStudy.Past)
            {
                foreach ((string name, double times, double apart, int seed) in FarmPastStudy.Rows)
                {
                    Lines.Should().Contain(FarmPastStudy.FirstLosses(name, batches, number, new LossFarm(seed, number, batches, times, apart)));
                }

                if (batches > 0)
                {
                    Lines.Should().Contain(FarmPastStudy.FirstFeed(batches, number, FarmPastStudy.Feed(number, batches)));
                }
            }
        }
    }

    /// <summary>90 %, of 1500 within three standard errors, and a point for a spread that is learned too.</summary>
    [Fact]
    public void Where_the_model_holds_its_intervals_do()
    {
        double[][] rows = [.. Lines.Where(line => line.StartsWith("| as the model says | 2027", StringComparison.Ordinal))
            .Select(line => line.Trim('|').Split('|').Skip(2).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())];

        rows.Select(row => row.Length).Should().Equal(4, 3);
        rows.SelectMany(row => row).Should().OnlyContain(held => held > 86.7 && held < 93.3);
    }

    /// <summary>What docs/planning.md prints is this table.</summary>
    [Fact]
    public void The_page_of_planning_prints_the_table()
    {
        string[] planning = File.ReadAllLines(Repository.PathOf("docs/planning.md"));
        foreach ((string name, _, _, int seed) in FarmPastStudy.Rows)
        {
            string row = Lines.Single(line => line.StartsWith(string.Create(CultureInfo.InvariantCulture, $"| {name} | {seed} |"), StringComparison.Ordinal));
            planning.Should().Contain(row.Replace(string.Create(CultureInfo.InvariantCulture, $" {seed} |"), "", StringComparison.Ordinal));
        }
    }
}
