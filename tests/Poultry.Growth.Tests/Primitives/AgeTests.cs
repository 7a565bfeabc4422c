using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Primitives;

public class AgeTests
{
    private static readonly DateOnly Placed = new(2027, 4, 12);

    [Theory]
    [InlineData(0, 21, 21)]
    [InlineData(1, 21, 20)]
    [InlineData(1.5, 21, 20)]
    [InlineData(0.3, 21.3, 21)]
    [InlineData(0, 20.01, 21)]
    [InlineData(3, 2, 0)]
    public void An_age_is_reached_on_the_first_day_on_which_the_birds_are_as_old(double atPlacement, double days, int after) =>
        Age.FromDays(days).ReachedOn(Placed, Age.FromDays(atPlacement)).Should().Be(Placed.AddDays(after));

    [Fact]
    public void The_age_on_a_day_is_reached_on_that_day()
    {
        for (int day = 0; day < 100; day++)
        {
            Age atPlacement = Age.FromDays(day / 7.0);
            Age.On(Placed.AddDays(day), Placed, atPlacement).ReachedOn(Placed, atPlacement).Should().Be(Placed.AddDays(day));
        }
    }

    [Fact]
    public void A_day_beyond_the_calendar_is_refused() =>
        Age.FromDays(1e300).Invoking(age => age.ReachedOn(Placed, Age.FromDays(0))).Should().Throw<ArgumentOutOfRangeException>();
}
