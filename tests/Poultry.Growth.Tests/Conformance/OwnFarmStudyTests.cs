using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The page docs/studies/own-farm.md says what the library does today: its first farms are recomputed, its coverages held to what is asked.</summary>
public class OwnFarmStudyTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.PathOf("docs/studies/own-farm.md"));

    [Fact]
    public void The_first_farms_are_as_printed()
    {
        foreach (OwnFarmRow row in OwnFarmRow.All)
        {
            Lines.Should().Contain(OwnFarmStudy.FirstFarm(row, 0));
        }
    }

    /// <summary>At least .85 where curves are Gompertz or as published, .75 where they are not, at every stop; a sudden slow-down is covered less, and the answer says so.</summary>
    [Fact]
    public void Own_batches_keep_the_coverage_asked_for()
    {
        foreach (OwnFarmRow row in OwnFarmRow.All.Where(row => row.AskedCoverage is not null))
        {
            Coverages(row).Should().HaveCount(OwnFarmRow.Stops.Count).And.AllSatisfy(coverage => coverage.Should().BeGreaterThanOrEqualTo(row.AskedCoverage!.Value, row.Name));
        }

        OwnFarmStudy.Farms.Should().BeGreaterThanOrEqualTo(1000);
    }

    private static double[] Coverages(OwnFarmRow row) =>
    [
        .. Lines.Single(line => line.StartsWith("| " + row.Name + " | ", StringComparison.Ordinal) && line.Contains("| own |", StringComparison.Ordinal))
            .Trim('|').Split('|').Skip(4).Select(cell => double.Parse(cell.Trim().Split(' ')[1], CultureInfo.InvariantCulture)),
    ];
}
