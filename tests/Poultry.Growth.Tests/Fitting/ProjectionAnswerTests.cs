using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>The answers of a projection fit each other: mean, bird, bands, chances, ages, and the worth of a weigh-in.</summary>
public sealed class ProjectionAnswerTests
{
    private static Projection CheckCase => Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);
    private static readonly Age EightWeeks = Age.FromWeeks(8);

    /// <summary>The same share the other way round: not birds about a curve that is in doubt, but a curve in doubt about each of many kinds of bird.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void The_share_of_birds_above_a_weight_is_that_of_the_curve_for_every_kind_of_bird(int weighIns)
    {
        Projection projection = weighIns == 0 ? Projection.Of(ProjectionCases.Measured) : Projection.Of(WeighInSeries.Of(ProjectionCases.CheckCase.Take(weighIns)), ProjectionCases.Measured);
        foreach (double kilograms in (double[])[2.5, 3.3, 4, 4.7, 6])
        {
            double sum = 0, weights = 0;
            for (double z = -6; z <= 6; z += 0.02)
            {
                double weight = Math.Exp(-z * z / 2);
                double chance = projection.ChanceMeanReaches(Mass.FromKilograms(kilograms / (1 + (projection.CoefficientOfVariation * z))), EightWeeks).Fraction;
                (sum, weights) = (sum + (weight * chance), weights + weight);
            }

            projection.ShareAbove(Mass.FromKilograms(kilograms), EightWeeks).Fraction.Should().BeApproximately(sum / weights, 2e-4);
        }
    }

    [Fact]
    public void No_bird_weighs_less_than_nothing_however_wide_the_spread_weighed()
    {
        WeighInSeries inTwoUnits = WeighInSeries.Of([
            WeighIn.Mean(Age.FromDays(21), Mass.FromKilograms(0.8), 30, Mass.FromKilograms(1.8)),
            WeighIn.Mean(Age.FromDays(28), Mass.FromKilograms(1.4), 30, Mass.FromKilograms(3.1)),
        ]);

        Estimate<Mass> bird = Projection.Of(inTwoUnits, ProjectionCases.Measured).BirdAt(EightWeeks);

        bird.Interval.Low.Should().Be(Mass.Zero);
        bird.Value.Kilograms.Should().BeGreaterThan(0);
    }

    [Fact]
    public void A_bird_is_less_sure_than_a_weigh_in_and_that_less_than_the_mean()
    {
        double Width(Estimate<Mass> estimate) => (estimate.Interval.High!.Value - estimate.Interval.Low!.Value).Kilograms;

        Width(CheckCase.MeanAt(EightWeeks)).Should().BeLessThan(Width(CheckCase.NextWeighInAt(EightWeeks, 100)));
        Width(CheckCase.NextWeighInAt(EightWeeks, 100)).Should().BeLessThan(Width(CheckCase.NextWeighInAt(EightWeeks, 5)));
        Width(CheckCase.NextWeighInAt(EightWeeks, 5)).Should().BeLessThan(Width(CheckCase.BirdAt(EightWeeks)));
    }

    [Fact]
    public void Bands_sum_to_1_and_agree_with_a_bird_picked_at_random()
    {
        Estimate<Mass> bird = CheckCase.BirdAt(EightWeeks);
        IReadOnlyList<WeightBand> bands = CheckCase.ShareInBands(EightWeeks, bird.Interval.Low!.Value, bird.Value, bird.Interval.High!.Value);

        bands.Sum(band => band.Share.Fraction).Should().BeApproximately(1, 1e-12);
        bands.Select(band => band.Share.Fraction).Zip([0.05, 0.45, 0.45, 0.05], (ours, asked) => Math.Abs(ours - asked)).Max().Should().BeLessThan(1e-9);
        CheckCase.ShareAbove(bird.Value, EightWeeks).Fraction.Should().BeApproximately(0.5, 1e-9);
        bands[0].ToString().Should().StartWith("below ").And.EndWith(": 5 %");
    }

    [Fact]
    public void The_chance_of_a_weight_is_one_half_at_the_median_and_one_in_twenty_at_the_upper_limit()
    {
        Estimate<Mass> mean = CheckCase.MeanAt(EightWeeks);

        CheckCase.ChanceMeanReaches(mean.Value, EightWeeks).Fraction.Should().BeApproximately(0.5, 1e-9);
        CheckCase.ChanceMeanReaches(mean.Interval.High!.Value, EightWeeks).Fraction.Should().BeApproximately(0.05, 1e-9);
    }

    [Fact]
    public void The_age_of_a_weight_is_when_median_and_limits_have_it()
    {
        Mass weight = Mass.FromKilograms(3.2);
        Estimate<Age> age = CheckCase.AgeAt(weight)!;

        CheckCase.MeanAt(age.Value).Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
        CheckCase.MeanAt(age.Interval.Low!.Value).Interval.High!.Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
        CheckCase.MeanAt(age.Interval.High!.Value).Interval.Low!.Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
    }

    [Fact]
    public void A_weight_that_may_never_come_has_an_open_age_and_one_that_will_not_has_none()
    {
        CheckCase.AgeAt(Mass.FromKilograms(6.5))!.Interval.High.Should().BeNull();
        CheckCase.AgeAt(Mass.FromKilograms(60)).Should().BeNull();
    }

    /// <summary>One sex, normal: 84.13 % of the birds weigh as much when the mean is 1/(1 - c) times the weight, c = .10.</summary>
    [Fact]
    public void A_share_of_the_birds_comes_later_than_the_mean()
    {
        Estimate<Age> most = CheckCase.AgeWhenShareReaches(Probability.FromFraction(0.8413447461), Mass.FromKilograms(2.7))!;

        most.Value.Days.Should().BeApproximately(CheckCase.AgeAt(Mass.FromKilograms(3.0))!.Value.Days, 1e-4);
    }

    [Fact]
    public void Uniformity_of_one_sex_is_that_of_the_normal_curve() =>
        CheckCase.UniformityAt(EightWeeks).Fraction.Should().BeApproximately(0.6827, 0.00005, "growth evidence: CV 10 %, 68.3 %");

    /// <summary>The worth is foretold without a fit. Here each of the fifteen weigh-ins is made and the whole projection done again; what differs is Laplace's approximation, at another optimum.</summary>
    [Theory]
    [InlineData(42, 30)]
    [InlineData(49, 10)]
    [InlineData(56, 100)]
    public void What_a_weigh_in_is_worth_is_what_fits_to_its_outcomes_say(double days, int birds)
    {
        double Width(Projection projection)
        {
            Interval<Mass> range = projection.MeanAt(EightWeeks).Interval;
            return (range.High!.Value - range.Low!.Value).Kilograms;
        }

        ProjectionOptions scatter = new() { CoefficientOfVariation = CheckCase.CoefficientOfVariation, WeighInError = CheckCase.WeighInError };
        Mass Outcome(double share)
        {
            Estimate<Mass> seen = CheckCase.NextWeighInAt(Age.FromDays(days), birds, share == 0.5 ? 0.9 : Math.Abs((2 * share) - 1));
            return share < 0.5 ? seen.Interval.Low!.Value : share > 0.5 ? seen.Interval.High!.Value : seen.Value;
        }

        double then = Enumerable.Range(0, 15).Average(at => Width(Projection.Of(
            WeighInSeries.Of([.. ProjectionCases.CheckCase, WeighIn.Mean(Age.FromDays(days), Outcome((at + 0.5) / 15), birds)]), ProjectionCases.Measured, scatter)));

        CheckCase.WeighInValue(Age.FromDays(days), birds, EightWeeks).WidthThenFraction.Should().BeApproximately(then / CheckCase.MeanAt(EightWeeks).Value.Kilograms, 0.03 * then);
    }

    [Fact]
    public void A_further_weigh_in_narrows_and_a_later_and_larger_one_more()
    {
        double Then(double days, int birds) => CheckCase.WeighInValue(Age.FromDays(days), birds, EightWeeks).WidthThenFraction;
        WeighInWorth worth = CheckCase.WeighInValue(Age.FromDays(42), 30, EightWeeks);
        Estimate<Mass> now = CheckCase.MeanAt(EightWeeks);

        worth.WidthNowFraction.Should().BeApproximately((now.Interval.High!.Value - now.Interval.Low!.Value).Kilograms / now.Value.Kilograms, 1e-9);
        Then(35, 30).Should().BeLessThan(worth.WidthNowFraction).And.BeGreaterThan(Then(42, 30));
        Then(42, 30).Should().BeGreaterThan(Then(49, 30));
        Then(42, 5).Should().BeGreaterThan(Then(42, 100));
    }
}
