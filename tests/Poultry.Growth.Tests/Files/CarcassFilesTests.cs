using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>Sets of cuts, orders and prices are read, or refused with every problem in one pass.</summary>
public sealed class CarcassFilesTests : IDisposable
{
    private const string Back = "# back: separate\n";
    private const string SetHeader = "piece,per_bird,share_percent\n";
    private const string SetColumns = "piece, per_bird, share_percent";

    private readonly Scratch scratch = new();

    public static TheoryData<string, string> BrokenSets => new()
    {
        { SetHeader + "breast,2,60\nrest,1,40\n", "f.csv: back is not stated; expected a line \"# back: separate\" (the back is a frame of its own) or \"# back: in-pieces\"" },
        { "# back: left\n" + SetHeader + "breast,2,60\nrest,1,40\n", "f.csv:1:9: back \"left\" is unknown; expected separate or in-pieces" },
        { Back + Back + SetHeader + "breast,2,60\nrest,1,40\n", "f.csv:2:9: back \"separate\" is stated a second time; expected one line back" },
        { Back, "f.csv:1:1: file is empty; expected a header and at least one row: " + SetColumns },
        { Back + "piece,share_percent\nbreast,60\nrest,40\n", "f.csv:2:1: per_bird is missing from the header; expected " + SetColumns },
        { Back + "piece,per_bird,share\nbreast,2,60\nrest,1,40\n", "f.csv:2:16: header \"share\" is no column of this table (did you mean share_percent?); expected " + SetColumns },
        { Back + SetHeader + "breast,2,60\nrest,1,20\n", "f.csv: share_percent is 80 in all; expected at least two pieces that are 98 to 102 % of the carcass together, frame or rest too" },
        { Back + SetHeader + "breast,2.5,60\nrest,1,40\n", "f.csv:3:8: per_bird \"2.5\" is not whole; expected a whole number from 1 to 20" },
        { Back + SetHeader + "breast,2,\"60,5\"\nrest,1,40\n", "f.csv:3:10: share_percent \"60,5\" has a decimal comma; expected a number from 0.01 to 100" },
        { Back + SetHeader + "breast,2,60\nbreast,1,40\n", "f.csv:4:1: piece \"breast\" stands there twice; expected every piece once" },
        { Back + SetHeader + "\"  \",2,60\nrest,1,40\n", "f.csv:3:1: piece \"\" is empty; expected what the piece is called, as in thigh" },
        { Back + SetHeader + ",2,60\nrest,1,40\n", "f.csv:3:1: piece \"\" is empty; expected what the piece is called, as in thigh" },
    };

    public static TheoryData<string, string> BrokenPrices => new()
    {
        { "piece,price\nwhole,9/kg\n", "f.csv:1:1: sells_likely is missing from the header; expected *" },
        { "piece,price,sells_likely\nwhole,9,10\n", "f.csv:2:7: price \"9\" has no unit; expected *" },
        { "piece,price,sells_likely\nwhole,,10\n", "f.csv:2:1: price \"whole\" is not stated; expected either price, as in 9.50/kg, or pack_price, as in 12.00" },
        { "piece,price,pack_price,sells_likely\nwhole,9/kg,12,10\n", "f.csv:2:12: price \"12\" is stated twice; expected either price, as in 9.50/kg, or pack_price, as in 12.00" },
        { "piece,price,sells_likely\nwhole,9/kg,\n", "f.csv:2:12: sells_likely \"\" is empty; expected how many packs will probably sell, or any" },
        { "piece,price,sells_low,sells_likely\nwhole,9/kg,20,10\n", "f.csv:2:15: sells_likely \"10\" does not lie between sells_low and sells_high; expected low, likely and high in this order" },
        { "piece,price,sells_low,sells_likely\nwhole,9/kg,20,any\n", "f.csv:2:12: sells_low \"20\" stands beside any; expected nothing, or numbers in all three" },
        { "piece,from,to,price,sells_likely\nwhole,2kg,1kg,9/kg,10\n", "f.csv:2:1: row \"whole\" makes no sense: 1 kg (2.2 lb) is not allowed; expected above 2 kg (4.41 lb)*" },
        { "piece,from,price,sells_likely\nwhole,2,9/kg,10\n", "f.csv:2:7: from \"2\" has no unit; expected *" },
        { "piece,price,sells_likely\nwhole,9/kg,10\nWHOLE,8/kg,10\n", "f.csv:3:1: piece \"WHOLE\" claims the same pieces as another row; expected weights from and to that do not overlap" },
        { "piece,price,left_price,sells_likely\nwhole,9/kg,\"4,5/kg\",10\n", "f.csv:2:12: left_price \"4,5/kg\" has a decimal comma; expected \"4.5/kg\"" },
    };

    public static TheoryData<string, string> BrokenOrders => new()
    {
        { "cut,birds\nwhole,100%\n", "f.csv: rule is not stated; expected a line \"# rule: heaviest-first\", as-they-come or by-weight" },
        { "# rule: best\ncut,birds\nwhole,100%\n", "f.csv:1:9: rule \"best\" is unknown; expected heaviest-first, as-they-come or by-weight" },
        { "# rule: as-they-come\ncut,birds\nwhole,60%\n", "f.csv: birds are 60 % together; expected 100 %" },
        { "# rule: as-they-come\ncut,birds\nhalves,100%\n", "f.csv:3:1: cut \"halves\" is unknown; expected whole, rudn-42d, *" },
        { "# rule: as-they-come\ncut,birds\nwhole,100\n", "f.csv:3:7: birds \"100\" has no unit; expected *" },
        { "# rule: as-they-come\ncut,birds,from\nwhole,100%,2kg\n", "f.csv:3:12: weight \"2kg\" does not go with the rule; expected a share of the birds, or # rule: by-weight" },
        { "# rule: by-weight\ncut,birds\nwhole,100%\n", "f.csv:3:7: birds \"100%\" stands beside the rule by-weight; expected from and to" },
        { "# rule: by-weight\ncut,from,to\nwhole,,2kg\nrudn-42d,3kg,\n", "f.csv: order makes no sense: The bands of weight leave a gap or overlap; expected each to start where the one below ends, the first without lower and the last without upper limit" },
    };

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_set_is_read_with_its_name_or_that_of_the_file()
    {
        CutSet named = CutSetFile.Read(scratch.Write("f.csv", "# name: mine\n" + Back + SetHeader + "breast,2,60\nrest,1,39\n")).Value!;

        (named.Name, named.Back).Should().Be(("mine", BackCut.SeparateFrame));
        named.Pieces.Select(piece => piece.ToString()).Should().Equal("2 breast: 60.61 %", "1 rest: 39.39 %");
        CutSetFile.Read(scratch.Write("farm.csv", "# back: in-pieces\n" + SetHeader + "breast,2,60\nrest,1,40\n")).Value!.Name.Should().Be("farm");
    }

    [Fact]
    public void Prices_are_read_with_their_units()
    {
        IReadOnlyList<PackOffer> offers = PackOfferFile.Read(scratch.Write("f.csv",
            "piece;pieces_per_pack;from;to;price;pack_price;sells_low;sells_likely;sells_high;left_price;freezer_packs\n"
            + "whole;1;4lb;;4.30/lb;;10;20;40;2/lb;5\nthigh;4;;;;11.50;;any;;;\n")).Value!;

        offers[0].ToString().Should().Be("1 whole from 1.814 kg (4 lb)");
        offers[0].Price!.Value.AmountPerPound.Should().BeApproximately(4.30, 1e-12);
        offers[0].Demand.ToString().Should().Be("20 (10 to 40)");
        (offers[0].FreezerPacks, offers[0].LeftPrice.AmountPerPound).Should().Be((5, 2));
        offers[1].PricePerPack!.Value.Amount.Should().Be(11.50);
        offers[1].Demand.IsUnlimited.Should().BeTrue("the user says so");
    }

    [Fact]
    public void An_order_is_read_by_each_rule()
    {
        CutOrder shares = CutOrderFile.Read(scratch.Write("f.csv", "# rule: heaviest-first\ncut,birds\nboneless-breast,20%\nrudn-42d,30%\nwhole,50%\n"), CutSets.All).Value!;
        CutOrder weights = CutOrderFile.Read(scratch.Write("g.csv", "# rule: by-weight\ncut,from,to\nrudn-42d,6lb,\nwhole,,6lb\n"), CutSets.All).Value!;

        shares.Rule.Should().Be(CutOrderRule.HeaviestFirst);
        shares.Lines.Select(line => line.Name).Should().Equal("boneless-breast", "rudn-42d", "whole");
        weights.Rule.Should().Be(CutOrderRule.ByWeight);
        weights.Lines.Select(line => line.Name).Should().Equal("whole", "rudn-42d");
    }

    [Theory]
    [MemberData(nameof(BrokenSets))]
    public void A_broken_set_is_refused_with_one_exact_message(string text, string message) => Only(CutSetFile.Read(scratch.Write("f.csv", text)), message);

    [Theory]
    [MemberData(nameof(BrokenPrices))]
    public void Broken_prices_are_refused_with_one_exact_message(string text, string message) => Only(PackOfferFile.Read(scratch.Write("f.csv", text)), message);

    [Theory]
    [MemberData(nameof(BrokenOrders))]
    public void A_broken_order_is_refused_with_one_exact_message(string text, string message) => Only(CutOrderFile.Read(scratch.Write("f.csv", text), CutSets.All), message);

    [Fact]
    public void All_problems_are_told_in_one_pass()
    {
        FileReading<IReadOnlyList<PackOffer>> reading = PackOfferFile.Read(scratch.Write("f.csv", "piece,price,sells_likely,freezer_packs\nwhole,x,-1,2\n,9/kg,3,1.5\nwing,9/kg\n"));

        reading.Problems.Select(problem => (problem.Line, problem.Field)).Should().Equal(
            (2, "price"), (2, "sells_likely"), (3, "piece"), (3, "freezer_packs"), (4, "row"));
        reading.ToString().Should().Be("f.csv: 5 problems");
        PackOfferFile.Read(scratch.PathOf("none.csv")).Problems.Should().ContainSingle().Which.Fault.Should().Be("does not exist");
    }

    private static void Only<T>(FileReading<T> reading, string message)
        where T : class
    {
        reading.Value.Should().BeNull();
        reading.Problems.Should().ContainSingle().Which.ToString().Should().Match(message);
    }
}
