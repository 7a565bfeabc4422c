using System.Text.Json;
using System.Xml.Linq;
using Poultry.Growth.Carcass;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>cuts</c> prints is what the library says.</summary>
public sealed class CutsCommandTests : IDisposable
{
    private static readonly string[] Birds = ["cuts", "--live", "2.9kg", "--birds", "300", "--live-state", "full-fed", "--off-feed", "12h"];

    private static readonly string Prices = Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-prices.csv");

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Balance_and_pieces_have_the_library_s_numbers()
    {
        JsonElement json = Cuts("--order", "40%", "--cutting-loss", "1%", "--part", "giblets=4%");
        double ratio = SexDimorphism.FemaleRatioAt(Age.FromDays(56));
        Mass male = Mass.FromKilograms(2.9 * 2 / (1 + ratio));
        PlantReturn expected = PlantReturn.Of(
            DeliveredBirds.Of(300, WeightDistribution.OfSexes(male, male * ratio, Probability.FromFraction(0.5), 0.10), LiveState.FullFed),
            new PlantConditions
            {
                Dressing = Dressings.For(BirdType.Fast),
                AtKilling = LiveState.OffFeed(Duration.FromHours(12)),
                CuttingLoss = Probability.FromPercent(1),
                OtherParts = [NamedPart.Of("giblets", Probability.FromPercent(4))],
            },
            CutOrder.HeaviestFirst(CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(40)), CutOrderLine.Of(null, Probability.FromPercent(60))),
            []);

        json.GetProperty("balance").EnumerateArray().Select(line => (Text(line, "part"), Number(line, "kg"), Number(line, "lowKg"), Number(line, "percentOfLive"))).Should().Equal(
            expected.Balance.Lines.Select(line => (line.Name, ConsoleRun.Known(line.Weight.Likely.Kilograms), ConsoleRun.Known(line.Weight.Low.Kilograms), ConsoleRun.Known(line.PercentOfLive))));
        json.GetProperty("closes").GetBoolean().Should().BeTrue();
        json.GetProperty("pieces").EnumerateArray().Select(piece => (Text(piece, "piece"), Number(piece, "kg"))).Should().Equal(
            expected.Lines.SelectMany(line => line.Pieces).Select(piece => (piece.Piece, ConsoleRun.Known(piece.Weight.Kilograms))));
        json.GetProperty("advice").ValueKind.Should().Be(JsonValueKind.Null);
        json.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key")).Should().Contain(["DressingReading", "Rudn2018", "NassSlaughter", "Wabeck1972"]);
    }

    [Fact]
    public void Prices_tell_packs_money_and_how_many_to_cut()
    {
        JsonElement json = Cuts("--order", "cut", "--prices", Prices, "--cut-fee", "1.50", "--pack-cost", "0.20");

        JsonElement[] packs = [.. json.GetProperty("packs").EnumerateArray()];
        JsonElement frames = packs.Single(pack => Text(pack, "piece") == "frame");
        Number(frames, "left").Should().BeGreaterThan(200);
        Number(frames, "packs").Should().BeApproximately(300 * (1 - 0.0024) * (1 - 0.0097), 1e-6);
        (Number(frames, "askedLow"), Number(frames, "askedLikely"), Number(frames, "askedHigh")).Should().Be((10, 25, 50));
        json.GetProperty("pieces").EnumerateArray().Sum(piece => Number(piece, "revenue")).Should().BeApproximately(Number(json, "revenue")!.Value, 1e-4);
        Number(json, "breakEvenPremium").Should().BePositive();
        Number(json, "valuePerLiveKg").Should().BeApproximately(Number(json, "value")!.Value / 870, 1e-7);
        JsonElement advice = json.GetProperty("advice");
        Number(advice, "cutPercent").Should().BeInRange(10, 70);
        advice.GetProperty("shares").GetArrayLength().Should().Be(21);
        Text(advice, "reason").Should().Contain("With all cut, unsold:").And.Contain("frame");
    }

    [Fact]
    public void Tables_come_first_then_cautions_then_sources_and_units_are_not_mixed()
    {
        string[] words = [.. Birds, "--order", "40%", "--prices", Prices];
        string output = ConsoleRun.Of(words).Output, pounds = ConsoleRun.Of([.. words, "--units", "us"]).Output.Split("\nCautions\n")[0];

        int[] places = [.. new[] { "Where the weight goes", "Birds (the heaviest", "Packs (", "Worth (", "\nCautions\n", "\nSources\n" }.Select(part => output.IndexOf(part, StringComparison.Ordinal))];
        places.Should().BeInAscendingOrder().And.NotContain(-1);
        output.Should().Contain("it closes").And.Contain("decided by the inspection service");
        pounds.Split("\nWorth")[0].Should().Contain("lb").And.NotMatchRegex(@"\bkg\b");
        ConsoleRun.Of([.. words, "--json", "--units", "us"]).Output.Should().Be(ConsoleRun.Of([.. words, "--json"]).Output);
    }

    [Fact]
    public void The_more_own_batches_the_nearer_the_own_ratio()
    {
        double Percent(string batches) => Number(Cuts("--dressing", "68%", "--own-batches", batches).GetProperty("dressing"), "percent")!.Value;

        Percent("1").Should().BeInRange(69, 70);
        Percent("9").Should().BeInRange(68, 68.3);
        JsonElement chilled = Cuts("--dressing", "68%", "--basis", "hot,neck,no-giblets,no-feet", "--chill", "4%", "--drip", "1%");
        chilled.GetProperty("balance")[0].GetProperty("kind").GetString().Should().Be("water-in");
        Number(chilled, "retainedWaterPercentOfChilled").Should().BeApproximately(100 * 0.04 / 1.04, 1e-6);
    }

    [Fact]
    public void Files_of_one_s_own_are_read()
    {
        string set = scratch.Write("mine.csv", "# name: trade eight\n# back: in-pieces\npiece,per_bird,share_percent\nbreast,2,47\nthigh,2,27\ndrumstick,2,14\nwing,2,12\n");
        string order = scratch.Write("order.csv", "# rule: by-weight\ncut,from,to\nwhole,,2.8kg\ntrade eight,2.8kg,\n");

        JsonElement json = Cuts("--set", set, "--order", order);

        json.GetProperty("lines").EnumerateArray().Select(line => Text(line, "cut")).Should().Equal("whole", "trade eight");
        json.GetProperty("pieces").EnumerateArray().Select(piece => Text(piece, "piece")).Should().Equal("whole", "breast", "thigh", "drumstick", "wing");
    }

    [Fact]
    public void The_chart_says_in_words_where_the_weight_goes()
    {
        string chart = scratch.PathOf("cuts.svg");

        ConsoleRun.Of([.. Birds, "--order", "40%", "--chart", chart]).Exit.Should().Be(0);

        XElement svg = XElement.Load(chart);
        string described = svg.Elements().Single(part => part.Name.LocalName == "desc").Value;
        described.Should().Contain("300 birds, 870.0 kg full-fed").And.Contain("breast: ").And.Contain("other, by difference: ");
    }

    [Fact]
    public void Tenders_are_packed_apart_only_by_a_figure_of_the_user_s_or_the_cited_one()
    {
        double? Kilograms(JsonElement cuts, string piece) => cuts.GetProperty("pieces").EnumerateArray().Where(node => Text(node, "piece") == piece).Select(node => Number(node, "kg")).SingleOrDefault();
        JsonElement whole = Cuts("--set", "boneless-breast"), cited = Cuts("--set", "boneless-breast", "--tenders", "cited"), own = Cuts("--set", "boneless-breast", "--tenders", "5%");
        double carcass = whole.GetProperty("lines")[0].GetProperty("carcassKg").GetDouble();

        Kilograms(cited, "tender").Should().BeApproximately(0.04 / 0.725 * carcass, 0.001 * carcass, "about 4 % of live weight, of a carcass of 72.5 %");
        Kilograms(own, "tender").Should().BeApproximately(0.05 * carcass, 1e-6 * carcass);
        (Kilograms(own, "tender") + Kilograms(own, "fillet")).Should().BeApproximately(Kilograms(whole, "boneless breast")!.Value, 1e-6);
        Kilograms(whole, "tender").Should().BeNull();
    }

    [Fact]
    public void Shares_grow_with_the_carcass_only_when_asked()
    {
        double Breast(params string[] options) => Cuts(["--set", "rudn-42d", .. options]).GetProperty("pieces").EnumerateArray().Single(node => Text(node, "piece") == "breast").GetProperty("kg").GetDouble();

        Breast("--exponents", "two-point").Should().BeLessThan(Breast(), "these carcasses are lighter than those of the set, and breast grows faster than the carcass");
        Breast("--exponents", "breast=1,thigh=1,drumstick=1,wing=1,frame=1", "--shares-at", "4.6lb").Should().BeApproximately(Breast(), 1e-6);
    }

    [Fact]
    public void Parts_that_weigh_more_than_the_bird_are_told() =>
        Cuts("--part", "viscera=40%").GetProperty("cautions").EnumerateArray().Select(node => Text(node, "code")).Should().Contain("balance-negative");

    /// <summary>Sold, left, worth and premium lie between those with light and with heavy carcasses.</summary>
    [Fact]
    public void Every_estimate_has_its_low_and_high()
    {
        JsonElement cuts = Cuts("--order", "40%", "--prices", Prices, "--cut-fee", "1.50");

        string[] keys = ["revenue", "value", "valuePerLiveKg", "breakEvenPremium", "premium"];
        foreach (string key in keys)
        {
            string rest = char.ToUpperInvariant(key[0]) + key[1..];
            Number(cuts, key).Should().BeInRange(Number(cuts, "low" + rest)!.Value, Number(cuts, "high" + rest)!.Value, key);
        }

        cuts.GetProperty("packs").EnumerateArray().Should().AllSatisfy(pack => new[] { "Packs", "Sold", "Left", "Revenue", "LeftRevenue" }.Should().AllSatisfy(key =>
            Number(pack, char.ToLowerInvariant(key[0]) + key[1..]).Should().BeInRange(Number(pack, "low" + key)!.Value, Number(pack, "high" + key)!.Value)));
        Number(cuts, "highValue").Should().BeGreaterThan(Number(cuts, "lowValue")!.Value);
    }

    private static JsonElement Cuts(params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of([.. Birds, "--json", .. options]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }

    private static string Text(JsonElement node, string key) => node.GetProperty(key).GetString()!;

    private static double? Number(JsonElement node, string key) => node.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
}
