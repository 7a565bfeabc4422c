using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>From birds to money: what sells counts, what stays does not, and cutting must pay.</summary>
public sealed class PlantReturnTests
{
    [Fact]
    public void Equal_birds_and_unlimited_demand_give_what_a_pencil_gives()
    {
        // 100 birds of 3 kg alike: carcass 2.16 kg, 40 cut with 1 % loss; nothing condemned.
        DeliveredBirds birds = DeliveredBirds.Of(100, WeightDistribution.Of(Mass.FromKilograms(3), 0), LiveState.FullFed);
        PlantConditions plant = new() { Dressing = SaleCase.Plant.Dressing, Condemned = Condemnation.None, CuttingLoss = Probability.FromPercent(1) };

        PlantReturn back = PlantReturn.Of(birds, plant, SaleCase.CutHeaviest(40), SaleCase.Unlimited, SaleCase.Charges);

        back.Lines.Select(line => Math.Round(line.ExpectedBirds, 9)).Should().Equal(40, 60);
        Pack("whole").ExpectedPacks.Should().BeApproximately(60, 1e-9);
        Pack("thigh").ExpectedPacks.Should().BeApproximately(20, 1e-9);
        Pack("thigh").PackWeight.Kilograms.Should().BeApproximately(4 * 2.16 * 0.99 * 0.1709 / 2, 1e-9);
        Pack("wing").ExpectedPacks.Should().BeApproximately(13, 1e-9, "80 wings are 13 packs of six and two over");
        Pack("wing").Loose.Kilograms.Should().BeApproximately(2 * 2.16 * 0.99 * 0.1068 / 2, 1e-9);
        double cuts = 40 * 2.16 * 0.99;
        double wing = 13.0 * 6 / 80;
        double revenue = (60 * 2.16 * 9) + (cuts * ((18 * 0.3623) + (11 * 0.1709) + (9 * 0.1420) + (9 * 0.1068 * wing) + (3 * 0.2180)));
        back.Revenue.Amount.Should().BeApproximately(revenue, 1e-6);
        back.Value.Amount.Should().BeApproximately(revenue - (40 * 1.5) - (0.2 * (60 + 40 + 20 + 20 + 13 + 40)), 1e-6);
        back.ValuePerLiveKilogram.Should().BeApproximately(back.Value.Amount / 300, 1e-9);
        back.BreakEvenPremiumPerKilogram!.Value.Amount.Should().BeApproximately(((40 * 1.5) + (0.2 * 133) + (40 * 2.16 * 0.01 * 9)) / cuts, 1e-9);
        back.PremiumPerKilogram!.Value.Amount.Should().BeApproximately(((revenue - (60 * 2.16 * 9)) / cuts) - 9, 1e-6);
        back.NotPacked.Kilograms.Should().BeApproximately(0, 1e-9);
        back.Cautions.Select(caution => caution.Code).Should().Contain("demand-unlimited");

        PackSale Pack(string piece) => back.Packs.Single(pack => pack.Offer.Piece == piece);
    }

    [Fact]
    public void Orders_filled_packs_short_and_packs_left()
    {
        PackOffer[] offers =
        [
            SaleCase.ByKilogram("whole", 1, 9, Demand.Ordered(40)).LeftOver(5, UnitPrice.FromAmountPerKilogram(4)),
            PackOffer.ByPack("breast", 2, Money.Of(12), Demand.Ordered(100)),
        ];
        DeliveredBirds birds = DeliveredBirds.Of(100, WeightDistribution.Of(Mass.FromKilograms(3), 0), LiveState.FullFed);
        PlantConditions plant = new() { Dressing = SaleCase.Plant.Dressing, Condemned = Condemnation.None };

        PlantReturn back = PlantReturn.Of(birds, plant, SaleCase.CutHeaviest(40), offers);

        PackSale whole = back.Packs[0], breast = back.Packs[1];
        (whole.PacksSold, whole.PacksLeft, whole.PacksFrozen, whole.PacksShort).Should().Be((40, 20, 5, 0));
        (breast.PacksSold, breast.PacksLeft, breast.PacksShort).Should().Be((40, 0, 60));
        whole.OrdersFilled!.Value.Percent.Should().Be(100);
        breast.OrdersFilled!.Value.Percent.Should().Be(40);
        breast.Revenue.Amount.Should().BeApproximately(480, 1e-9);
        whole.LeftRevenue.Amount.Should().BeApproximately(5 * 2.16 * 4, 1e-9);
        back.NotPacked.Kilograms.Should().BeApproximately(40 * 2.16 * (1 - 0.3623), 1e-9, "legs, wings and frames have no offer");
        back.Cautions.Select(caution => caution.Code).Should().Contain(["pieces-without-offer", "cutting-loss-not-stated"]);
    }

    [Fact]
    public void Heavier_birds_to_the_knife_leave_the_lighter_ones_whole()
    {
        PlantReturn back = PlantReturn.Of(SaleCase.Flock(), SaleCase.Plant, SaleCase.CutHeaviest(40), SaleCase.Unlimited);

        double Mean(int line) => back.Lines[line].LiveWeight.Kilograms / back.Lines[line].ExpectedBirds;
        back.Lines.Sum(line => line.LiveWeight.Kilograms).Should().BeApproximately(300 * 2.95, 1e-6);
        back.Lines.Sum(line => line.Carcass.Kilograms).Should().BeApproximately(back.Balance.Carcass.Weight.Kilograms, 1e-6);
        Mean(0).Should().BeGreaterThan(3.2);
        Mean(1).Should().BeLessThan(2.8);
    }

    [Fact]
    public void Lighter_carcasses_are_worth_less()
    {
        PlantConditions plant = new() { Dressing = Dressings.For(BirdType.Fast), AtKilling = SaleCase.TwelveHours };
        PlantReturn likely = PlantReturn.Of(SaleCase.Flock(), plant, SaleCase.CutHeaviest(40), SaleCase.Unlimited);

        double Carcass(PlantReturn back) => back.Lines.Sum(line => line.Carcass.Kilograms);
        LikelyRange<Mass> range = likely.Balance.Lines.Single(line => line.Kind == BalanceKind.Carcass).Weight;
        Carcass(likely.WithLightCarcasses()).Should().BeApproximately(range.Low.Kilograms, 1e-6);
        Carcass(likely.WithHeavyCarcasses()).Should().BeApproximately(range.High.Kilograms, 1e-6);
        likely.WithLightCarcasses().Value.Should().BeLessThan(likely.Value);
        likely.WithHeavyCarcasses().Value.Should().BeGreaterThan(likely.Value);
    }

    /// <summary>From a CV of a sixth on the lightest cell of weights lies below 0, and a power of it is no number: one cell made none of the whole order.</summary>
    [Theory]
    [InlineData(0.10)]
    [InlineData(0.17)]
    [InlineData(0.30)]
    public void Pieces_by_exponents_are_the_carcass_however_uneven_the_flock(double cv)
    {
        CutOrder order = CutOrder.AsTheyCome(CutOrderLine.Of(CutSets.Rudn42Days.Growing(CutSets.TwoPointExponents, CutSets.Rudn42DaysCarcass), Probability.FromPercent(100)));
        LineYield line = PlantReturn.Of(SaleCase.Flock(cv: cv), SaleCase.Plant, order, []).Lines.Single();

        (line.Pieces.Sum(piece => piece.Weight.Kilograms) + line.CuttingLoss.Kilograms).Should().BeApproximately(line.Carcass.Kilograms, 1e-6);
    }

    [Fact]
    public void Bands_of_weight_must_take_every_bird_once_and_shares_be_100_percent()
    {
        Action gap = () => CutOrder.ByWeight(CutOrderLine.Of(null, null, Mass.FromKilograms(2.5)), CutOrderLine.Of(CutSets.Rudn42Days, Mass.FromKilograms(2.6), null));
        Action shares = () => CutOrder.HeaviestFirst(CutOrderLine.Of(null, Probability.FromPercent(70)));
        Action twice = () => PlantReturn.Of(SaleCase.Flock(), SaleCase.Plant, CutOrder.AllWhole, [SaleCase.Limited[0], SaleCase.Limited[0].Weighing(Mass.FromKilograms(2), null)]);

        gap.Should().Throw<ArgumentException>().WithMessage("The bands of weight leave a gap or overlap*");
        shares.Should().Throw<ArgumentException>().WithMessage("The shares of the birds are 70 % together; expected 100 %.*");
        twice.Should().Throw<ArgumentException>().WithMessage("The packs \"1 whole\" and \"1 whole from 2 kg (4.41 lb)\" claim the same pieces*");
    }

    [Fact]
    public void Without_limit_the_price_list_says_cut_everything()
    {
        CutAdvice advice = CutAdvice.Of(SaleCase.Flock(), SaleCase.Plant, CutSets.Rudn42Days, SaleCase.Unlimited, SaleCase.Charges);

        advice.Best.Share.Percent.Should().Be(100);
        advice.Reason.Should().StartWith("Cut every bird");
    }

    [Fact]
    public void With_limited_demand_cutting_everything_is_not_recommended_where_frames_and_drumsticks_stay_unsold()
    {
        CutAdvice advice = CutAdvice.Of(SaleCase.Flock(), SaleCase.Plant, CutSets.Rudn42Days, SaleCase.Limited, SaleCase.Charges);

        advice.Best.Share.Percent.Should().BeInRange(20, 60);
        advice.Best.Return.Value.Amount.Should().BeGreaterThan(1.2 * advice.All.Return.Value.Amount);
        advice.All.Return.Packs.Where(pack => pack.Offer.Piece is "frame" or "drumstick").Should().OnlyContain(pack => pack.PacksLeft > pack.PacksSold);
        advice.Reason.Should().Contain("With all cut, unsold:").And.Contain("frame").And.Contain("drumstick");
    }
}
