using Poultry.Growth.Files;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Broken batch files: every problem at once with its place, exit 2, and nothing written.</summary>
public sealed class BrokenBatchTests : IDisposable
{
    private readonly Scratch scratch = new();

    public static TheoryData<string> Names() => [.. BrokenBatch.All.Select(broken => broken.Name)];

    public void Dispose() => scratch.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_problem_is_told_in_one_pass_and_nothing_is_written(string name)
    {
        BrokenBatch broken = BrokenBatch.All.Single(one => one.Name == name);
        string folder = scratch.PathOf("batch");
        BatchTemplates.Write(folder, TemplateUnits.Metric).Should().BeEmpty();
        foreach (BrokenFile file in broken.Files)
        {
            file.Spoil(folder);
        }

        scratch.Write("batch/old.svg", "<svg/>");
        Dictionary<string, byte[]> before = Contents(folder);

        ConsoleRun run = ConsoleRun.Of("plan", Path.Combine(folder, "batch.json"), "--ics", Path.Combine(folder, "new.ics"), "--chart", Path.Combine(folder, "old.svg"), "--report", Path.Combine(folder, "new.html"));

        run.ErrorLines.Should().Equal(broken.Problems);
        run.Exit.Should().Be(2);
        run.Output.Should().BeEmpty();
        Contents(folder).Should().BeEquivalentTo(before);
    }

    [Fact]
    public void There_are_sixty_and_each_names_its_file()
    {
        BrokenBatch.All.Should().HaveCountGreaterThanOrEqualTo(60);
        BrokenBatch.All.SelectMany(broken => broken.Problems).Should().OnlyContain(line => BatchTemplates.Names.Any(name => line.StartsWith(name + ":", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("--chart", "batch.json", "is no chart")]
    [InlineData("--ics", "batch.json", "is no calendar")]
    [InlineData("--ics", "prices.csv", "is no calendar")]
    [InlineData("--chart", "feed.svg", "exists and is no chart")]
    [InlineData("--report", "batch.json", "is no")]
    [InlineData("--report", "weigh-ins.html", "exists and is no")]
    public void An_answer_never_overwrites_what_the_batch_is_made_of(string option, string name, string problem)
    {
        string folder = scratch.PathOf("batch");
        BatchTemplates.Write(folder, TemplateUnits.Metric);
        File.Move(Path.Combine(folder, "feed.csv"), Path.Combine(folder, "feed.svg"));
        string batch = Path.Combine(folder, "batch.json");
        File.Move(Path.Combine(folder, "weigh-ins.csv"), Path.Combine(folder, "weigh-ins.html"));
        File.WriteAllText(batch, File.ReadAllText(batch).Replace("feed.csv", "feed.svg", StringComparison.Ordinal).Replace("weigh-ins.csv", "weigh-ins.html", StringComparison.Ordinal));
        Dictionary<string, byte[]> before = Contents(folder);

        ConsoleRun run = ConsoleRun.Of("plan", batch, option, Path.Combine(folder, name), "--draws", "100");

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain(problem);
        Contents(folder).Should().BeEquivalentTo(before);
    }

    [Fact]
    public void A_write_that_fails_leaves_the_old_file_as_it_was()
    {
        // The unfinished file beside it, whose name is longer, is longer than file systems take.
        string chart = scratch.Write(new string('c', 246) + ".svg", "<svg>old</svg>");

        ConsoleRun drawn = ConsoleRun.Of("weigh", ConsoleRun.Demo, "--chart", chart);

        drawn.Exit.Should().Be(2);
        drawn.ErrorLines.Should().ContainSingle().Which.Should().Contain("cannot be written");
        File.ReadAllText(chart).Should().Be("<svg>old</svg>");
        scratch.Names().Should().ContainSingle();
    }

    private static Dictionary<string, byte[]> Contents(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).ToDictionary(path => Path.GetFileName(path)!, File.ReadAllBytes);
}
