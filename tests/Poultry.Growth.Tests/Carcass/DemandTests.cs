using Poultry.Growth.Carcass;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>What sells of an uncertain demand.</summary>
public sealed class DemandTests
{
    /// <summary>By the midpoint rule over the triangular density, in a hundred thousand steps.</summary>
    [Theory]
    [InlineData(10, 20, 40)]
    [InlineData(10, 10, 40)]
    [InlineData(10, 40, 40)]
    [InlineData(0, 5, 6)]
    public void Packs_left_over_are_the_integral_over_the_range(double low, double likely, double high)
    {
        Demand demand = Demand.Of(low, likely, high);
        foreach (double packs in new[] { 0, low, 0.5 * (low + likely), likely, 0.5 * (likely + high), high, high + 7 })
        {
            double sum = 0;
            const int Steps = 100_000;
            for (int step = 0; step < Steps; step++)
            {
                double asked = low + ((step + 0.5) * (high - low) / Steps);
                double density = asked < likely ? 2 * (asked - low) / ((high - low) * (likely - low)) : 2 * (high - asked) / ((high - low) * (high - likely));
                sum += density * Math.Max(0, packs - asked) * (high - low) / Steps;
            }

            demand.LeftOver(packs).Should().BeApproximately(sum, 1e-6, "{0} packs of {1}", packs, demand);
        }
    }

    [Fact]
    public void Ordered_packs_are_exact_and_unlimited_leaves_nothing()
    {
        Demand.Ordered(12).LeftOver(20).Should().Be(8);
        Demand.Ordered(12).LeftOver(12).Should().Be(0);
        Demand.Unlimited.LeftOver(1e6).Should().Be(0);
        (Demand.Unlimited.Packs, Demand.Unlimited.ToString()).Should().Be((null, "unlimited"));
        Demand.Of(25, 40, 60).ToString().Should().Be("40 (25 to 60)");
    }

    [Theory]
    [InlineData(-1, 0, 1)]
    [InlineData(3, 2, 4)]
    [InlineData(0, 1, double.PositiveInfinity)]
    [InlineData(double.NaN, 1, 2)]
    public void A_guess_that_makes_no_sense_is_refused(double low, double likely, double high)
    {
        Action guess = () => Demand.Of(low, likely, high);

        guess.Should().Throw<ArgumentException>();
    }
}
