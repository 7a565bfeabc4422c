using System.Text.Json;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>brooder</c>, <c>pasture</c>, <c>crates</c> and <c>air</c> print is what the library says.</summary>
public sealed class HousingCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Brooder_puts_guides_side_by_side()
    {
        JsonElement brooder = Json("brooder", "--chicks", "250", "--age", "3d");

        brooder.GetProperty("areaM2")[0].GetProperty("low").GetDouble().Should().BeApproximately(62.5 * 0.09290304, 1e-6);
        brooder.GetProperty("temperatureC").GetProperty("low").GetDouble().Should().BeApproximately(32.2, 0.05);
        brooder.GetProperty("temperatureC").GetProperty("high").GetDouble().Should().BeApproximately(35, 0.05);
        brooder.GetProperty("temperaturesC").GetArrayLength().Should().Be(3);
        (Number(brooder, "lampsLow"), Number(brooder, "lampsHigh")).Should().Be((4, 5));
        ConsoleRun.Of("brooder", "--chicks", "250", "--age", "3d", "--units", "us").Output.Should().Contain("|      62.5 |").And.Contain("from F");
    }

    [Fact]
    public void Pasture_gives_ground_land_and_load()
    {
        JsonElement pasture = Json(
            "pasture", "--birds", "1000", "--shelter-area", "1500ft2", "--moves", "1", "--days", "28d", "--feed", "4.5kg", "--protein", "19%", "--live", "2.2kg", "--limit", "170kg/ha", "--phosphorus", "0.6%");
        double perBird = 42 * 0.09290304;

        Number(pasture, "areaM2").Should().BeApproximately(1000 * perBird, 1e-3);
        Number(pasture, "landM2").Should().BeApproximately(1000 * perBird, 1e-3);
        Number(pasture, "nitrogenPerBirdG").Should().BeApproximately(75.2, 1e-6);
        Number(pasture, "nitrogenKgPerHaPass").Should().BeApproximately(0.0752 / perBird * 10_000, 1e-3);
        Number(pasture, "nitrogenKgPerHaYear").Should().Be(Number(pasture, "nitrogenKgPerHaPass"));
        Number(pasture, "birdsPerHectareYear").Should().Be(2260);
        Number(pasture, "areaPerBirdM2").Should().BeApproximately(10_000.0 / 2260, 1e-6);
        Number(pasture, "phosphorusKgPerHaPass").Should().BeApproximately(0.01755 / perBird * 10_000, 1e-3);
        pasture.GetProperty("limitMet").GetBoolean().Should().BeFalse();
    }

    [Fact]
    public void Spreadable_nitrogen_is_no_load_on_pasture()
    {
        JsonElement pasture = Json("pasture", "--birds", "100", "--shelter-area", "12m2", "--moves", "1", "--days", "28d", "--n-per-bird", "41g", "--spreadable", "--limit", "170kg/ha");

        (Number(pasture, "birdsPerHectareYear"), Number(pasture, "nitrogenKgPerHaPass"), Number(pasture, "nitrogenKgPerHaYear")).Should().Be((4146, null, null));
    }

    [Fact]
    public void Without_a_limit_none_is_made_up() =>
        Number(Json("pasture", "--birds", "100", "--shelter-area", "12m2", "--moves", "0.25", "--days", "28d", "--n-per-bird", "55g"), "birdsPerHectareYear").Should().BeNull();

    [Fact]
    public void Crates_round_down_and_show_the_law_s_count_beside_the_advised()
    {
        string[] words = ["--crate-length", "97cm", "--crate-width", "58cm", "--standard", "germany", "--birds", "300"];

        JsonElement equal = Json(["crates", "--weight", "2.01kg", .. words]), unequal = Json(["crates", "--weight", "2.05kg", "--cv", "10%", .. words]);

        (Number(equal, "birdsPerCrate"), Number(equal, "birdsPerCrateByStandard"), Number(equal, "crates")).Should().Be((16, 17, 19));
        Number(equal, "areaPerBirdCm2").Should().BeApproximately(97 * 58 / 16.0, 1e-6);
        CrateLoading loading = CrateLoading.Of(CrateStandard.Germany2009, Area.FromSquareCentimeters(97 * 58), WeightDistribution.Of(Mass.FromKilograms(2.05), 0.10));
        (Number(unequal, "birdsPerCrate"), Number(unequal, "birdsPerCrateByStandard")).Should().Be((loading.Birds, loading.BirdsByStandard));
    }

    [Fact]
    public void There_is_no_default_standard_for_crates() =>
        ConsoleRun.Of("crates", "--weight", "2kg", "--crate-length", "97cm", "--crate-width", "58cm").Should().Match<ConsoleRun>(run => run.Exit == 2 && run.Errors.Contains("--standard"));

    [Fact]
    public void A_recalled_crate_standard_says_so()
    {
        string[] words = ["crates", "--weight", "2kg", "--crate-length", "97cm", "--crate-width", "58cm", "--standard", "eu"];

        ConsoleRun.Of(words).Output.Should().Contain("Annex I ch. VII E (2005), unverified").And.Contain("Figures marked unverified are recalled");
        ConsoleRun.Of([.. words, "--json"]).Json.Should().Match<JsonElement>(json => json.GetProperty("unverified").GetBoolean() && json.GetProperty("standard").GetString()!.Contains("unverified"));
    }

    [Fact]
    public void A_plant_s_own_table_and_its_rule_for_hot_days_are_followed()
    {
        string own = scratch.Write(
            "plant.csv",
            "jurisdiction,instrument,edition,scope,quantity,operator,value,unit,mark,kind,subject,when\nour plant,Crates of our plant,2027,,floor,>=,200,cm2/kg,practice,scheme,crate-area-per-weight,bird-weight<=4kg\n");

        JsonElement crates = Json("crates", "--weight", "2kg", "--birds", "100", "--crate-length", "97cm", "--crate-width", "58cm", "--standard", own, "--temp", "27C", "--heat-above", "24C", "--fewer", "15%", "--crates-per-load", "5");

        (Number(crates, "birdsPerCrateByStandard"), Number(crates, "birdsPerCrate"), Number(crates, "crates"), Number(crates, "loads")).Should().Be((14, 11, 10, 2));
    }

    [Fact]
    public void A_crate_too_small_for_a_bird_has_no_answer()
    {
        ConsoleRun run = ConsoleRun.Of("crates", "--weight", "4kg", "--crate-length", "20cm", "--crate-width", "20cm", "--standard", "germany");

        run.Exit.Should().Be(1);
        run.Output.Should().Contain("No bird fits into a crate of this floor.");
    }

    [Fact]
    public void Air_by_balance_and_by_weight()
    {
        JsonElement recalled = Json("air", "--birds", "1000", "--weight", "2kg", "--temp", "20C", "--inside-co2", "3000ppm", "--outside-co2", "400ppm", "--heat", "cigr");
        JsonElement usual = Json("air", "--birds", "1000", "--weight", "2kg", "--inside-co2", "3000ppm", "--outside-co2", "400ppm");

        Number(recalled, "co2M3PerHour").Should().BeApproximately(3.304, 0.0005);
        Number(recalled, "ventilationM3PerHour").Should().BeApproximately(1271, 0.5);
        recalled.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Contain("heat-unverified");
        Number(usual, "co2M3PerHour").Should().BeApproximately(185 * (double)BirdHeat.ChepeteXin2001.Total(Mass.FromKilograms(2)).Watts / 1000, 1e-6);
        Number(usual, "minimumByWeightM3PerHour").Should().BeApproximately(908, 1);
    }

    [Fact]
    public void Air_limits_are_judged_in_their_country()
    {
        JsonElement air = Json("air", "--birds", "1000", "--weight", "2kg", "--ammonia", "25ppm", "--country", "Germany", "--system", "indoor", "--light", "19h");
        JsonElement[] binding = [.. air.GetProperty("limits").EnumerateArray().Where(row => row.GetProperty("binds").GetBoolean() && row.GetProperty("met").ValueKind == JsonValueKind.False)];

        binding.Select(row => row.GetProperty("subject").GetString()).Should().BeEquivalentTo("ammonia", "unbroken-dark-hours");
        binding.Should().OnlyContain(row => row.GetProperty("verdict").GetString()!.EndsWith(LimitVerdict.NotLegalAdvice));
    }

    [Fact]
    public void A_limit_on_nitrogen_that_lets_no_bird_be_kept_gives_none_and_no_land_for_it()
    {
        string[] words = ["pasture", "--birds", "240", "--shelter-area", "120ft2", "--moves", "1", "--days", "35d", "--n-per-bird", "55g", "--limit", "0.01kg/ha"];

        (Number(Json(words), "birdsPerHectareYear"), Number(Json(words), "areaPerBirdM2")).Should().Be((0, null));
        ConsoleRun run = ConsoleRun.Of(words);
        run.Exit.Should().Be(0, run.Errors);
        run.Output.Should().MatchRegex(@"\| most birds a year under your limit \| +0 \|").And.NotContain("land of each");
    }

    [Theory]
    [InlineData("--crates-per-load: \"x\" is not a number of crates; expected a whole number of 1 or more", "--crates-per-load", "x")]
    [InlineData("--temp: \"-70C\" is out of range; expected -60 C to 60 C", "--temp", "-70C")]
    [InlineData("--heat-above: \"-30C\" is out of range; expected -20 C to 60 C", "--temp", "20C", "--heat-above", "-30C", "--fewer", "10%")]
    public void A_refusal_names_what_was_typed_and_the_bounds_that_hold(string message, params string[] words) =>
        ConsoleRun.Of(["crates", "--weight", "2kg", "--crate-length", "97cm", "--crate-width", "58cm", "--standard", "germany", .. words])
            .Should().Be(new ConsoleRun(2, "", message + "\n"));

    [Theory]
    [InlineData("brooder", "--chicks", "0", "--age", "3")]
    [InlineData("pasture", "--birds", "10", "--shelter-area", "10m2", "--moves", "1,2", "--days", "28d")]
    [InlineData("pasture", "--birds", "10", "--shelter-area", "10m2", "--moves", "1", "--days", "28d", "--feed", "1kg", "--protein", "20%", "--live", "2kg")]
    [InlineData("pasture", "--birds", "10", "--shelter-area", "10m2", "--moves", "1", "--days", "28d", "--feed", "1kg")]
    [InlineData("crates", "--weight", "40kg", "--crate-length", "97cm", "--crate-width", "58cm", "--standard", "germany")]
    [InlineData("crates", "--weight", "2kg", "--crate-length", "97cm", "--crate-width", "58cm", "--standard", "germany", "--heat-above", "24C")]
    [InlineData("air", "--birds", "10", "--weight", "2kg", "--inside-co2", "300ppm", "--outside-co2", "400ppm")]
    [InlineData("air", "--birds", "10", "--weight", "2kg", "--light", "25h")]
    [InlineData("air", "--birds", "10", "--weight", "2kg", "--area", "0m2")]
    [InlineData("standards", "--how-known", "hearsay")]
    public void Wrong_words_are_refused_with_exit_2(string command, params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of([command, .. words]);

        (run.Exit, run.Output).Should().Be((2, ""));
        run.ErrorLines.Should().NotBeEmpty().And.OnlyContain(line => line.Contains("expected", StringComparison.Ordinal) || line.Contains("not allowed", StringComparison.Ordinal));
    }

    private static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of([.. words, "--json"]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }

    private static double? Number(JsonElement node, string key) => node.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
}
