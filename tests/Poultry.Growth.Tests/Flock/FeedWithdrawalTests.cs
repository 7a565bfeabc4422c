using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Flock;

/// <summary>What birds lose off feed: one straight line, with its range.</summary>
public sealed class FeedWithdrawalTests
{
    [Fact]
    public void Twelve_hours_of_which_six_on_the_road()
    {
        LikelyRange<Probability> lost = FeedWithdrawal.Usual.ShareLost(Duration.FromHours(12), Duration.FromHours(6));

        lost.Low.Percent.Should().BeApproximately((12 * 0.2) + (6 * 0.05), 1e-12);
        lost.Likely.Percent.Should().BeApproximately((12 * 0.3) + (6 * 0.11), 1e-12);
        lost.High.Percent.Should().BeApproximately((12 * 0.4) + (6 * 0.17), 1e-12);
    }

    [Fact]
    public void A_rate_of_one_s_own_replaces_the_trade_s()
    {
        FeedWithdrawal own = FeedWithdrawal.Of(LikelyRange<double>.Exactly(0.25), LikelyRange<double>.Exactly(0));

        own.ShareLost(Duration.FromHours(10), Duration.FromHours(4)).Should().Be(LikelyRange<Probability>.Exactly(Probability.FromPercent(2.5)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3, "withdrawal-first-hours")]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(30, "withdrawal-too-long")]
    public void Outside_what_was_measured_it_says_so(double hours, params string[] codes) =>
        FeedWithdrawal.CautionsAt(Duration.FromHours(hours)).Select(caution => caution.Code).Should().Equal(codes);

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(49, 0)]
    [InlineData(6, 7)]
    public void Times_that_make_no_sense_are_refused(double offFeedHours, double roadHours)
    {
        Action ask = () => FeedWithdrawal.Usual.ShareLost(Duration.FromHours(offFeedHours), Duration.FromHours(roadHours));

        ask.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*h is not allowed; expected 0 to*");
    }

    [Fact]
    public void A_range_out_of_order_is_refused()
    {
        Action reversed = () => LikelyRange<double>.Of(0.4, 0.3, 0.2), unknown = () => LikelyRange<double>.Of(double.NaN, 0.3, 0.4);

        reversed.Should().Throw<ArgumentException>().WithMessage("0.4, 0.3, 0.2 is no range; expected low, likely and high in this order.*");
        unknown.Should().Throw<ArgumentException>();
        LikelyRange<Mass>.Of(Mass.FromGrams(900), Mass.FromKilograms(1), Mass.FromKilograms(2)).ToString().Should().Be("1 kg (2.205 lb; 0.9 to 2 kg, 1.984 to 4.409 lb)");
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(49)]
    public void Cautions_are_asked_for_times_that_make_sense(double offFeedHours)
    {
        Action ask = () => FeedWithdrawal.CautionsAt(Duration.FromHours(offFeedHours));

        ask.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("offFeed");
    }
}
