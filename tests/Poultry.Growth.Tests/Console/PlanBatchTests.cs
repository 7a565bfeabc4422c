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
    public void Birds_that_lost_weight_have_a_plan_that_says_what_looks_wrong()
    {
        scratch.Write("sick.csv", "age_d,mean_weight_g,birds\n14,390,200\n21,720,200\n28,640,200\n");

        string file = scratch.Batch(text => text.Replace("meadow-batch.csv", "sick.csv", StringComparison.Ordinal)), page = scratch.PathOf("plan.html");
        ConsoleRun run = ConsoleRun.Of("plan", file, "--draws", "100", "--report", page);

        const string Wrong = "sick.csv:4: The birds at 28 d, 640 g (22.58 oz) on average, do not go with the other ages";
        run.Exit.Should().Be(0);
        run.Output.Should().Contain("Looks wrong\n? " + Wrong);
        File.ReadAllText(page).Should().Contain(Wrong);
        ConsoleRun.Of("plan", file, "--draws", "100", "--json").Json.GetProperty("flagged")[0].GetProperty("lines")[0].GetInt32().Should().Be(4);
        ConsoleRun.Of("feed", file).Output.Should().Contain("? " + Wrong);
        ConsoleRun.Of("feed", file, "--json").Json.GetProperty("flagged").GetArrayLength().Should().Be(1);
    }

    [Fact]
    public void Whatever_reads_weigh_ins_says_what_looks_wrong_in_them()
    {
        string batch = scratch.Batch(text => text), weighIns = scratch.PathOf("meadow-batch.csv"), page = scratch.PathOf("season.html");
        string season = scratch.Write("season.json", """{ "batches": [ { "batch": "batch.json" } ] }""");
        File.WriteAllText(weighIns, File.ReadAllText(weighIns).Replace("2027-05-09,2:11,", "2027-05-09,5:11,", StringComparison.Ordinal));
        string[][] commands =
        [
            ["space", weighIns, "--area", "18m2", "--birds", "190"],
            ["reconcile", batch, scratch.PathOf("meadow-plant.csv"), "--draws", "100"],
            ["season", season, "--draws", "100", "--report", page],
        ];

        const string Wrong = "meadow-batch.csv:29: ";
        foreach (string[] command in commands)
        {
            ConsoleRun.Of(command).Output.Should().Contain("Looks wrong\n? " + Wrong);
            ConsoleRun.Of([.. command, "--json"]).Json.GetProperty("flagged")[0].GetProperty("lines")[0].GetInt32().Should().Be(29);
        }

        File.ReadAllText(page).Should().Contain(Wrong);
    }

    [Theory]
    [InlineData("14,39000,20\n21,72000,20\n", "weights between 12.5 g (0.44 oz) and 10 kg (22.05 lb), for which feed is known, and not the weights that are projected: A bird of 23.833 kg (52.54 lb) at 7 d is not allowed\n")]
    [InlineData("7,1,30\n14,100000,30\n15,1,30\n56,100000,30\n", "*, and not the weights that are projected: *\n")]
    public void Weights_of_no_birds_are_told_as_what_is_wrong_with_the_file(string rows, string expected)
    {
        scratch.Write("odd.csv", "age_d,mean_weight_g,birds\n" + rows);

        ConsoleRun run = ConsoleRun.Of("plan", scratch.Batch(text => text.Replace("meadow-batch.csv", "odd.csv", StringComparison.Ordinal)), "--draws", "100");

        run.Exit.Should().Be(2, run.Errors);
        run.Errors.Should().Match("batch.json: says too little for a plan; expected " + expected);
    }

    [Fact]
    public void A_record_of_feed_after_the_last_day_is_known_feed()
    {
        scratch.Write("late.csv", "age_d,delivered_kg,left_kg\n1,3000,\n80,200,100\n");

        string file = scratch.Batch(text => text.Replace("meadow-feed.csv", "late.csv", StringComparison.Ordinal).Replace("\"until\": \"56d\"", "\"until\": \"90d\"", StringComparison.Ordinal));
        ConsoleRun.Of("plan", file, "--draws", "100").Exit.Should().Be(0);

        string without = scratch.Batch(text => text.Replace("meadow-feed.csv", "late.csv", StringComparison.Ordinal).Replace("\"until\": \"56d\",", "", StringComparison.Ordinal));
        ConsoleRun.Of("plan", without, "--draws", "100").Exit.Should().Be(0);
        scratch.Write("late.csv", "age_d,delivered_kg,left_kg\n1,3000,\n125,200,100\n");
        ConsoleRun.Of("plan", without, "--draws", "100").Errors.Should().Contain("names a record of 125 d, which lies outside the batch; expected a day after placement to the age until, or to 119 d where the file states none");
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
