using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Flock;

public class SurvivalTests
{
    private static readonly Age Booked = Age.FromDays(56);

    [Fact]
    public void Without_spread_the_weeks_multiply()
    {
        Survival survival = Survival.ByWeek([Probability.FromPercent(2), Probability.FromPercent(1)], logSpread: 0);

        survival.ShareAlive(Age.Hatch, Age.FromDays(7)).Fraction.Should().BeApproximately(0.98, 1e-12);
        survival.ShareAlive(Age.Hatch, Age.FromDays(28)).Fraction.Should().BeApproximately(0.98 * 0.99 * 0.99 * 0.99, 1e-12);
        survival.ShareAlive(Age.FromDays(3.5), Age.FromDays(10.5)).Fraction.Should().BeApproximately(Math.Sqrt(0.98 * 0.99), 1e-12);
    }

    [Fact]
    public void Outdoors_about_a_tenth_is_lost_to_eight_weeks_and_5_to_20_percent_in_nine_batches_of_ten()
    {
        Survival survival = Survival.FastGrowingOutdoor;

        (1 - survival.ShareAlive(Age.Hatch, Booked).Fraction).Should().BeInRange(0.09, 0.13);
        (1 - survival.ShareAliveInBatch(Age.Hatch, Booked, -1.645).Fraction).Should().BeApproximately(0.05, 0.005);
        (1 - survival.ShareAliveInBatch(Age.Hatch, Booked, 1.645).Fraction).Should().BeApproximately(0.20, 0.01);
    }

    [Fact]
    public void The_chances_of_every_count_have_the_mean_of_the_share_alive()
    {
        Survival survival = Survival.FastGrowingOutdoor;

        // The mean of a count is the sum of the chances of more than 0, 1, 2 and so on.
        double mean = Enumerable.Range(0, 300).Sum(birds => 1 - survival.ChanceAtMost(birds, 300, Age.Hatch, Booked).Fraction);

        mean.Should().BeApproximately(300 * survival.ShareAlive(Age.Hatch, Booked).Fraction, 1e-6);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => Survival.ByWeek([], 0)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Survival.ByWeek([Probability.FromPercent(100)], 0)).Should().Throw<ArgumentException>().WithMessage("*All birds die*");
        FluentActions.Invoking(() => Survival.ByWeek([Probability.FromPercent(1)], 2.5)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0 to 2*");
        FluentActions.Invoking(() => Survival.FastGrowingOutdoor.ShareAlive(Booked, Age.Hatch)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*56*");
    }
}
