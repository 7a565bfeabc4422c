using Poultry.Growth.Carcass;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Shares from two weights, each with its own denominator.</summary>
public sealed class WeighedSharesTests
{
    /// <summary>The arithmetic of the model's source: 68 g of 1700 g and of 1768 g.</summary>
    [Fact]
    public void Chill_water_is_another_share_of_the_hot_and_of_the_chilled_weight()
    {
        ChillWater water = ChillWater.Weighed(Mass.FromGrams(1700), Mass.FromGrams(1768));

        water.PercentRetainedOfHot.Should().BeApproximately(100 * 68 / 1700.0, 1e-9);
        water.PercentRetainedOfChilled.Should().BeApproximately(100 * 68 / 1768.0, 1e-9);
    }

    [Fact]
    public void Chill_water_in_one_line() => ChillWater.Of(4, 1.5).ToString().Should().Be("4 % taken up, 1.5 % dripped, of the weight before chilling");

    [Fact]
    public void Condemned_birds_are_a_share_of_all_live_weight_and_carcasses_of_passed_and_condemned()
    {
        Condemnation.ShareOfLive(Mass.FromKilograms(2.4), Mass.FromKilograms(1000)).Percent.Should().BeApproximately(0.24, 1e-12);
        Condemnation.ShareOfCarcass(Mass.FromKilograms(10), Mass.FromKilograms(990)).Percent.Should().BeApproximately(1, 1e-12, "10 of 1000, not of 990");
    }

    /// <summary>Four groups of one trial (70.89, 72.12, 70.84, 69.46 %): the root of their squares over three.</summary>
    [Fact]
    public void The_usual_spread_between_batches_is_that_of_the_published_groups()
    {
        double[] groups = [70.89, 72.12, 70.84, 69.46];

        DressingPool.UsualDeviation.Should().BeApproximately(Math.Sqrt(groups.Sum(group => Math.Pow(group - groups.Average(), 2)) / 3), 1e-9);
    }
}
