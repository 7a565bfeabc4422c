using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Flock;

public class HeadCountPathTests
{
    private static readonly Survival TwoPercentAWeek = Survival.ByWeek([Probability.FromPercent(2)], logSpread: 0);

    [Fact]
    public void Birds_are_counted_as_long_as_deaths_were_recorded_and_expected_afterwards()
    {
        HeadCountPath path = HeadCountPath.Recorded(
            300, Age.FromDays(1), [Deaths.Of(Age.FromDays(9), 2), Deaths.Of(Age.FromDays(3), 4)], TwoPercentAWeek);

        path.BirdsAt(Age.FromDays(1)).Should().Be(300);
        path.BirdsAt(Age.FromDays(2.9)).Should().Be(300);
        path.BirdsAt(Age.FromDays(3)).Should().Be(296);
        path.BirdsAt(Age.FromDays(9)).Should().Be(294);
        path.BirdsAt(Age.FromDays(16)).Should().BeApproximately(294 * 0.98, 1e-9);
        path.CountedUntil.Should().Be(Age.FromDays(9));
    }

    [Fact]
    public void A_day_without_deaths_says_that_all_were_alive_until_then()
    {
        HeadCountPath path = HeadCountPath.Recorded(100, Age.Hatch, [Deaths.Of(Age.FromDays(21), 0)], TwoPercentAWeek);

        path.BirdsAt(Age.FromDays(21)).Should().Be(100);
        path.ChanceOfMoreThan(99, Age.FromDays(21)).Fraction.Should().Be(1);
        path.ChanceOfMoreThan(99, Age.FromDays(28)).Fraction.Should().BeApproximately(Math.Pow(0.98, 100), 1e-12, "all hundred live through the week");
    }

    [Fact]
    public void A_batch_without_loss_stays_as_it_is()
    {
        HeadCountPath.Constant(250).BirdsAt(Age.FromDays(400)).Should().Be(250);
        HeadCountPath.Constant(250).ChanceOfMoreThan(250, Age.FromDays(400)).Fraction.Should().Be(0);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => HeadCountPath.Constant(0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Deaths.Of(Age.Hatch, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => HeadCountPath.Recorded(10, Age.FromDays(2), [Deaths.Of(Age.FromDays(1), 1)], TwoPercentAWeek))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => HeadCountPath.Recorded(10, Age.Hatch, [Deaths.Of(Age.FromDays(1), 11)], TwoPercentAWeek))
            .Should().Throw<ArgumentException>().WithMessage("11 birds died; expected at most the 10 placed*");
        FluentActions.Invoking(() => HeadCountPath.Expected(10, Age.FromDays(2), TwoPercentAWeek).BirdsAt(Age.FromDays(1))).Should().Throw<ArgumentOutOfRangeException>();
    }
}
