using System.Text.Json;
using System.Xml.Linq;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>plan</c> prints is what the library says.</summary>
public sealed class PlanCommandTests : IDisposable
{
    private const string FromRoot = "samples/Poultry.Growth.Calculators/data/meadow-batch.json";
    private const int Draws = 300;

    private static readonly string Demo = Repository.PathOf(FromRoot);
    private static readonly string[] Plan = ["plan", Demo, "--draws", "300"];

    private static readonly HarvestComparison Expected = HarvestComparison.Of(BatchFile.Read(Demo).Plan!, new() { Draws = Draws });
    private static readonly JsonElement All = Json("--every-day", "--split", "30%,60%");

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_days_have_the_library_s_numbers_each_with_low_and_high()
    {
        JsonElement[] options = [.. All.GetProperty("options").EnumerateArray()];

        options.Should().HaveCount(3);
        foreach ((JsonElement node, HarvestOption option) in options.Zip(Expected.Options))
        {
            Text(node, "date").Should().Be(option.Date.ToString());
            Number(node, "ageDays").Should().Be(option.Age.Days);
            Three(node, "head").Should().Be(Known(option.Head, birds => birds));
            Three(node, "meanKg").Should().Be(Known(option.MeanWeight, weight => weight.Kilograms));
            Three(node, "shareInBandPercent").Should().Be(Known(option.ShareWanted!, share => share.Percent));
            Three(node, "feedKg").Should().Be(Known(option.Feed, weight => weight.Kilograms));
            Three(node, "soldKg").Should().Be(Known(option.Sold, weight => weight.Kilograms));
            Three(node, "revenue").Should().Be(Known(option.Revenue, money => money.Amount));
            Three(node, "cost").Should().Be(Known(option.Cost, money => money.Amount));
            Three(node, "margin").Should().Be(Known(option.Margin, money => money.Amount));
            Three(node, "marginPerBird").Should().Be(Known(option.MarginPerBird, money => money.Amount));
            Three(node, "marginPerKg").Should().Be(Known(option.MarginPerKilogram!, money => money.Amount));
            Three(node, "marginPerShelterDay").Should().Be(Known(option.MarginPerShelterDay, money => money.Amount));
            Three(node, "myopathyLossKg").Should().Be(Known(option.LesionLoss, weight => weight.Kilograms));
            Three(node, "deadOnArrival").Should().Be(Known(option.DeadOnArrival, birds => birds));
            Three(node, "condemned").Should().Be(Known(option.Condemned, birds => birds));
            node.GetProperty("packs").EnumerateArray().Select(pack => (Text(pack, "piece"), Three(pack, "sold"), Three(pack, "left"))).Should().Equal(
                option.Packs.Select(pack => ((string?)pack.Offer.Piece, Known(pack.Sold, packs => packs), Known(pack.Left, packs => packs))));
            Number(node, "densityMetPercent").Should().Be(ConsoleRun.Known(option.ChanceDensityMet!.Value.Percent));
            Number(node, "marginWorstTenth").Should().Be(ConsoleRun.Known(option.BadCase.Amount));
            Text(node, "decideBy").Should().Be(option.DecideBy.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void The_decision_its_doubt_and_what_would_change_it_are_the_library_s()
    {
        Number(All, "chicks").Should().Be(300);
        Text(All, "recommendation").Should().Be(Expected.Recommendation);
        Text(All, "recommendedDate").Should().Be(Expected.Recommended.Date.ToString());
        All.GetProperty("chanceBeats").EnumerateArray().Select(pair => Number(pair, "percent")).Should().Equal(
            ConsoleRun.Known(Expected.ChanceBeats(0, 1).Percent), ConsoleRun.Known(Expected.ChanceBeats(0, 2).Percent), ConsoleRun.Known(Expected.ChanceBeats(1, 0).Percent),
            ConsoleRun.Known(Expected.ChanceBeats(1, 2).Percent), ConsoleRun.Known(Expected.ChanceBeats(2, 0).Percent), ConsoleRun.Known(Expected.ChanceBeats(2, 1).Percent));
        JsonElement price = All.GetProperty("breakEvenPrice");
        Number(price, "perKg").Should().Be(ConsoleRun.Known(Expected.Recommended.BreakEvenPrice!.Value.AmountPerKilogram)).And.BeInRange(Number(price, "lowPerKg")!.Value, Number(price, "highPerKg")!.Value);
        Three(All, "marginalDay").Should().Be(Known(Expected.MarginalDay, money => money.Amount));
        Number(All.GetProperty("weighInValue"), "ageDays").Should().Be(43, "the day before the first deadline");
        Number(All.GetProperty("weighInValue"), "worth").Should().BeGreaterThanOrEqualTo(0);
        JsonElement[] drivers = [.. All.GetProperty("spreadDrivers").EnumerateArray()];
        drivers.Select(driver => Text(driver, "name")).Should().OnlyHaveUniqueItems().And.Contain(["growth", "birds alive", "prices", "demand for breast"]);
        All.GetProperty("timeline").EnumerateArray().Select(entry => Text(entry, "what")).Should().Contain(["Book the plant", "Place the chicks", "Feed off, water stays on", "Collect the packs"]);
    }

    [Fact]
    public void Every_day_and_splits_stand_beside_the_days_offered()
    {
        CalendarCost calendar = Expected.EveryDay();
        JsonElement[] days = [.. All.GetProperty("everyDay").EnumerateArray()];
        days.Select(day => Text(day, "date")).Should().Equal(calendar.Days.Select(day => day.Date.ToString())).And.HaveCount(15);
        days.Select(day => Three(day, "margin")).Should().Equal(calendar.Days.Select(day => Known(day.Margin, money => money.Amount)));
        Text(All.GetProperty("calendarCost"), "bestDate").Should().Be(calendar.Best.Date.ToString());
        Three(All.GetProperty("calendarCost"), "cost").Should().Be(Known(calendar.Cost, money => money.Amount));

        IReadOnlyList<HarvestSplit> splits = Expected.Split(FirstBirds.Largest, [Probability.FromPercent(30), Probability.FromPercent(60)]);
        JsonElement[] nodes = [.. All.GetProperty("splits").EnumerateArray()];
        nodes.Select(node => (Text(node, "firstDate"), Text(node, "secondDate"), Number(node, "firstSharePercent"), Text(node, "firstBirds"))).Should().Equal(
            splits.Select(split => ((string?)split.First.ToString(), (string?)split.Second.ToString(), ConsoleRun.Known(split.Share.Percent), (string?)"largest"))).And.HaveCount(6);
        nodes.Select(node => Three(node, "margin")).Should().Equal(splits.Select(split => Known(split.Margin, money => money.Amount)));
        nodes.Select(node => Three(node, "gain")).Should().Equal(splits.Select(split => Known(split.Gain, money => money.Amount)));
        FitJson.Codes(All).Should().Contain("repeat-catching");

        JsonElement plain = Json();
        plain.GetProperty("everyDay").GetArrayLength().Should().Be(0);
        plain.GetProperty("calendarCost").ValueKind.Should().Be(JsonValueKind.Null);
        plain.GetProperty("splits").GetArrayLength().Should().Be(0);
        FitJson.Codes(plain).Should().NotContain("repeat-catching");
    }

    [Fact]
    public void Cautions_and_sources_are_told()
    {
        FitJson.Codes(All).Should().Contain(
            ["large-loss-assumed", "inspection-rules", "feed-label-withdrawal", "catch-calmly", "catch-in-the-cool", "cold-chain", "road-loss-elsewhere", "floor-too-small"]).And.OnlyHaveUniqueItems();
        All.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key")).Should().Contain(["ERS246", "Vieira", "NassSlaughter", "Chou2004"]).And.OnlyHaveUniqueItems();
        All.GetProperty("sources").EnumerateArray().Select(source => Text(source, "howKnown")).Should().NotContain("memory");
    }

    [Fact]
    public void Tables_come_first_then_cautions_then_sources_and_the_decision_comes_before_all()
    {
        string output = ConsoleRun.Of([.. Plan, "--every-day", "--split", "any"]).Output;

        int[] places =
        [
            .. new[] { "Plan of Meadow 3", "Kill on ", "Days offered (", "Chance that the day", "Split over two days", "Packs of 2027-06-08", "What would change it", "its calendar costs", "What to do when", "\nCautions\n", "\nSources\n" }
                .Select(part => output.IndexOf(part, StringComparison.Ordinal)),
        ];
        places.Should().BeInAscendingOrder().And.NotContain(-1);
        output.Split('\n').Count(line => line.StartsWith("| 2027-06-01 | 2027-06-08", StringComparison.Ordinal)).Should().Be(1, "of each pair of days the best share is shown");
    }

    [Fact]
    public void Pounds_and_kilograms_are_not_mixed_and_json_is_metric()
    {
        string pounds = ConsoleRun.Of([.. Plan, "--units", "us", "--split", "40%"]).Output;

        pounds.Split("\nWhat would change it")[0].Should().Contain("mean lb").And.NotMatchRegex(@"\bkg\b");
        ConsoleRun.Of([.. Plan, "--json", "--units", "us"]).Output.Should().Be(ConsoleRun.Of([.. Plan, "--json"]).Output);
    }

    [Fact]
    public void Seed_level_and_draws_are_heard()
    {
        Json("--seed", "1").GetRawText().Should().Be(Json().GetRawText());
        Json("--seed", "2").GetRawText().Should().NotBe(Json().GetRawText());
        JsonElement wide = Json("--level", "0.99");
        Number(wide, "level").Should().Be(0.99);
        Number(wide.GetProperty("marginalDay"), "low").Should().BeLessThan(Number(All.GetProperty("marginalDay"), "low")!.Value);
    }

    [Fact]
    public void Calendar_and_chart_are_written_and_replace_nothing_else()
    {
        string mine = scratch.Write("mine.ics", "not a calendar");

        ConsoleRun.Of([.. Plan, "--ics", scratch.PathOf("plan.ics"), "--chart", scratch.PathOf("plan.svg")]).Exit.Should().Be(0);
        ConsoleRun.Of([.. Plan, "--ics", scratch.PathOf("plan.ics")]).Exit.Should().Be(0, "an earlier calendar is replaced");
        ConsoleRun refused = ConsoleRun.Of([.. Plan, "--ics", mine]);

        File.ReadAllText(scratch.PathOf("plan.ics")).Should().StartWith("BEGIN:VCALENDAR\r\n").And.Contain("SUMMARY:Meadow 3: Feed off\\, water stays on").And.EndWith("END:VCALENDAR\r\n");
        XDocument.Parse(File.ReadAllText(scratch.PathOf("plan.svg"))).Root!.Elements().ElementAt(1).Value.Should().Contain(Expected.Recommendation);
        refused.Should().Be(new ConsoleRun(2, "", "--ics: \"" + mine + "\" exists and is no calendar; expected a new name or an earlier calendar\n"));
        scratch.Names().Should().Equal("mine.ics", "plan.ics", "plan.svg");
    }

    private static JsonElement Json(params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of([.. Plan, "--json", .. options]);
        run.Errors.Should().BeEmpty();
        run.Exit.Should().Be(0);
        return run.Json;
    }

    private static (double?, double?, double?) Three(JsonElement node, string key)
    {
        JsonElement outcome = node.GetProperty(key);
        return (Number(outcome, "mean"), Number(outcome, "low"), Number(outcome, "high"));
    }

    private static (double?, double?, double?) Known<T>(Evidence.Estimate<T> estimate, Func<T, double> number)
        where T : struct, IComparable<T> =>
        (ConsoleRun.Known(number(estimate.Value)), ConsoleRun.Known(number(estimate.Interval.Low!.Value)), ConsoleRun.Known(number(estimate.Interval.High!.Value)));

    private static double? Number(JsonElement node, string key) => FitJson.Number(node, key);

    private static string? Text(JsonElement node, string key) => FitJson.Text(node, key);
}
