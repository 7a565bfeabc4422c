using System.Text.Json;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>feed</c>: the demo batch, a batch in words, and what is refused.</summary>
public sealed class FeedCommandTests : IDisposable
{
    private static readonly string Demo = Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-batch.json");

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_demo_is_what_the_library_says()
    {
        BatchFileReading batch = BatchFile.Read(Demo);
        Projection projection = Projection.Of(batch.Weights!.WeighIns!.Series!, batch.Weights.Prior!);
        FeedForecast forecast = FeedForecast.For(
            projection.Curve,
            batch.Flock!.HeadCount,
            batch.Feeding!.Plan,
            batch.Feeding.Conditions,
            Age.FromDays(56),
            new() { Record = batch.Feeding.Record, Curves = projection.Draws(1, [.. FeedForecast.AgesFor(batch.Flock.HeadCount, Age.FromDays(56))]) });

        JsonElement json = Json(Demo);

        JsonElement[] days = [.. json.GetProperty("byDay").EnumerateArray()];
        days.Should().HaveCount(55);
        Number(days[^1], "feedG").Should().Be(ConsoleRun.Known(forecast.Total.Feed.Value.Grams));
        Number(days[^1], "cumulativeFeedG").Should().Be(ConsoleRun.Known(forecast.Total.CumulativeFeed.Value.Grams));
        Number(days[^1], "feedConversion").Should().Be(ConsoleRun.Known(forecast.Total.Conversion.Ratio));
        Number(days[^1], "energyKcal").Should().BeApproximately(Calories.PerDay(forecast.Total.Energy), 1e-4);
        Number(json, "farmFactor").Should().Be(ConsoleRun.Known(forecast.FarmFactor!.Ratio));
        Number(json, "expectedToDateKg").Should().Be(ConsoleRun.Known(forecast.FarmFactor.Expected.Kilograms));
        Number(json.GetProperty("totals"), "feedKg").Should().Be(ConsoleRun.Known(forecast.Total.BatchFeed.Value.Kilograms));
        Number(json.GetProperty("totals"), "cost").Should().BeApproximately(forecast.Cost!.Value.Amount, 1e-5);
        Number(json.GetProperty("totals"), "costLow").Should().BeApproximately(forecast.CostInterval!.Low!.Value.Amount, 1e-5);
        Number(json.GetProperty("totals"), "costHigh").Should().BeApproximately(forecast.CostInterval.High!.Value.Amount, 1e-5);
        JsonElement starter = json.GetProperty("phases")[0];
        starter.GetProperty("name").GetString().Should().Be("starter");
        starter.GetProperty("bags").GetInt32().Should().Be(forecast.Phases[0].Bags);
        starter.GetProperty("buyBy").GetString().Should().Be("2027-04-05", "a week before the chicks come");
    }

    [Fact]
    public void The_seed_draws_the_range_and_not_the_estimate()
    {
        JsonElement first = Json(Demo).GetProperty("totals"), second = Json(Demo, "--seed", "2").GetProperty("totals");

        Json(Demo, "--seed", "1").GetProperty("totals").GetRawText().Should().Be(first.GetRawText());
        Number(second, "feedLowKg").Should().NotBe(Number(first, "feedLowKg"));
        Number(second, "feedKg").Should().Be(Number(first, "feedKg"));
    }

    [Fact]
    public void A_batch_in_words_follows_a_table()
    {
        JsonElement json = Json("--curve", ConsoleRun.Standard, "--birds", "200", "--move-out", "21d", "--temp", "10C", "--diet", "3000kcal/kg", "--until", "49d", "--at", "35d");
        JsonElement warm = Json("--curve", ConsoleRun.Standard, "--birds", "200", "--move-out", "21d", "--temp", "20C", "--diet", "3000kcal/kg", "--until", "49d", "--at", "35d");

        Number(json, "expectedToDateKg").Should().BeInRange(400, 700);
        Number(json.GetProperty("totals"), "feedKg").Should().BeGreaterThan(1.03 * Number(warm.GetProperty("totals"), "feedKg"));
        json.GetProperty("farmFactor").ValueKind.Should().Be(JsonValueKind.Null);
        Codes(json).Should().Contain("curve-taken-as-right").And.NotContain("standard-house");
        Codes(Json("--birds", "200")).Should().Contain(["standard-house", "no-weigh-ins", "diet-assumed"]);
        Codes(Json("--type", "slow", "--until", "84d")).Should().Contain("slow-birds-uncertain");
    }

    [Fact]
    public void Pounds_and_kilograms_are_never_mixed_and_a_chart_is_drawn()
    {
        string chart = scratch.PathOf("feed.svg");
        string output = ConsoleRun.Of("feed", Demo, "--units", "us", "--chart", chart).Output.Split("\nCautions\n")[0];

        output.Should().Contain("lb").And.NotMatchRegex(@"\bkg\b").And.NotMatchRegex(@"\d g\b");
        File.ReadAllText(chart).Should().StartWith("<svg").And.Contain("feed of the batch so far, lb");
    }

    [Theory]
    [InlineData("--until: is out of range", "--until", "200d")]
    [InlineData("--until: lies beyond the projection, which ends at 120 d; expected an age up to that", "--age-at-placement", "10d", "--until", "125d")]
    [InlineData("--temp: is missing", "--move-out", "21d")]
    [InlineData("--at: is out of range", "--at", "60d")]
    [InlineData("the table of weights covers", "--curve", ConsoleRun.StandardFromRoot, "--until", "100d")]
    [InlineData("--model: \"best\" is unknown", "--model", "best")]
    public void Words_that_cannot_be_answered_are_refused(string problem, params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["feed", .. ConsoleRun.FromRoot(words)]);

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().ContainSingle(line => line.StartsWith(problem));
    }

    [Fact]
    public void Every_wrong_word_is_told_the_day_of_placement_too() => ConsoleRun.Of("feed", "--placed", "yesterday", "--birds", "x").ErrorLines.Should().HaveCount(2);

    [Fact]
    public void Options_that_the_file_says_itself_are_refused_beside_it() =>
        ConsoleRun.Of("feed", Demo, "--birds", "20").ErrorLines.Should().Equal("--birds: is said by the file; expected it there");

    [Fact]
    public void A_broken_file_is_told_in_one_pass_with_places()
    {
        string file = scratch.Write("b.json", "{\n  \"placed\": \"12.4.2027\",\n  \"birds\": \"300\",\n  \"colour\": \"white\",\n  \"temperatures\": { \"outside\": \"14\" },\n  \"feed\": { \"phases\": [ { \"name\": \"starter\", \"from\": \"0d\", \"energy\": 3000 } ] }\n}\n");

        ConsoleRun run = ConsoleRun.Of("feed", file);

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().Equal(
            "b.json:1:1: ageAtPlacement is missing; expected the age of the chicks when placed, up to 14d: chicks by mail are 1d to 3d old",
            "b.json:2:13: placed \"12.4.2027\" is not a date; expected year, month and day, as in 2027-04-12",
            "b.json:3:12: birds \"300\" is text; expected a whole number without quotes, 1 to 1000000",
            "b.json:4:3: colour is unknown; expected name, strain, system, placed, ageAtPlacement, birds, chicksLostInTransit, sex, type, hatchWeight, until, lossByWeek, deaths, weights, temperatures, feed, history, plant, selling, costs, shelters",
            "b.json:5:19: temperatures says how warm it is outside and not when the birds go there; expected { \"moveOut\": \"21d\", \"outside\": \"14C\" } for birds outdoors, or { \"house\": \"standard\" }",
            "b.json:6:70: feed.phases[0].energy \"3000\" has no unit; expected the energy of a feed with kcal/kg, kcal/lb or MJ/kg, as in 3100kcal/kg");
    }

    private static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["feed", "--json", .. words]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }

    private static IEnumerable<string?> Codes(JsonElement json) => json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString());

    private static double Number(JsonElement node, string key) => node.GetProperty(key).GetDouble();
}
