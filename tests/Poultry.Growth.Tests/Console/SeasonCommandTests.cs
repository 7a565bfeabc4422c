using System.Text.Json;
using System.Xml.Linq;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>season</c>: answers, JSON, chart, refusals.</summary>
public sealed class SeasonCommandTests : IDisposable
{
    private static readonly string Demo = Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-season.json");

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Tables_first_then_why_then_cautions_and_sources()
    {
        string path = scratch.PathOf("season.svg");
        ConsoleRun run = Season(Demo, "--chart", path);

        run.Exit.Should().Be(0, run.Errors);
        run.Output.Should().StartWith("Season Meadow 2027: 3 of 3 batches\nMean margin ").And.Contain("| late summer | 2027-07-14  | 2027-08-03 | 2027-09-07 |").And.Contain("one shelter more")
            .And.Contain("late summer uses them").And.Contain("Here the margin by shelter-day decides.");
        string[] parts = ["Batches (90 % intervals)", "What a step more of a limit would bring", "\nWhy\n", "\nCautions\n", "\nSources\n"];
        parts.Select(part => run.Output.IndexOf(part, StringComparison.Ordinal)).Should().BeInAscendingOrder().And.NotContain(-1);
        TheChartStandsByItself(XDocument.Parse(File.ReadAllText(path)).Root!);
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public void The_page_keeps_what_every_page_must(string units)
    {
        string path = scratch.PathOf("season.html"), again = scratch.PathOf("again.html");

        Season(Demo, "--report", path, "--units", units).Exit.Should().Be(0);
        Season(Demo, "--report", again, "--units", units).Exit.Should().Be(0);

        ReportPages page = ReportPages.Read(path);
        page.StandsByItself();
        page.HasUniqueIdsThatAreThere();
        page.ReadsInOrder();
        page.SaysWhatItsChartsShow();
        page.CanBeRead();
        page.FitsAPhoneAndPaper();
        page.Section("What is raised when").Value.Should().Contain("late summer").And.Contain(units == "us" ? " lb" : " kg");
        File.ReadAllBytes(again).Should().Equal(File.ReadAllBytes(path));
        Season(Demo, "--report", Demo).Exit.Should().Be(2);
    }

    [Fact]
    public void The_document_has_the_names_agreed()
    {
        string json = Season(Demo, "--json").Output;
        JsonElement answer = JsonDocument.Parse(json).RootElement;

        JsonElement margin = answer.GetProperty("margin"), batch = answer.GetProperty("batches")[1], limit = answer.GetProperty("bindingLimits")[0];
        double Of(JsonElement node, string name) => node.GetProperty(name).GetDouble();
        Of(margin, "low").Should().BeLessThan(Of(margin, "lowApart"));
        Of(margin, "highApart").Should().BeLessThan(Of(margin, "high"));
        Of(margin, "mean").Should().BeApproximately(
            answer.GetProperty("batches").EnumerateArray().SelectMany(one => one.GetProperty("dates").EnumerateArray()).Where(way => way.GetProperty("chosen").GetBoolean()).Sum(way => Of(way.GetProperty("margin"), "mean")), 1e-5);
        batch.GetProperty("fits").GetBoolean().Should().BeTrue();
        batch.GetProperty("placed").GetString().Should().Be("2027-05-31");
        batch.GetProperty("dates").EnumerateArray().Should().Contain(way => way.GetProperty("bestAlone").GetBoolean() && way.GetProperty("date").GetString() == "2027-08-03");
        batch.GetProperty("freedDays").GetInt32().Should().Be(7);
        limit.GetProperty("limit").GetString().Should().Be("shelters");
        limit.GetProperty("from").GetString().Should().Be("2027-05-02");
        Of(limit, "worth").Should().BeApproximately(Of(batch, "givenUp"), 1e-5);
        answer.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Contain("season-unweighed").And.Contain("inspection-rules");
        answer.GetProperty("sources").GetArrayLength().Should().Be(3);
    }

    [Fact]
    public void Promises_that_do_not_fit_are_no_answer()
    {
        Copy("\"shelters\": 9", "\"shelters\": 4");
        string small = scratch.Write("small.json", "{ \"limits\": { \"shelters\": 4 }, \"batches\": [ { \"batch\": \"meadow-batch.json\", \"shelters\": 5, \"promised\": \"yes\" } ] }");

        ConsoleRun tables = Season(small), json = Season(small, "--json");

        tables.Exit.Should().Be(1);
        tables.Output.Should().StartWith("no-season: the promised batches do not fit together");
        json.Exit.Should().Be(1);
        json.Json.GetProperty("margin").ValueKind.Should().Be(JsonValueKind.Null);
        json.Json.GetProperty("status").GetString().Should().StartWith("no-season");
    }

    [Fact]
    public void What_is_wrong_is_told_in_one_pass_and_nothing_is_drawn()
    {
        Copy("\"outside\": \"20C\"", "\"outside\": \"20\", \"shed\": 1");
        File.WriteAllText(scratch.PathOf("meadow-later.json"), File.ReadAllText(scratch.PathOf("meadow-later.json")).Replace("\"waste\": \"3%\"", "\"waste\": \"3\"", StringComparison.Ordinal));

        ConsoleRun run = Season(scratch.PathOf("meadow-season.json"), "--chart", scratch.PathOf("new.svg"), "--level", "2");

        run.Exit.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().HaveCount(4);
        run.ErrorLines[0].Should().StartWith("--level: ");
        run.ErrorLines[1].Should().StartWith("meadow-season.json:20:").And.Contain("batches[1].outside \"20\" has no unit");
        run.ErrorLines[2].Should().StartWith("meadow-season.json:20:").And.Contain("batches[1].shed is unknown");
        run.ErrorLines[3].Should().StartWith("meadow-later.json:").And.Contain("feed.waste \"3\" has no unit");
        File.Exists(scratch.PathOf("new.svg")).Should().BeFalse();
    }

    private static void TheChartStandsByItself(XElement chart)
    {
        chart.Attribute("viewBox").Should().NotBeNull();
        string[] texts = [.. chart.Descendants().Where(node => node.Name.LocalName is "text" or "desc").Select(node => node.Value)];
        texts.Should().Contain(["spring", "summer", "late summer"]);
        texts.Should().Contain(text => text.Contains("late summer: chicks come 2027-07-14, move out 2027-08-03, killed 2027-09-07, 5 shelters.") && text.Contains("one shelter more"));
    }

    private static ConsoleRun Season(params string[] words) => ConsoleRun.Of(["season", .. words, "--draws", "100"]);

    /// <summary>The demo season with an edit, beside all that it names.</summary>
    private void Copy(string words, string others)
    {
        foreach (string file in Directory.GetFiles(Path.GetDirectoryName(Demo)!))
        {
            File.Copy(file, scratch.PathOf(Path.GetFileName(file)));
        }

        string text = File.ReadAllText(Demo);
        text.Should().Contain(words);
        File.WriteAllText(scratch.PathOf("meadow-season.json"), text.Replace(words, others, StringComparison.Ordinal));
    }
}
