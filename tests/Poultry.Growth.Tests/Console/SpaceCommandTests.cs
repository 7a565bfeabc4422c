using System.Text.Json;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>space</c> and <c>standards</c> print is what the library says, and no recalled figure leaves them without the word unverified.</summary>
public sealed class SpaceCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Birds_and_chicks_for_a_house()
    {
        JsonElement space = Json("--area", "600m2", "--limit", "33kg/m2", "--weight", "2.0kg", "--mortality", "5%", "--age", "35d");

        Number(space, "birdsAtLimit").Should().Be(9900);
        Number(space, "chicksToPlace").Should().Be(10_421);
        Number(space, "chicksSafeWithNoDeaths").Should().Be(9900);
        Number(space, "chanceOfTooManyPercent").Should().BeInRange(40, 60);
        Number(space, "chicksAtRisk").Should().BeInRange(9900, 10_421);
        Number(space, "cumulativeMortalityLimitPercent").Should().Be(3.1);
        Number(space, "densityKgPerM2").Should().BeNull("no number of birds was given");
        space.GetProperty("bindingLimit").GetString().Should().StartWith("general: your own limit (--limit)");
    }

    [Fact]
    public void Pounds_and_feet_give_the_same()
    {
        JsonElement space = Json("--area", "120ft2", "--birds", "80", "--weight", "5lb", "--floor-per-bird", "1.5ft2");

        Number(space, "densityKgPerM2").Should().BeApproximately(16.27, 0.01);
        Number(space, "birdsPerM2").Should().BeApproximately(7.176, 0.001);
        Number(space, "birdsAtLimit").Should().Be(80);
        ConsoleRun.Of("space", "--area", "120ft2", "--birds", "80", "--weight", "5lb", "--units", "us").Output.Should().Contain(" 3.33 | lb/ft2").And.Contain(" 1.500 | ft2");
    }

    [Fact]
    public void By_age_is_the_library_s_path_with_its_chances()
    {
        string[] words = [ConsoleRun.Demo, "--area", "18m2", "--birds", "190", "--limit", "6lb/ft2", "--age", "63d"];
        Projection flock = Projection.Of(WeighInFile.Read(ConsoleRun.Demo).Series!, GrowthPrior.FastGrowingOutdoor(Sex.Mixed));

        JsonElement space = Json(words);
        JsonElement[] rows = [.. space.GetProperty("byAge").EnumerateArray()];

        rows.Select(row => Number(row, "ageDays")).Should().Equal(7, 14, 21, 28, 35, 42, 49, 56, 63);
        Number(rows[^1], "densityKgPerM2").Should().Be(ConsoleRun.Known(190 * flock.Curve.WeightAt(Age.FromDays(63)).Kilograms / 18));
        rows.Select(row => Number(row, "chanceOverPercent")).Should().BeInAscendingOrder().And.OnlyContain(chance => chance >= 0 && chance <= 100);
        rows[^1].GetProperty("met").GetBoolean().Should().BeFalse();
        Json([.. words, "--seed", "1"]).GetRawText().Should().Be(space.GetRawText());
        Json([.. words, "--seed", "2"]).GetProperty("byAge").GetRawText().Should().NotBe(space.GetProperty("byAge").GetRawText(), "the chances are drawn");
        double reached = Number(space, "limitReachedAgeDays")!.Value;
        (190 * flock.Curve.WeightAt(Age.FromDays(reached)).Kilograms / 18).Should().BeApproximately(29.2946, 0.01);
    }

    [Fact]
    public void A_country_brings_its_laws_in_and_a_small_flock_takes_them_out()
    {
        string[] words = ["--area", "100m2", "--weight", "2.2kg", "--country", "Germany", "--system", "indoor"];

        JsonElement large = Json([.. words, "--birds", "1500", "--meets", "annex-ii"]), small = Json([.. words, "--birds", "400"]);

        large.GetProperty("bindingLimit").GetString().Should().Contain("39 kg/m2");
        Number(large, "birdsAtLimit").Should().Be(1772);
        large.GetProperty("equipment").EnumerateArray().Where(row => row.GetProperty("applies").GetString() == "yes").Select(row => row.GetProperty("item").GetString()).Should().Contain("drinking nipples");
        small.GetProperty("bindingLimit").ValueKind.Should().Be(JsonValueKind.Null);
        small.GetProperty("limits").EnumerateArray().First(row => row.GetProperty("instrument").GetString() == "TierSchNutztV").GetProperty("applies").GetString().Should().Be("no");
        ConsoleRun.Of(["space", .. words, "--birds", "400"]).Output.Should().Contain("flock size is 400 birds, the scope is 500 birds or more").And.Contain("Not legal advice; check the current text.");
    }

    [Fact]
    public void Organic_birds_are_judged_by_house_run_flock_and_age_too()
    {
        string[] words = ["--area", "140m2", "--birds", "2500", "--weight", "1.6kg", "--age", "75d", "--country", "Austria", "--system", "organic", "--house", "mobile", "--outdoor-area", "6000m2", "--pop-holes", "6m"];
        JsonElement space = Json([.. words, "--meets", "older-edition-in-force"]);

        (string? Subject, string? Printed, bool Met)[] binding =
        [
            .. space.GetProperty("limits").EnumerateArray().Where(row => row.GetProperty("binds").GetBoolean() && row.GetProperty("met").ValueKind != JsonValueKind.Null)
                .Select(row => (row.GetProperty("subject").GetString(), row.GetProperty("printed").GetString(), row.GetProperty("met").GetBoolean())),
        ];

        // 2,500 x 1.6 kg on 140 m2 are 28.6 kg/m2 and 17.9 birds/m2; 2.4 m2 of run each; 4.29 m of openings for 100 m2.
        binding.Should().Contain(("stocking-density", "30 kg/m2", true)).And.Contain(("birds-per-area", "16 birds/m2", false)).And.Contain(("outdoor-area-per-bird", "2.5 m2/bird", false))
            .And.Contain(("flock-size", "4800 birds", true)).And.Contain(("slaughter-age", "81 d", false)).And.Contain(("pop-hole-length", "4 m/100 m2", true));
        Number(space, "birdsAtLimit").Should().Be(2240);
        ConsoleRun.Of(["space", .. words]).Output.Should().Contain("Limits on flock, house, run and age");
    }

    [Fact]
    public void No_recalled_figure_leaves_without_the_word_unverified()
    {
        string[] space = ["space", "--area", "100m2", "--birds", "5000", "--weight", "2.2kg", "--country", "France", "--system", "free-range", "--standard", "543/2008"];
        foreach (JsonElement row in ConsoleRun.Of([.. space, "--json"]).Json.GetProperty("limits").EnumerateArray().Where(row => row.GetProperty("howKnown").GetString()!.StartsWith("memory", StringComparison.Ordinal)))
        {
            row.GetProperty("unverified").GetBoolean().Should().BeTrue();
            row.GetProperty("verdict").GetString().Should().Contain("unverified");
        }

        string page = ConsoleRun.Of(space).Output;
        page.Split('\n').Where(line => line.Contains("543/2008", StringComparison.Ordinal)).Should().NotBeEmpty().And.OnlyContain(line => line.Contains("unverified", StringComparison.Ordinal));
        ConsoleRun.Of([.. space, "--json"]).Json.GetProperty("bindingLimit").GetString().Should().Contain("unverified");
        foreach (JsonElement row in ConsoleRun.Of("standards", "--how-known", "memory", "--json").Json.GetProperty("rows").EnumerateArray())
        {
            row.GetProperty("unverified").GetBoolean().Should().BeTrue();
            row.GetProperty("howKnown").GetString().Should().Be("memory, unverified");
        }

        ConsoleRun.Of("standards", "--how-known", "memory").Output.Split('\n').Where(line => line.StartsWith('|') && !line.Contains("how known", StringComparison.Ordinal) && !line.Contains("--+", StringComparison.Ordinal))
            .Should().HaveCount(55).And.OnlyContain(line => line.Contains("unverified"));
    }

    [Fact]
    public void A_file_of_own_limits_is_held_to_and_a_broken_one_is_refused()
    {
        string header = "jurisdiction,instrument,edition,scope,quantity,operator,value,unit,mark,kind,subject\n";
        string own = scratch.Write("own.csv", header + "our farm,Our own rule,2027,hot months,live weight,<=,20,kg/m2,practice,scheme,stocking-density\n");
        string broken = scratch.Write("broken.csv", header + "our farm,Our own rule,2027,,live weight,<=,2O,kg/m2,hearsay,scheme,stocking-density\n");

        Number(Json("--area", "100m2", "--weight", "2kg", "--standard", own), "birdsAtLimit").Should().Be(1000);
        ConsoleRun refused = ConsoleRun.Of("space", "--area", "100", "--weight", "2kg", "--standard", broken);
        refused.Exit.Should().Be(2);
        refused.Output.Should().BeEmpty();
        refused.ErrorLines.Should().Equal(
            "--area: \"100\" has no unit; expected an area with cm2, m2, ft2, ha or ac, as in 12m2",
            "broken.csv:2:44: value \"2O\" is not a number; expected a number in the unit beside it",
            "broken.csv:2:53: mark \"hearsay\" is unknown; expected law, abstract, derived, secondary, memory, practice, assumption");
    }

    [Theory]
    [InlineData("--weight: is missing; expected a weight, a FILE of weigh-ins, or --prior", "--area", "10m2")]
    [InlineData("--age: lies beyond the projection, which ends at 120 d; expected an age up to that", "--area", "10m2", "--birds", "90", "--prior", "fast-outdoor", "--age", "121d")]
    [InlineData("--risk: \"100%\" is out of range; expected 0 % to 99 %", "--area", "10m2", "--weight", "2kg", "--risk", "100%")]
    [InlineData("--standard: \"nonesuch\" is part of no instrument's name; expected one that the command standards lists, or a file that ends in .csv", "--area", "10m2", "--weight", "2kg", "--standard", "nonesuch")]
    [InlineData("--meets: \"nothing\" is the condition of no limit; expected a code that the answer names, as in annex-ii", "--area", "10m2", "--weight", "2kg", "--meets", "nothing")]
    [InlineData("--earlier: is given another number of times than twice; expected the two batches before", "--area", "10m2", "--weight", "2kg", "--earlier", "30kg/m2")]
    [InlineData("--chart: draws density over age; expected --birds, and a FILE of weigh-ins or --prior, too", "--area", "10m2", "--weight", "2kg", "--chart", "x.svg")]
    public void What_cannot_be_answered_is_refused(string message, params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["space", .. words]);

        (run.Exit, run.Output).Should().Be((2, ""));
        run.ErrorLines.Should().Equal(message);
    }

    [Fact]
    public void Weigh_ins_of_the_other_sex_are_refused()
    {
        string pullets = scratch.Write("pullets.csv", "age_d,weight_g,sex\n14,400,female\n14,380,female\n");

        ConsoleRun.Of("space", pullets, "--area", "10m2", "--birds", "50", "--sex", "male").Should().Be(
            new ConsoleRun(2, "", "--sex: the file holds weigh-ins of the other sex; expected mixed, or a file without them\n"));
    }

    [Fact]
    public void The_chart_shows_density_against_its_limits_and_says_so_in_words()
    {
        string chart = scratch.PathOf("density.svg");

        ConsoleRun.Of("space", "--prior", "fast-outdoor", "--area", "120ft2", "--birds", "80", "--floor-per-bird", "1.5ft2", "--limit", "4lb/ft2", "--units", "us", "--chart", chart).Exit.Should().Be(0);

        File.ReadAllText(chart).Should().Contain("stocking density, lb/ft2").And.Contain("your own limit (--limit)").And.Contain("Chart of stocking density against age.").And.Contain("Not legal advice");
    }

    [Theory]
    [InlineData("England", "5")]
    [InlineData("Nowhere", null)]
    public void Standards_are_listed_by_place(string place, string? rows)
    {
        ConsoleRun run = ConsoleRun.Of("standards", "--country", place, "--about", "density");

        run.Output.Should().StartWith(rows is null ? "No limit is known that fits. That the library knows none does not mean that there is none: ask the authority." : rows + " limits");
        run.Exit.Should().Be(rows is null ? 1 : 0);
    }

    [Fact]
    public void Every_limit_is_listed() => ConsoleRun.Of("standards", "--json").Json.GetProperty("rows").GetArrayLength().Should().Be(LimitBook.Shipped.Count);

    private static JsonElement Json(params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of(["space", .. options, "--json"]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }

    private static double? Number(JsonElement node, string key) => node.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
}
