using Poultry.Growth.Carcass;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>The advice in words, for ten birds of 3 kg alike: carcass 2.1 kg, a pack of fronts 1.26 kg, one of rears 0.84 kg.</summary>
public sealed class CutAdviceTests
{
    /// <summary>Whole 2.1 x 10 x 10 = 210; cut 10 x 2.1 x 1 = 21.</summary>
    [Fact]
    public void Pieces_that_bring_little_leave_every_bird_whole() => Reason(Offer("whole", 1, 10, 10), Offer("front", 2, 1, 10), Offer("rear", 2, 1, 10))
        .Should().Be("Leave every bird whole: worth 210.00, none cut 210.00, all cut 21.00.");

    /// <summary>
    /// None: 5 whole, 105. Half: 105 + 5 x 1.26 x 20 + 5 x 0.84 x 5 = 252. All: 126 + 9 x 0.84 x 5 = 163.80, and 6.3 kg of fronts and 0.84 kg of rears are left:
    /// the heavier first, and one pack is worth a word.
    /// </summary>
    [Fact]
    public void Where_half_the_birds_are_worth_most_it_says_what_the_other_half_would_leave() => Reason(Offer("whole", 1, 10, 5), Offer("rear", 2, 5, 9), Offer("front", 2, 20, 5))
        .Should().Be("Cut the 5 heaviest of 10 birds (50 %): worth 252.00, none cut 105.00, all cut 163.80. With all cut, unsold: 5 packs of 2 front, 1 pack of 2 rear.");

    /// <summary>All: 10 x 1.26 x 20 + 9 x 0.84 x 5 = 289.80; none: 21.</summary>
    [Fact]
    public void Where_all_are_worth_most_what_stays_is_no_reason_against_it() => Reason(Offer("whole", 1, 1, 10), Offer("front", 2, 20, 10), Offer("rear", 2, 5, 9))
        .Should().Be("Cut every bird: worth 289.80, none cut 21.00, all cut 289.80.");

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void It_tries_two_to_a_hundred_shares(int steps, bool allowed)
    {
        Func<CutAdvice> ask = () => Advice(steps, Offer("whole", 1, 10, 10));

        if (allowed)
        {
            ask().Shares.Should().HaveCount(steps + 1);
        }
        else
        {
            ask.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*2 to 100*");
        }
    }

    private static string Reason(params PackOffer[] offers) => Advice(2, offers).Reason;

    private static CutAdvice Advice(int steps, params PackOffer[] offers) =>
        CutAdvice.Of(SaleCase.Alike(10), SaleCase.SeventyPercent(), SaleCase.InTwo("two", "front", 60, "rear"), offers, steps: steps);

    private static PackOffer Offer(string piece, int perPack, double price, int ordered) => SaleCase.ByKilogram(piece, perPack, price, Demand.Ordered(ordered));
}
