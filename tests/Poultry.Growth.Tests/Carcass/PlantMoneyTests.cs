using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Two ways of cutting and whole birds in one batch: every sum of money and weight by a pencil.</summary>
public sealed class PlantMoneyTests
{
    /// <summary>100 birds of 3 kg: 20 cut into fronts and rears, 30 into breasts and legs, 50 whole. Carcass 2.1 kg, 1.89 kg after 10 % lost in cutting.</summary>
    private static readonly PlantReturn Back = Return(
        SaleCase.ByKilogram("whole", 1, 10, Demand.Ordered(40)).LeftOver(6, UnitPrice.FromAmountPerKilogram(5)),
        PackOffer.ByPack("front", 2, Money.Of(12), Demand.Unlimited),
        SaleCase.ByKilogram("rear", 2, 5, Demand.Ordered(15)).LeftOver(2, UnitPrice.FromAmountPerKilogram(2)),
        SaleCase.ByKilogram("breast", 2, 8, Demand.Of(90, 100, 110)));

    [Fact]
    public void What_sells_and_what_the_freezer_takes_brings_money()
    {
        // 40 whole of 2.1 kg at 10; 20 packs of fronts at 12; 15 packs of rears of 0.4 x 1.89 = 0.756 kg at 5; 30 packs of breasts of 0.945 kg at 8.
        Money(0, 840, 6 * 2.1 * 5);
        Money(1, 240, 0);
        Money(2, 56.7, 2 * 0.756 * 2);
        Money(3, 226.8, 0);
        Back.Revenue.Amount.Should().BeApproximately(1429.524, 1e-6, "840 + 63 + 240 + 56.7 + 3.024 + 226.8");

        void Money(int pack, double sold, double left)
        {
            Back.Packs[pack].Revenue.Amount.Should().BeApproximately(sold, 1e-7);
            Back.Packs[pack].LeftRevenue.Amount.Should().BeApproximately(left, 1e-7);
        }
    }

    [Fact]
    public void Cutting_is_charged_a_bird_cut_and_packing_a_pack()
    {
        // 50 birds at 2, and 50 + 20 + 20 + 30 packs at 0.5.
        Back.Value.Amount.Should().BeApproximately(1429.524 - 100 - 60, 1e-6);
        Back.ValuePerLiveKilogram.Should().BeApproximately(1269.524 / 300, 1e-9);
        Back.ToString().Should().Be(
            "300 kg (661.39 lb) full-fed: 210 kg (462.97 lb) carcass, 70 % of the full-fed weight; worth 1269.52, 4.23/kg (1.92/lb) of full-fed live weight");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_premium_that_pays_for_cutting_is_that_of_all_cuts_together(bool wholeByPack)
    {
        PlantReturn back = wholeByPack ? Return([PackOffer.ByPack("whole", 1, Money.Of(21), Demand.Unlimited), .. Back.Packs.Skip(1).Select(pack => pack.Offer)]) : Back;

        // Cut: 50 x 1.89 = 94.5 kg, lost 50 x 0.21 = 10.5 kg, worth 10 a kg whole; 70 packs at 0.5. The cuts bring 240 + 56.7 + 3.024 + 226.8.
        back.BreakEvenPremiumPerKilogram!.Value.Amount.Should().BeApproximately((100 + 35 + 105) / 94.5, 1e-8);
        back.PremiumPerKilogram!.Value.Amount.Should().BeApproximately((526.524 / 94.5) - 10, 1e-8);
    }

    [Fact]
    public void Without_cuts_or_without_a_price_of_whole_birds_there_is_no_premium()
    {
        PlantReturn whole = PlantReturn.Of(SaleCase.Alike(10), SaleCase.SeventyPercent(), CutOrder.AllWhole, [SaleCase.ByKilogram("whole", 1, 10, Demand.Unlimited)]);
        PlantReturn noPrice = Return(SaleCase.ByKilogram("breast", 2, 8, Demand.Unlimited));
        PlantReturn noWhole = PlantReturn.Of(
            SaleCase.Alike(10), SaleCase.SeventyPercent(), SaleCase.CutHeaviest(100), [PackOffer.ByPack("whole", 1, Money.Of(21), Demand.Unlimited)]);

        foreach (PlantReturn back in new[] { whole, noPrice, noWhole })
        {
            (back.BreakEvenPremiumPerKilogram, back.PremiumPerKilogram).Should().Be((null, null));
        }
    }

    [Fact]
    public void Pieces_packs_and_what_is_short_or_left()
    {
        Back.Lines.SelectMany(line => line.Pieces).Select(piece => (piece.Piece, Math.Round(piece.ExpectedPieces, 9))).Should().Equal(
            ("front", 40), ("rear", 40), ("breast", 60), ("leg", 60), ("whole", 50));
        Back.NotPacked.Kilograms.Should().BeApproximately(30 * 0.945, 1e-7, "legs have no offer");
        PackSale whole = Back.Packs[0], front = Back.Packs[1], breast = Back.Packs[3];

        (whole.PacksSold, whole.PacksLeft, whole.PacksFrozen, whole.PacksShort, whole.OrdersFilled!.Value.Percent).Should().Be((40, 10, 6, 0, 100));
        (whole.Sold.Kilograms, whole.Unsold.Kilograms).Should().Be((40 * whole.PackWeight.Kilograms, 10 * whole.PackWeight.Kilograms));
        (front.PacksSold, front.PacksShort, front.OrdersFilled).Should().Be((20, 0, null), "nothing is short of a demand without limit");
        (breast.PacksSold, breast.PacksShort).Should().Be((30, 70), "100 on average less 30");
        breast.OrdersFilled!.Value.Percent.Should().BeApproximately(30, 1e-9);
        Return(SaleCase.ByKilogram("leg", 2, 8, Demand.Ordered(0))).Packs[0].OrdersFilled.Should().BeNull("nothing is asked for");
    }

    [Fact]
    public void Each_bird_passes_with_its_chance_unless_the_ratio_counts_the_condemned_already()
    {
        PackOffer[] offers = [SaleCase.ByKilogram("whole", 1, 10, Demand.Unlimited), SaleCase.ByKilogram("front", 2, 8, Demand.Unlimited)];
        CutOrder order = CutOrder.HeaviestFirst(
            CutOrderLine.Of(SaleCase.InTwo("two", "front", 60, "rear"), Probability.FromFraction(0)), CutOrderLine.Of(null, Probability.FromFraction(1)));
        PlantReturn taken = PlantReturn.Of(SaleCase.Alike(100), SaleCase.SeventyPercent(condemnedPercent: 10), order, offers);
        PlantReturn counted = PlantReturn.Of(SaleCase.Alike(100), SaleCase.SeventyPercent(condemnedPercent: 10, includesCondemned: true), order, offers);

        // 100 birds with a chance of 0.9: 90 pass, give or take the square root of 100 x 0.9 x 0.1.
        taken.Packs[0].ExpectedPacks.Should().BeApproximately(90, 1e-9);
        taken.Packs[0].PacksDeviation.Should().BeApproximately(3, 1e-7);
        taken.Packs[0].PackWeight.Kilograms.Should().BeApproximately(2.1, 1e-9, "those that pass weigh what they weigh");
        (counted.Packs[0].ExpectedPacks, counted.Packs[0].PacksDeviation).Should().Be((100, 0));
    }

    private static PlantReturn Return(params PackOffer[] offers) => PlantReturn.Of(
        SaleCase.Alike(100),
        SaleCase.SeventyPercent(cuttingLossPercent: 10),
        CutOrder.HeaviestFirst(
            CutOrderLine.Of(SaleCase.InTwo("fronts", "front", 60, "rear"), Probability.FromPercent(20)),
            CutOrderLine.Of(SaleCase.InTwo("breasts", "breast", 50, "leg"), Probability.FromPercent(30)),
            CutOrderLine.Of(null, Probability.FromPercent(50))),
        offers,
        PlantCharges.Of(Money.Of(2), Money.Of(0.5)));
}
