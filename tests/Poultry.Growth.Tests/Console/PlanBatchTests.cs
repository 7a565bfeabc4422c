using Poultry.Growth.Calculators.Planning;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>plan</c> of other batches than the demo: what it says of them, and what it refuses.</summary>
public sealed class PlanBatchTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Everything_wrong_is_told_in_one_pass()
    {
        string broken = scratch.Write(
            "broken.json",
            """
            { "placed": "2027-04-12", "ageAtPlacement": "1d", "birds": 300, "temperatures": { "house": "standard" },
              "plant": {
                "deadOnArrival": ["1%", "0.5%", "2%"], "condemned": "70%", "dressing": "72",
                "dates": [ { "date": "2027-06-08", "changeUntil": "2027-06-09", "fewestBirds": 300, "mostBirds": 200 }, { "date": "2027-04-20" } ] } }
            """);

        ConsoleRun run = ConsoleRun.Of("plan", broken, "--split", "3%,40", "--draws", "5", "--units", "stone");

        run.Exit.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().HaveCount(11);
        run.Errors.Should().Contain("--split: \"3%\" is out of range; expected 5% to 95%").And.Contain("--split: \"40\" has no unit")
            .And.Contain("--draws: \"5\" is out of range").And.Contain("--units: \"stone\" is unknown")
            .And.Contain("broken.json:3:22: plant.deadOnArrival").And.Contain("is not in order").And.Contain("plant.condemned").And.Contain("plant.dressing")
            .And.Contain("may be changed after the day itself").And.Contain("takes fewer birds than it opens for").And.Contain("lies less than 15 days after the chicks come")
            .And.Contain("says nothing about what sells");
    }

    [Fact]
    public void What_says_too_little_or_makes_no_sense_is_refused()
    {
        string least = scratch.Write("least.json", "{ \"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"house\": \"standard\" } }");

        ConsoleRun.Of("plan", least).Should().Be(new ConsoleRun(2, "", "least.json: says too little for a plan; expected sections plant and selling: days offered, dressing, packs and prices\n"));
        ConsoleRun.Of("plan").Errors.Should().Be("FILE: is missing, and this folder holds no batch.json; expected a batch file, as poultry-growth new FOLDER makes one\n");
        ConsoleRun.Of("plan", scratch.PathOf("none.json")).Errors.Should().Contain("none.json");
        ConsoleRun.Of("plan", Repository.PathOf(PlanCommand.Demo), "--split-birds", "caught").Errors.Should().Be("--split-birds: says nothing without --split; expected --split with a share, as in 40%\n");
    }

    [Fact]
    public void Sizes_that_the_plant_refuses_and_chicks_that_come_dead_are_told()
    {
        string batch = scratch.Batch(text => text
            .Replace("\"perBird\": 5.25,", "\"perBird\": 5.25, \"lightestBird\": \"2.2kg\", \"heaviestBird\": \"8lb\", \"cutsLow\": \"60%\", \"cutsHigh\": \"130%\",", StringComparison.Ordinal)
            .Replace("\"birds\": 300,", "\"birds\": 300, \"chicksLostInTransit\": \"3%\",", StringComparison.Ordinal));
        string output = ConsoleRun.Of("plan", batch, "--draws", "100").Output;

        output.Should().MatchRegex("About [0-9.]+ % of the birds are lighter or heavier than the plant takes").And.Contain("chicks ordered, of which about 3 % come dead, are enough").And.MatchRegex("The doubt comes from: .*cuts \\(");
    }

    [Fact]
    public void A_day_by_itself_is_planned_without_comparison()
    {
        string text = File.ReadAllText(Repository.PathOf(PlanCommand.Demo));
        int first = text.IndexOf("{ \"date\": \"2027-06-01\"", StringComparison.Ordinal), second = text.IndexOf("{ \"date\": \"2027-06-08\"", StringComparison.Ordinal);
        int third = text.IndexOf("{ \"date\": \"2027-06-15\"", StringComparison.Ordinal), end = text.IndexOf('}', third) + 2;
        string one = scratch.Batch(_ => text[..first] + text[second..third] + text[end..]);
        ConsoleRun run = ConsoleRun.Of("plan", one, "--draws", "200", "--every-day", "--split", "any");

        run.Exit.Should().Be(0, run.Errors);
        run.Output.Should().Contain("No other day is offered.").And.NotContain("Chance that the day").And.NotContain("Split over").And.NotContain("Weighing 30 birds");
    }

    [Fact]
    public void A_day_beyond_the_end_of_projected_growth_is_refused_where_it_stands()
    {
        ConsoleRun Offered(string last) => ConsoleRun.Of("plan", scratch.Batch(text => text.Replace("2027-06-15", last, StringComparison.Ordinal)), "--draws", "100");

        Offered("2027-08-08").Exit.Should().Be(0, "the birds are 119 d old");
        Offered("2027-08-09").Should().Be(new ConsoleRun(
            2, "", "batch.json:28:7: plant.dates[2] lies beyond an age of 119 d, where projected growth ends; expected an earlier day\n"));
    }
}
