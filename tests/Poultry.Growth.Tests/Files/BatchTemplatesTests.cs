using Poultry.Growth.Files;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>The files of a new batch: they plan as they are, name their edits, and never replace anything.</summary>
public sealed class BatchTemplatesTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData(TemplateUnits.Metric, "metric")]
    [InlineData(TemplateUnits.UnitedStates, "us")]
    public void They_plan_as_they_are(TemplateUnits units, string word)
    {
        ConsoleRun made = ConsoleRun.Of("new", scratch.PathOf("new"), "--units", word);
        BatchFileReading reading = BatchFile.Read(scratch.PathOf("new/batch.json"));

        made.Exit.Should().Be(0, made.Errors);
        made.Output.Should().Contain("invented").And.ContainAll(BatchTemplates.Names);
        reading.Problems.Should().BeEmpty();
        reading.PlanMissing.Should().BeNull();
        reading.Weights!.WeighIns.Should().BeNull("nothing was weighed yet");
        reading.Flock!.HeadCount.Placed.Should().Be(300);
        foreach (string name in BatchTemplates.Names)
        {
            File.ReadAllText(scratch.PathOf("new/" + name)).Should().Be(BatchTemplates.Text(name, units));
        }
    }

    [Theory]
    [InlineData(TemplateUnits.Metric)]
    [InlineData(TemplateUnits.UnitedStates)]
    public void The_batch_file_is_a_page_and_names_ten_edits(TemplateUnits units)
    {
        string text = BatchTemplates.Text("batch.json", units);

        text.Split('\n').Should().HaveCountLessThanOrEqualTo(60);
        text.Should().Contain("INVENTED");
        Enumerable.Range(1, 10).Should().OnlyContain(edit => text.Contains($"// EDIT {edit} of 10: "));
        text.Should().NotContain("EDIT 11");
    }

    [Fact]
    public void Each_table_says_in_one_line_what_to_write_when()
    {
        foreach (string name in BatchTemplates.Names.Where(name => name.EndsWith(".csv", StringComparison.Ordinal)))
        {
            string[] lines = BatchTemplates.Text(name, TemplateUnits.Metric).Split('\n');
            lines[0].Should().StartWith("# ").And.MatchRegex("[Ww]rite");
            lines.First(line => !line.StartsWith('#')).Should().Contain(",", "the header follows");
        }

        foreach (string table in (string[])["weigh-ins.csv", "feed.csv", "temperatures.csv"])
        {
            BatchTemplates.Text(table, TemplateUnits.UnitedStates).Should().MatchRegex("_(lb|f)(,|\n)").And.NotMatchRegex("_(kg|g|c)(,|\n)");
        }
    }

    [Fact]
    public void One_file_in_the_way_and_none_is_written()
    {
        Directory.CreateDirectory(scratch.PathOf("farm"));
        scratch.Write("farm/feed.csv", "mine");
        scratch.Write("farm/batch.json", "mine too");

        ConsoleRun run = ConsoleRun.Of("new", scratch.PathOf("farm"));

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().Equal(
            scratch.PathOf("farm/batch.json") + ": exists and is not replaced; expected a folder without it",
            scratch.PathOf("farm/feed.csv") + ": exists and is not replaced; expected a folder without it");
        Directory.GetFiles(scratch.PathOf("farm")).Should().HaveCount(2);
        File.ReadAllText(scratch.PathOf("farm/feed.csv")).Should().Be("mine");
    }

    [Fact]
    public void A_separator_at_the_end_is_the_folder_before_it()
    {
        BatchTemplates.Write(scratch.PathOf("farm") + Path.DirectorySeparatorChar, TemplateUnits.Metric).Should().BeEmpty();

        Directory.GetFiles(scratch.PathOf("farm")).Should().HaveCount(BatchTemplates.Names.Count);
    }

    [Fact]
    public void What_cannot_be_a_folder_is_refused()
    {
        string file = scratch.Write("file", "x");

        ConsoleRun.Of("new", file).ErrorLines.Should().ContainSingle().Which.Should().Contain("is a file");
        ConsoleRun.Of("new", scratch.PathOf("none/within")).ErrorLines.Should().ContainSingle().Which.Should().Contain("lies in a folder that does not exist");
        ConsoleRun.Of("new", " ").ErrorLines.Should().ContainSingle().Which.Should().Contain("is empty");
        ConsoleRun.Of("new", scratch.PathOf("a"), "--units", "imperial").Exit.Should().Be(2);
        scratch.Names().Should().Equal("file");
        FluentActions.Invoking(() => BatchTemplates.Text("seed.csv", TemplateUnits.Metric)).Should().Throw<ArgumentException>().WithMessage("*\"seed.csv\"*batch.json, prices.csv*");
    }

    [Fact]
    public void The_other_tables_are_read_by_those_who_ask_for_them()
    {
        BatchTemplates.Write(scratch.PathOf("new"), TemplateUnits.Metric);
        string sheet = scratch.PathOf("new/plant-sheet.csv"), log = scratch.PathOf("new/disturbances.csv");
        File.AppendAllText(sheet, "delivered,,,,,262,810kg,,\npacked,whole,,,,250,560kg,,\n");
        File.AppendAllText(log, "2027-05-16,hail,20,5,\n");

        PlantSheetFile.Read(sheet).Problems.Should().BeEmpty();
        DisturbanceFile.Read(log, new DateOnly(2027, 4, 11)).Problems.Should().BeEmpty();
    }
}
