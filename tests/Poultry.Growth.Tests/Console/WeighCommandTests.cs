using System.Text.Json;
using Poultry.Growth.Files;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>weigh</c> prints is what the library says.</summary>
public sealed class WeighCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    private static WeighInSeries Series => WeighInFile.Read(ConsoleRun.Demo).Series!;

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Each_age_has_the_library_s_numbers()
    {
        IReadOnlyList<Uniformity> expected = Uniformity.ByAge(Series);

        JsonElement[] rows = [.. Weigh().GetProperty("byAge").EnumerateArray()];

        rows.Select(row => Number(row, "ageDays")).Should().Equal(expected.Select(age => (double?)age.Age.Days));
        rows.Select(row => Number(row, "birds")).Should().Equal(expected.Select(age => (double?)age.Birds));
        rows.Select(row => Number(row, "meanKg")).Should().Equal(expected.Select(age => ConsoleRun.Known(age.MeanWeight.Kilograms)));
        rows.Select(row => Number(row, "sdKg")).Should().Equal(expected.Select(age => ConsoleRun.Known(age.StandardDeviation?.Kilograms)));
        rows.Select(row => Number(row, "cvPercent")).Should().Equal(expected.Select(age => ConsoleRun.Known(100 * age.CoefficientOfVariation)));
        rows.Select(row => Number(row, "uniformityPercent")).Should().Equal(expected.Select(age => ConsoleRun.Known(100 * age.ShareWithinTenPercent)));
        rows.Select(row => row.GetProperty("uniformityBasis").GetString()).Should().Equal("unknown", "normal-curve", "counted", "counted", "counted", "counted");
        rows[0].GetProperty("date").GetString().Should().Be("2027-04-18");
    }

    [Fact]
    public void Birds_to_weigh_follow_precision_level_and_flock()
    {
        double spread = Series.PooledCoefficientOfVariation!.Value;

        JsonElement usual = Weigh(), asked = Weigh("--within", "3%", "--level", "0.95", "--flock", "120");

        Number(usual, "birdsToWeigh").Should().Be(BirdsToWeigh.For(spread, 0.05, 0.90));
        Number(usual, "cvPercent").Should().Be(ConsoleRun.Known(100 * spread));
        usual.GetProperty("flock").ValueKind.Should().Be(JsonValueKind.Null);
        Number(asked, "birdsToWeigh").Should().Be(BirdsToWeigh.For(spread, 0.03, 0.95, 120));
        Number(asked, "birdsToWeighOfLargeFlock").Should().Be(BirdsToWeigh.For(spread, 0.03, 0.95));
    }

    [Fact]
    public void Weigh_ins_that_show_no_spread_say_so()
    {
        string file = scratch.Write("f.csv", "age_d,total_weight_kg,birds\n21,14,20\n");

        ConsoleRun.Of("weigh", file).Output.Should().Contain("Unknown: these weigh-ins do not show how far birds lie apart.");
        ConsoleRun.Of("weigh", file, "--json").Json.GetProperty("birdsToWeigh").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public void Birds_all_alike_do_not_stop_it() => ConsoleRun.Of("weigh", scratch.Write("f.csv", "age_d,weight_g\n7,171\n7,171\n")).Exit.Should().Be(0);

    [Fact]
    public void Birds_further_apart_than_any_flock_can_show_are_said_so()
    {
        string file = scratch.Write("f.csv", "age_d,birds,mean_weight_lb,sd_lb\n14,30,900,1\n21,30,0.0001,0.2\n28,30,3000,2\n");

        ConsoleRun tables = ConsoleRun.Of("weigh", file);
        tables.Exit.Should().Be(0);
        tables.Output.Should().Contain("More than any flock holds").And.Contain("another unit");
        JsonElement document = JsonDocument.Parse(ConsoleRun.Of("weigh", file, "--flock", "120", "--json").Output).RootElement;
        Number(document, "birdsToWeigh").Should().Be(120);
        Number(document, "birdsToWeighOfLargeFlock").Should().BeNull();
    }

    [Fact]
    public void The_catch_is_cautioned_and_the_sources_are_named()
    {
        ConsoleRun run = ConsoleRun.Of("weigh", ConsoleRun.Demo);

        run.Output.Should().Contain("! " + Uniformity.CaughtBirds.Text).And.Contain("Biometrika 6:1-25 (from memory, unverified)");
        Weigh().GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Equal("caught-birds", "mixed-flock");
        Weigh().GetProperty("sources").EnumerateArray().Select(source => source.GetProperty("howKnown").GetString()).Should().Equal("read-in-source", "memory");
    }

    [Theory]
    [InlineData("weigh")]
    [InlineData("fit")]
    public void What_looks_wrong_is_named_with_its_line_and_kept_or_left_out(string command)
    {
        string file = scratch.Write("f.csv", "age_d,weight_g\n7,171\n7,164\n7,1710\n14,440\n14,420\n21,850\n21,870\n28,1450\n28,1480\n35,2100\n");

        ConsoleRun kept = ConsoleRun.Of(command, file), left = ConsoleRun.Of(command, file, "--exclude-flagged");

        kept.Output.Should().Contain("? f.csv:4: A bird of 1.71 kg (3.77 lb) at 7 d is far from its fellows").And.Contain("(kept)");
        left.Output.Should().Contain("(left out)").And.Contain("of 9 birds");
        ConsoleRun.Of(command, file, "--units", "us").Output.Should().Contain("A bird of 1.71 kg (3.77 lb) at 7 d");
        JsonElement flagged = ConsoleRun.Of(command, file, "--json", "--exclude-flagged").Json.GetProperty("flagged")[0];
        flagged.GetProperty("lines")[0].GetInt32().Should().Be(4);
        flagged.GetProperty("code").GetString().Should().Be("unlike-fellows");
        flagged.GetProperty("excluded").GetBoolean().Should().BeTrue();
    }

    [Fact]
    public void Cockerels_and_pullets_stand_apart()
    {
        string file = scratch.Write("f.csv", "age_d,sex,weight_g\n42,m,2500\n42,m,2600\n42,f,2100\n42,f,2200\n");

        ConsoleRun.Of("weigh", file).Output.Should().Contain("| male   |").And.Contain("| female |");
    }

    private static JsonElement Weigh(params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of(["weigh", ConsoleRun.Demo, "--json", .. options]);
        run.Exit.Should().Be(0);
        return run.Json;
    }

    private static double? Number(JsonElement node, string key) => node.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
}
