using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

public class ChickOrderTests
{
    private static readonly Age Killing = Age.FromDays(56);
    private static readonly Probability NineInTen = Probability.FromFraction(0.9);

    /// <summary>20 whole birds; 45 packs of 2 breasts are 45 birds, 10 packs of 4 thighs 20, so 45 are cut; of 67 with one in fifty lost 65 are left.</summary>
    [Fact]
    public void Orders_in_packs_are_birds_by_the_piece_of_which_most_is_ordered()
    {
        PackOffer Pack(string piece, int pieces) => PackOffer.ByPack(piece, pieces, Money.Of(10), Demand.Unlimited);
        (PackOffer, int)[] ordered = [(Pack("whole", 1), 20), (Pack("Breast", 2), 45), (Pack("thigh", 4), 10)];

        BirdsForPacks.Of(ordered, CutSets.Rudn42Days, default).Should().Be(65);
        BirdsForPacks.Of(ordered, CutSets.Rudn42Days, Probability.FromPercent(2)).Should().Be(67);
        BirdsForPacks.Of([(Pack("whole", 1), 21)], null, Probability.FromPercent(30)).Should().Be(30, "seven in ten of thirty are left, and not a rounding more are needed");
        BirdsForPacks.Of([(Pack("breast", 2), 4), (Pack("breast", 4), 3)], CutSets.InPieces(CutSets.Rudn42Days, 10), default).Should().Be(5, "twenty pieces, four a bird");
        FluentActions.Invoking(() => BirdsForPacks.Of(ordered, null, default)).Should().Throw<ArgumentException>().WithMessage("*\"Breast\" is none of whole birds*");
        FluentActions.Invoking(() => BirdsForPacks.Of([], null, default)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Without_losses_the_order_is_the_birds_wanted() =>
        ChickOrder.Enough(300, NineInTen, Need(0, Survival.WithoutLoss)).Chicks.Should().Be(300);

    [Fact]
    public void The_order_is_the_smallest_that_is_enough()
    {
        ChickNeed need = Need(1, Survival.FastGrowingOutdoor);
        ChickOrder order = ChickOrder.Enough(300, NineInTen, need);

        order.ChanceOfEnough.Should().BeGreaterThanOrEqualTo(NineInTen);
        ChickOrder.Of(order.Chicks - 1, 300, need).ChanceOfEnough.Should().BeLessThan(NineInTen);
        order.Chicks.Should().BeInRange(350, 375, "ten percent are lost as a rule, nearly twenty in one batch of twenty");
    }

    [Fact]
    public void An_order_near_the_most_that_is_tried_is_found()
    {
        ChickNeed need = Need(5, Survival.WithoutLoss);
        ChickOrder order = ChickOrder.Enough(900_000, NineInTen, need);

        order.Chicks.Should().BeInRange(947_369, 948_000, "900,000 are 95 % of 947,369");
        ChickOrder.Of(order.Chicks - 1, 900_000, need).ChanceOfEnough.Should().BeLessThan(NineInTen);
        FluentActions.Invoking(() => ChickOrder.Enough(int.MaxValue, NineInTen, need)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*expected fewer losses*");
    }

    [Fact]
    public void Limits_are_held_against_the_birds_alive_at_their_age()
    {
        ChickNeed need = Need(0, Survival.FastGrowingOutdoor, BirdLimit.Of("plant", 300, Killing), BirdLimit.Of("brooder", 340, Age.FromDays(7)));
        ChickOrder order = ChickOrder.Of(334, 290, need);

        order.Limits[0].Exceeded.Percent.Should().BeInRange(30, 70, "three hundred are expected");
        order.Limits[1].Exceeded.Percent.Should().Be(0, "there are fewer chicks than places");
        order.Cautions.Select(caution => caution.Code).Should().Contain("limit-likely-exceeded").And.Contain("survival-assumed").And.Contain("large-losses");
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => ChickOrder.Enough(0, NineInTen, Need(0, Survival.WithoutLoss))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ChickOrder.Enough(300, Probability.FromFraction(0.3), Need(0, Survival.WithoutLoss))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0.5 to 0.999*");
        FluentActions.Invoking(() => Need(100, Survival.WithoutLoss)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ChickOrder.Enough(900_000, NineInTen, Need(90, Survival.WithoutLoss))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*expected fewer losses*");
    }

    private static ChickNeed Need(double percentInTransit, Survival survival, params IReadOnlyList<BirdLimit> limits) =>
        ChickNeed.Of(Probability.FromPercent(percentInTransit), Age.Hatch, Killing, survival, limits);
}
