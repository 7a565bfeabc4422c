using System.Text.Json;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>water</c>, <c>withdrawal</c>, <c>heat</c> and <c>figures</c> against figures worked by hand.</summary>
public class FeedRoomCommandTests
{
    [Fact]
    public void Water_by_every_source()
    {
        JsonElement json = Json("water", "--age", "42d", "--feed", "170g/d", "--temp", "31C", "--birds", "300");

        JsonElement[] models = [.. json.GetProperty("byModel").EnumerateArray()];
        models.Select(model => model.GetProperty("model").GetString()).Should().Equal(
            "water-by-age", "water-by-week", "water-by-feed-seven-percent-of-base", "water-by-feed-seven-percent-compounded", "water-by-feed-forty-percent-at32");
        Number(models[0], "gPerBirdPerDay").Should().BeApproximately(221.8, 0.05);
        Number(models[0], "litresPerDay").Should().BeApproximately(0.3 * 221.76, 1e-3);
        Number(models[1], "litresPerDay").Should().BeApproximately(99, 1e-9);
        Number(models[2], "gPerBirdPerDay").Should().BeApproximately(1.77 * 170 * 1.7, 1e-4);
        Number(json, "nippleMlPerMinute").Should().BeApproximately(62, 1e-9);
        Json("water", "--feed", "170g/d").GetProperty("nippleMlPerMinute").ValueKind.Should().Be(JsonValueKind.Null);
        ConsoleRun.Of("water").ErrorLines.Should().Equal("--age or --feed: is missing; expected one of them, or both");
        ConsoleRun.Of("water", "--age", "42d", "--birds", "300", "--units", "us").Output.Should().Contain("gal a day").And.Contain("17.6");
    }

    [Fact]
    public void Withdrawal_with_the_road_inside_its_hours()
    {
        JsonElement home = Json("withdrawal", "--weight", "2.5kg", "--off-feed", "12h"), away = Json("withdrawal", "--weight", "2.5kg", "--off-feed", "12h", "--road", "6h");

        Number(home, "liveWeightKg").Should().BeApproximately(2.410, 0.0005);
        Number(home, "shrinkPercent").Should().BeApproximately(3.6, 1e-9);
        Number(home, "lowPercent").Should().BeApproximately(2.4, 1e-9);
        Number(home, "highPercent").Should().BeApproximately(4.8, 1e-9);
        Number(away, "shrinkPercent").Should().BeApproximately(3.6 + (6 * 0.11), 1e-9);
        ConsoleRun.Of("withdrawal", "--weight", "2.5kg", "--off-feed", "3h", "--road", "4h").ErrorLines.Should().ContainSingle(line => line.StartsWith("--road: is longer"));
        ConsoleRun.Of("withdrawal", "--weight", "2.5kg", "--off-feed", "14").ErrorLines.Should().ContainSingle(line => line.StartsWith("--off-feed: \"14\" has no unit"));
    }

    [Fact]
    public void Heat_has_indices_and_no_class()
    {
        JsonElement json = Json("heat", "--dry-bulb", "35C", "--wet-bulb", "25C", "--wind", "0.7m/s", "--weight", "3.5kg", "--age", "49d");

        Number(json, "thi").Should().BeApproximately(33.5, 1e-9);
        Number(json, "thvi").Should().BeApproximately(34.20, 0.005);
        Number(json, "heatW").Should().BeGreaterThan(0);
        Number(json, "moistureGPerHour").Should().BeGreaterThan(0);
        json.EnumerateObject().Select(member => member.Name).Should().NotContain(["class", "state", "verdict"]);
        json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Contain(["heavy-birds-in-heat", "birds-decide"]);
        JsonElement mild = Json("heat", "--dry-bulb", "27C", "--humidity", "80%", "--wind", "0.7m/s");
        Number(mild, "thi").Should().BeApproximately(26.59, 0.005);
        mild.GetProperty("thvi").ValueKind.Should().Be(JsonValueKind.Null, "it was measured at 35 to 41 °C");
        mild.GetProperty("heatW").ValueKind.Should().Be(JsonValueKind.Null, "no weight was given");
        ConsoleRun.Of("heat", "--dry-bulb", "27C").ErrorLines.Should().ContainSingle(line => line.StartsWith("--wet-bulb or --humidity"));
        ConsoleRun.Of("heat", "--dry-bulb", "27C", "--wet-bulb", "28C").ErrorLines.Should().ContainSingle(line => line.Contains("no warmer than the air"));
    }

    [Fact]
    public void Figures_by_their_definitions()
    {
        string[] batch = ["figures", "--placed", "1000", "--sold", "950", "--days", "44d", "--feed", "3304.1kg", "--diet", "3200kcal/kg"];
        JsonElement json = Json([.. batch, "--live-weight", "1757.5kg", "--chick-weight", "42g", "--dead-weight", "32kg"]);

        Number(json, "feedConversionLive").Should().BeApproximately(1.88, 1e-9);
        Number(json, "productionEfficiencyFactor").Should().BeApproximately(212.46, 0.005);
        Number(json, "caloricConversionKcalPerKg").Should().BeApproximately(6016, 0.5);
        Number(json, "livabilityPercent").Should().BeApproximately(95, 1e-9);
        Number(json, "averageDailyGainG").Should().BeApproximately((1850 - 42) / 44.0, 1e-6);
        Number(json, "feedConversionGain").Should().BeApproximately(3304.1 / (1757.5 - 42), 1e-6);
        Number(json, "feedConversionMortalityAdjusted").Should().BeApproximately(3304.1 / (1757.5 + 32), 1e-6);
        JsonElement[] corrected = [.. json.GetProperty("feedConversionWeightCorrected").EnumerateArray()];
        corrected.Select(rule => Number(rule, "referenceKg")).Should().Equal(2.5, 1.5);
        Number(corrected[1], "value").Should().BeApproximately(1.88 - (0.04 * 3.5), 1e-9);
        Number(Json([.. batch, "--live-weight", "1.85kg"]), "liveWeightKg").Should().BeApproximately(1757.5, 1e-6, "so light a flock is the mean of one bird");
        Json([.. batch, "--live-weight", "1757.5kg"]).GetProperty("feedConversionGain").ValueKind.Should().Be(JsonValueKind.Null);
        ConsoleRun.Of([.. batch, "--live-weight", "1757.5kg", "--chick-weight", "42kg"]).ErrorLines.Should().ContainSingle(line => line.StartsWith("--chick-weight"));
        ConsoleRun.Of("figures", "--placed", "10", "--sold", "12", "--days", "0d", "--feed", "3", "--live-weight", "9kg").ErrorLines.Select(line => line.Split(':')[0]).Should().BeEquivalentTo("--sold", "--days", "--feed");
    }

    private static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of([.. words, "--json"]);
        run.Exit.Should().Be(0, run.Errors);
        run.Json.GetProperty("cautions").ValueKind.Should().Be(JsonValueKind.Array);
        run.Json.GetProperty("sources").GetArrayLength().Should().BePositive();
        return run.Json;
    }

    private static double Number(JsonElement node, string key) => node.GetProperty(key).GetDouble();
}
