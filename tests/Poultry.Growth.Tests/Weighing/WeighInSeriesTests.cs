using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class WeighInSeriesTests
{
    private static WeighIn Mean(double days, double grams, int birds = 20, double? deviation = null) =>
        WeighIn.Mean(Age.FromDays(days), Mass.FromGrams(grams), birds, deviation is { } spread ? Mass.FromGrams(spread) : null);

    [Fact]
    public void Weigh_ins_stand_by_age_and_those_of_one_day_in_the_order_given()
    {
        WeighIn late = Mean(14, 440), first = Mean(7, 171), second = Mean(7, 169);

        WeighInSeries series = WeighInSeries.Of(late, first, second);

        series.Should().Equal(first, second, late);
        series.BirdsWeighed.Should().Be(60);
        series.ToString().Should().Be("3 weigh-ins of 60 birds, 7 d to 14 d");
    }

    [Fact]
    public void No_weigh_in_is_no_series() =>
        FluentActions.Invoking(() => WeighInSeries.Of()).Should().Throw<ArgumentException>().WithMessage("*at least one*");

    [Fact]
    public void The_pooled_spread_weighs_each_weigh_in_by_its_degrees_of_freedom()
    {
        WeighInSeries series = WeighInSeries.Of(Mean(7, 200, 11, 20), Mean(14, 500, 31, 60), Mean(21, 900, 50));

        series.PooledCoefficientOfVariation.Should().BeApproximately(Math.Sqrt(((10 * 0.01) + (30 * 0.0144)) / 40), 1e-12);
    }

    [Fact]
    public void Without_a_spread_there_is_no_pooled_one() =>
        WeighInSeries.Of(Mean(7, 171), WeighIn.Birds(Age.FromDays(14), Mass.FromGrams(440))).PooledCoefficientOfVariation.Should().BeNull();

    [Fact]
    public void Flagged_birds_and_weigh_ins_stay_until_they_are_left_out_by_name()
    {
        WeighIn birds = WeighIn.Birds(Age.FromDays(7), [.. new[] { 171.0, 164, 1800, 180 }.Select(grams => Mass.FromGrams(grams))]);
        WeighInSeries series = WeighInSeries.Of(birds, Mean(14, 440), Mean(21, 9000), Mean(28, 1480), Mean(35, 2100));

        WeighInSeries rest = series.Without(series.Suspicions);

        series.Should().HaveCount(5);
        rest.Should().HaveCount(4);
        rest[0].Weights.Select(weight => weight.Grams).Should().Equal(171, 164, 180);
        rest.Select(weighIn => weighIn.Age.Days).Should().Equal(7, 14, 28, 35);
        rest.Suspicions.Should().BeEmpty();
    }

    [Fact]
    public void Suspicions_of_another_series_are_refused()
    {
        WeighInSeries wrong = WeighInSeries.Of(Mean(7, 171), Mean(14, 4400), Mean(21, 900));

        FluentActions.Invoking(() => WeighInSeries.Of(Mean(7, 171)).Without(wrong.Suspicions))
            .Should().Throw<ArgumentException>().WithMessage("*14 d is not of this series*");
    }

    [Fact]
    public void Leaving_out_everything_is_refused()
    {
        WeighInSeries series = WeighInSeries.Of(Mean(35, 2000, 20, 1900));

        FluentActions.Invoking(() => series.Without(series.Suspicions)).Should().Throw<ArgumentException>().WithMessage("*No weigh-in would be left*");
    }
}
