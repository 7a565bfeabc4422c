using System.Text.Json;
using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.ConsoleRuns.MyopathyJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>myopathy risk</c>, <c>inspect</c> and <c>learn</c> print is what the library says.</summary>
public sealed class MyopathyCommandTests : IDisposable
{
    private const string Inspections = "samples/Poultry.Growth.Calculators/data/inspections";

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Risk_has_the_library_s_numbers()
    {
        BatchPrevalence batch = PlanningRisk.Published.For(new() { KillAge = Age.FromDays(56), LiveWeight = Mass.FromKilograms(2.6) });
        LesionLoss loss = LesionLoss.Of(batch, SaleSplit.Of(120, 180), MeatAtRisk.OfLiveWeight(Mass.FromKilograms(2.6)), TrimRecord.SoundBirds);

        JsonElement json = Json("risk", "--birds", "300", "--kill-age", "8wk", "--live", "2.6kg", "--deboned", "40%", "--units", "us");

        Number(json, "meanPercent").Should().Be(Known(batch.Mean.Percent)).And.BeApproximately(0.78, 0.01);
        Number(json, "medianPercent").Should().Be(Known(batch.Median.Percent));
        Number(json, "lowPercent").Should().Be(Known(batch.IntervalAt(0.9).Low!.Value.Percent));
        Number(json, "highPercent").Should().Be(Known(batch.IntervalAt(0.9).High!.Value.Percent));
        json.GetProperty("chanceAbove").EnumerateArray().Select(node => Number(node, "percent")).Should().Equal(1, 5, 10, 25);
        Number(json, "birdsExpected").Should().Be(Known(batch.Among(300).ExpectedBirds));
        Number(json, "lossKg").Should().Be(Known(loss.LostAtPlant.Value.Kilograms));
        Number(json, "hiddenLesions").Should().Be(Known(loss.Hidden!.ExpectedBirds));
        json.GetProperty("factors").GetArrayLength().Should().Be(RiskFactors.All.Count);
        json.GetProperty("assumptions").EnumerateArray().Select(node => Text(node, "code")).Should().Equal("outdoor");
        json.GetProperty("cautions")[0].GetProperty("code").GetString().Should().Be("no-outdoor-data");
    }

    [Fact]
    public void Risk_opens_with_no_outdoor_data_and_a_flock_indoors_does_not()
    {
        string[] words = ["myopathy", "risk", "--birds", "300", "--kill-age", "56d"];

        ConsoleRun.Of(words).Output.Should().StartWith("No outdoor data");
        ConsoleRun.Of([.. words, "--indoor"]).Output.Should().StartWith("Deep pectoral myopathy in a batch of 300 birds").And.NotContain("No outdoor data");
    }

    [Fact]
    public void Assumptions_are_printed_when_asked_for()
    {
        string plain = ConsoleRun.Of("myopathy", "risk", "--birds", "300", "--kill-age", "56d").Output;
        string asked = ConsoleRun.Of("myopathy", "risk", "--birds", "300", "--kill-age", "56d", "--thinned", "--lame", "3%", "--strain", "high").Output;

        plain.Should().NotContain("| thinned 3 to 10 d before |");
        asked.Should().MatchRegex(@"\| thinned 3 to 10 d before +\| +2\.00 \| +1\.00 \| +5\.00 \| assumption").And.Contain("without a denominator");
    }

    [Fact]
    public void Lesions_that_the_farm_s_figure_holds_are_not_taken_off_again()
    {
        string[] words = ["risk", "--birds", "300", "--kill-age", "56d", "--deboned", "--refund", "12", "--change-odds", "0.5"];
        JsonElement contained = Json([.. words, "--trim-contains-lesions"]), sound = Json(words);

        Number(contained, "lossKg").Should().Be(0);
        Number(sound, "lossKg").Should().BeGreaterThan(0);
        Number(sound, "hiddenLesions").Should().Be(0, "--deboned alone means all");
        Number(sound.GetProperty("change"), "batchesToSee").Should().Be(61);
        ConsoleRun.Of(["myopathy", .. words, "--trim-contains-lesions"]).Output.Should().Contain("nothing is taken off again");
    }

    [Fact]
    public void A_factor_without_evidence_gives_the_reason_and_no_number()
    {
        string page = ConsoleRun.Of("myopathy", "risk", "--birds", "300", "--kill-age", "56d", "--factor", "temperature").Output;

        page.Should().Contain("Asked for: temperature\nFor: linked, second hand.\nAgainst: the direction was not told.\nHere: no number: not even the direction is known.");
    }

    [Fact]
    public void The_farm_s_own_record_takes_the_place_of_the_surveys()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(InspectionFile.ReadFolder(Repository.PathOf(Inspections)).Inspections!);

        JsonElement risk = Json("risk", "--birds", "300", "--kill-age", "56d", "--farm", Repository.PathOf(Inspections));
        JsonElement learn = Json("learn", Repository.PathOf(Inspections), "--level", "0.95");

        Number(risk, "meanPercent").Should().Be(Known(farm.NextBatch.Mean.Percent));
        Number(learn.GetProperty("farmRate"), "highPercent").Should().Be(Known(farm.LongRunRate(0.95).Interval.High!.Value.Percent));
        Number(learn.GetProperty("betweenBatches"), "median").Should().Be(Known(farm.BetweenBatchesLogit().Value));
        Number(learn.GetProperty("nextBatch"), "medianPercent").Should().Be(Known(farm.NextBatch.Median.Percent));
        Number(learn, "birdsFound").Should().Be(5);
    }

    [Fact]
    public void Inspect_plans_and_reads_an_inspection()
    {
        JsonElement json = Json("inspect", "--flock", "300", "--prevalence", "2%", "--confidence", "95%", "--opened", "100", "--found", "3", "--level", "0.95");
        FoundShare share = FoundShare.Of(3, 100, 0.95);

        Number(json, "birdsToOpen").Should().Be(BirdsToOpen.ToFind(BirdPrevalence.FromPercent(2), 0.95, 300).Birds);
        JsonElement rate = json.GetProperty("rate");
        Number(rate, "estimate").Should().Be(0.03);
        Number(rate.GetProperty("wilson"), "low").Should().Be(Known(share.Wilson.Low!.Value.Share.Fraction));
        Number(rate.GetProperty("clopperPearson"), "high").Should().Be(Known(share.ClopperPearson.High!.Value.Share.Fraction));
        Number(rate.GetProperty("jeffreys"), "low").Should().Be(Known(share.Jeffreys.Low!.Value.Share.Fraction));
        Number(json.GetProperty("posterior"), "meanPercent").Should().Be(Known(
            PlanningRisk.Published.For(new() { KillAge = Age.FromDays(49) }).After(LesionInspection.Of(100, 3)).Mean.Percent));
    }

    [Fact]
    public void Not_attainable_has_a_reason_and_exit_1()
    {
        string[] words = ["myopathy", "inspect", "--flock", "100", "--prevalence", "1%", "--confidence", "0.95", "--detection", "80%"];
        ConsoleRun run = ConsoleRun.Of([.. words, "--json"]);

        run.Exit.Should().Be(1);
        run.Json.GetProperty("birdsToOpen").ValueKind.Should().Be(JsonValueKind.Null);
        Text(run.Json, "reason").Should().Be("with all 100 birds opened the chance of finding nothing is still 20 %");
        ConsoleRun.Of(words).Output.Should().StartWith("No number of birds is enough");
    }

    [Fact]
    public void Shares_and_birds_above_ten_are_written_out()
    {
        ConsoleRun.Of("myopathy", "inspect", "--prevalence", "100%", "--detection", "50%", "--correlation", "0.1").Output
            .Should().StartWith("Birds to open to find lesions of 100 % of birds with a chance of 95.0 %: 5\n");
        ConsoleRun.Of("myopathy", "inspect", "--opened", "20", "--found", "20").Output.Should().Contain("20 of 20 birds, 100 % (");
    }

    [Theory]
    [InlineData("--live: \"1g\" is out of range; expected 10g to 20kg", "risk", "--birds", "300", "--kill-age", "56d", "--live", "1g")]
    [InlineData("--found: \"1.5\" is not a number of birds; expected a whole number of 0 or more", "inspect", "--opened", "10", "--found", "1.5")]
    public void What_no_flock_has_is_refused(string message, params string[] words) =>
        ConsoleRun.Of(["myopathy", .. words]).Should().Be(new ConsoleRun(2, "", message + "\n"));

    [Theory]
    [InlineData("risk", "--birds", "300", "--kill-age", "56d")]
    [InlineData("inspect", "--prevalence", "1%")]
    [InlineData("learn", Inspections)]
    [InlineData("date", "--found", "II=3", "--killed", "2027-06-06", "--hatched", "2027-04-11", "--sex", "male")]
    public void A_chart_says_in_words_what_it_shows(params string[] words)
    {
        string chart = scratch.PathOf("c.svg");

        ConsoleRun run = ConsoleRun.Of(["myopathy", .. ConsoleRun.FromRoot(words), "--chart", chart]);

        run.Exit.Should().Be(0, run.Errors);
        File.ReadAllText(chart).Should().StartWith("<svg").And.Contain("<desc").And.MatchRegex(@"\d+\.\d %");
    }

    [Theory]
    [InlineData("risk")]
    [InlineData("events")]
    [InlineData("date")]
    [InlineData("inspect")]
    [InlineData("learn")]
    public void Help_ends_with_an_example_that_works(string name)
    {
        string example = ConsoleRun.Of("myopathy", name, "--help").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)[^1];
        string[] words = [.. example.Split(" -- ")[1].Split(' ')];

        words.Take(2).Should().Equal("myopathy", name);
        ConsoleRun run = ConsoleRun.Of([.. ConsoleRun.FromRoot(words)]);
        run.Exit.Should().Be(0, run.Errors);
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once()
    {
        string folder = scratch.PathOf("past");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "a.csv"), "birds_opened,birds_found\n10,12\n");

        ConsoleRun run = ConsoleRun.Of("myopathy", "risk", "--birds", "0", "--kill-age", "56", "--farm", folder, "--strain", "x", "--deboned", "140%", "--change-odds", "0,5");

        run.Exit.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().HaveCount(6).And.Contain(line => line.StartsWith("a.csv:2:4: birds_found \"12\" is more than were opened"));
    }
}
