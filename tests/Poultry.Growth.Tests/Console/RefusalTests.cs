using Poultry.Growth.Tests.Files;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>A broken file is refused: every problem on a line of its own, exit 2, nothing printed as an answer and nothing written.</summary>
public sealed class RefusalTests : IDisposable
{
    private readonly Scratch scratch = new();

    public static TheoryData<string, string> BrokenFiles => BrokenWeighInFilesTests.Cells;

    public void Dispose() => scratch.Dispose();

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void A_broken_file_is_refused_with_its_place_and_nothing_is_written(string text, string message)
    {
        string file = scratch.Write("f.csv", text);

        foreach (string[] command in (string[][])[["fit"], ["weigh"], ["project"], ["compare", "--standard", ConsoleRun.Standard]])
        {
            ConsoleRun run = ConsoleRun.Of([.. command, file, "--json", "--chart", scratch.PathOf("chart.svg")]);

            run.Exit.Should().Be(2);
            run.Output.Should().BeEmpty();
            run.ErrorLines.Should().Equal(message);
        }

        scratch.Names().Should().Equal("f.csv");
    }

    [Fact]
    public void The_kinds_of_broken_files_are_many() => BrokenFiles.Should().HaveCountGreaterThanOrEqualTo(30);

    [Fact]
    public void All_problems_of_options_and_file_are_told_at_once()
    {
        string file = scratch.Write("f.csv", "age_d,weight_g\n7,x\n14,-3\n");

        ConsoleRun run = ConsoleRun.Of("fit", file, "--target", "2.6", "--level", "0,9", "--chart", scratch.PathOf("none/chart.svg"));

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().HaveCount(5);
        run.Errors.Should().Contain("f.csv:2:3: ").And.Contain("f.csv:3:4: ").And.Contain("--target: ").And.Contain("--level: ").And.Contain("--chart: ");
        scratch.Names().Should().Equal("f.csv");
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_refused()
    {
        ConsoleRun.Of("fit", scratch.PathOf("none.csv")).Should().Be(
            new ConsoleRun(2, "", "none.csv: file does not exist; expected a text file in UTF-8 of at most 50 MB\n"));
        ConsoleRun folder = ConsoleRun.Of("weigh", scratch.PathOf("."));
        folder.Exit.Should().Be(2);
        folder.Errors.Should().Contain("is a folder");
    }

    [Fact]
    public void A_file_by_dates_needs_both_halves_of_the_placement()
    {
        string file = scratch.Write("f.csv", "date,weight_g\n2027-04-19,171\n");

        ConsoleRun.Of("weigh", file).ErrorLines.Should().HaveCount(2);
        ConsoleRun.Of("weigh", file, "--placed", "2027-04-12").ErrorLines.Should().ContainSingle().Which.Should().Contain("age-at-placement");
        ConsoleRun.Of("weigh", file, "--placed", "2027-04-12", "--age-at-placement", "2d", "--json").Json
            .GetProperty("byAge")[0].GetProperty("ageDays").GetDouble().Should().Be(9);
    }
}
