using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>What a return warns of, and where it is silent: each caution by a case that has it and one that is next to it.</summary>
public sealed class PlantCautionTests
{
    private static readonly PackOffer Whole = SaleCase.ByKilogram("whole", 1, 10, Demand.Ordered(5));
    private static readonly PackOffer Front = SaleCase.ByKilogram("front", 2, 10, Demand.Ordered(5)), Rear = SaleCase.ByKilogram("rear", 2, 10, Demand.Ordered(5));

    [Fact]
    public void Whole_birds_that_are_all_packed_for_a_known_demand_need_no_caution() => Codes(0, 0, Whole).ShouldBeNone();

    [Fact]
    public void Cut_birds_need_a_loss_that_is_stated()
    {
        Codes(100, 0, Front, Rear).Should().Equal("cutting-loss-not-stated");
        Codes(100, 5, Front, Rear).ShouldBeNone();
    }

    [Fact]
    public void Pieces_without_an_offer_are_told_where_there_are_offers()
    {
        Codes(100, 5, Front).Should().Equal("pieces-without-offer");
        Codes(100, 5).ShouldBeNone("nobody has stated any offer yet");
    }

    [Fact]
    public void One_demand_without_limit_is_enough() =>
        Codes(100, 5, Front, SaleCase.ByKilogram("rear", 2, 10, Demand.Unlimited)).Should().Equal("demand-unlimited");

    /// <summary>The cautions of the return itself: those of the balance stand before them.</summary>
    private static IEnumerable<string> Codes(double cutPercent, double lossPercent, params PackOffer[] offers)
    {
        CutOrder order = CutOrder.HeaviestFirst(
            CutOrderLine.Of(SaleCase.InTwo("two", "front", 60, "rear"), Probability.FromPercent(cutPercent)), CutOrderLine.Of(null, Probability.FromPercent(100 - cutPercent)));
        PlantReturn back = PlantReturn.Of(SaleCase.Alike(10), SaleCase.SeventyPercent(cuttingLossPercent: lossPercent), order, offers);
        return back.Cautions.Skip(back.Balance.Cautions.Count).Select(caution => caution.Code);
    }
}
