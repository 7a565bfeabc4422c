using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/gallery.md and its charts are what the console draws today.</summary>
[Collection(ProcessWide.Name)]
public sealed class GalleryTests : IClassFixture<SamplesCopy>
{
    /// <summary>What the folder may weigh, all charts together.</summary>
    private const long MostBytes = 600_000;

    public static TheoryData<string> Charts() => [.. GalleryChart.All.Select(chart => chart.Name)];

    [Fact]
    public void The_page_is_fresh() => GeneratedPage.ShouldBeFresh(GalleryPage.Path, GalleryPage.Text());

    [Theory]
    [MemberData(nameof(Charts))]
    public void The_call_on_the_page_draws_the_chart(string name)
    {
        GalleryChart chart = GalleryChart.All.Single(chart => chart.Name == name);
        Directory.CreateDirectory(GalleryChart.Folder);

        ConsoleRun run = ConsoleRun.Of(chart.Call.Split(' '));

        run.Exit.Should().Be(0, run.Errors);
        GeneratedPage.ShouldBeFresh(chart.Path, File.ReadAllText(chart.Path));
    }

    [Fact]
    public void Every_command_that_draws_is_in_the_gallery()
    {
        string[] drawing = [.. ConsoleHelp.Commands().SelectMany(command => ConsoleHelp.Commands(command) is { Count: > 0 } parts ? parts.Select(part => command + " " + part) : [command])
            .Where(command => ConsoleHelp.Of(command).Contains("--chart <FILE.svg>", StringComparison.Ordinal))];

        drawing.Should().HaveCountGreaterThan(10);
        drawing.Where(command => !GalleryChart.All.Any(chart => chart.Words.StartsWith(command + " ", StringComparison.Ordinal))).ShouldBeNone();
    }

    [Fact]
    public void The_gallery_stays_small_and_holds_nothing_else()
    {
        GeneratedPage.ShouldHaveNoOthers(GalleryChart.Folder, GalleryChart.All.Select(chart => chart.Path));

        Repository.Files(GalleryChart.Folder).Sum(file => new FileInfo(Repository.PathOf(file)).Length).Should().BeInRange(1, MostBytes);
    }
}
