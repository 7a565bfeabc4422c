using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class PredictionTests
{
    private static GrowthFit Fit => GrowthFit.Of(Demo.SingleBirds());

    [Fact]
    public void A_bird_is_less_sure_than_a_weigh_in_and_that_less_than_the_mean()
    {
        Age age = Age.FromDays(45);
        double Width(Estimate<Mass> estimate) => (estimate.Interval.High!.Value - estimate.Interval.Low!.Value).Kilograms;

        double mean = Width(Fit.MeanAt(age));
        double many = Width(Fit.NextWeighInAt(age, 100));
        double few = Width(Fit.NextWeighInAt(age, 10));
        double bird = Width(Fit.BirdAt(age)!);

        mean.Should().BeLessThan(many);
        many.Should().BeLessThan(few);
        few.Should().BeLessThan(bird);
        bird.Should().Be(Width(Fit.NextWeighInAt(age, 1)));
    }

    [Fact]
    public void The_chance_of_the_catch_adds_as_a_variance()
    {
        // ln-interval: (ln high - ln low) / 2 = t sqrt(se² + s²/n), so the squares for n = 1 and 4 lie 3/4 s² t² apart.
        Age age = Age.FromDays(35);
        double Squared(Estimate<Mass> estimate) =>
            Math.Pow(Math.Log(estimate.Interval.High!.Value.Kilograms / estimate.Interval.Low!.Value.Kilograms) / 2, 2);

        double mean = Squared(Fit.MeanAt(age));
        double one = Squared(Fit.NextWeighInAt(age, 1));
        double four = Squared(Fit.NextWeighInAt(age, 4));

        (one - mean).Should().BeApproximately(4 * (four - mean), 1e-12);

        // t at .95 with 37 degrees of freedom: qt(.95, 37) = 1.687094 in R 4.2.2.
        Math.Sqrt(one - mean).Should().BeApproximately(1.687094 * Fit.ResidualStandardDeviation, 1e-6);
    }

    [Fact]
    public void Only_what_lies_beyond_the_last_weigh_in_carries_that_caution()
    {
        Fit.MeanAt(Age.FromDays(49)).Cautions.Should().NotContain(caution => caution.Code == "beyond-last-weigh-in");
        Fit.MeanAt(Age.FromDays(50)).Cautions.Should().ContainSingle(caution => caution.Code == "beyond-last-weigh-in")
            .Which.Text.Should().Contain("49 d").And.Contain("Gompertz").And.Contain("too narrow");
        Fit.AgeAt(Mass.FromKilograms(2.8))!.Cautions.Should().Contain(caution => caution.Code == "beyond-last-weigh-in");
    }

    [Fact]
    public void The_age_at_a_weight_holds_every_age_at_which_the_mean_may_have_it()
    {
        Mass target = Mass.FromKilograms(1.8);
        Estimate<Age> age = Fit.AgeAt(target)!;

        Fit.MeanAt(age.Value).Value.Kilograms.Should().BeApproximately(1.8, 1e-9);
        Fit.MeanAt(age.Interval.Low!.Value).Interval.High!.Value.Kilograms.Should().BeApproximately(1.8, 1e-6);
        Fit.MeanAt(age.Interval.High!.Value).Interval.Low!.Value.Kilograms.Should().BeApproximately(1.8, 1e-6);
    }

    [Fact]
    public void A_weight_near_the_mature_weight_may_never_come_and_a_heavier_one_does_not()
    {
        double mature = Fit.Parameters[0].Value;

        Fit.AgeAt(Mass.FromKilograms(0.95 * mature))!.Interval.High.Should().BeNull("the mature weight itself may be lower");
        Fit.AgeAt(Mass.FromKilograms(1.01 * mature)).Should().BeNull();
        Fit.Curve!.AgeAt(Mass.FromKilograms(1.01 * mature)).Status.Should().Be(AgeAtWeightStatus.AboveMatureWeight);
    }

    [Fact]
    public void Means_alone_do_not_say_how_far_birds_lie_apart_under_equal_variance()
    {
        GrowthFit.Of(Demo.Series(), errors: ErrorModel.EqualVariance).BirdAt(Age.FromDays(30)).Should().BeNull();
        GrowthFit.Of(Demo.SingleBirds(), errors: ErrorModel.EqualVariance).BirdAt(Age.FromDays(30)).Should().NotBeNull();
        GrowthFit.Of(Demo.MeansOfSingleBirds(), errors: ErrorModel.EqualVariance).BirdAt(Age.FromDays(30)).Should().NotBeNull();
    }

    [Fact]
    public void Known_sampling_error_gives_the_stated_width()
    {
        // One bird about a curve that many birds fix: half width z sqrt(0.12² + 0.02²), z = qnorm(.95) = 1.644854 in R 4.2.2.
        WeighInSeries many = WeighInSeries.Of(Demo.Means.Select(row => WeighIn.Mean(Age.FromDays(row.Days), Mass.FromGrams(row.Grams), 1_000_000)));
        GrowthFit fit = GrowthFit.Of(many, errors: ErrorModel.Sampling(0.12));
        Estimate<Mass> bird = fit.BirdAt(Age.FromDays(35))!;

        Math.Log(bird.Interval.High!.Value / bird.Value).Should().BeApproximately(1.644854 * 0.12, 1e-6);
        fit.DegreesOfFreedom.Should().Be(double.PositiveInfinity);
    }

    [Fact]
    public void A_curve_of_few_weigh_ins_far_from_its_end_says_that_it_is_an_extrapolation()
    {
        Fit.Cautions.Select(caution => caution.Code).Should().Contain("mature-weight-extrapolated");
        GrowthFit early = GrowthFit.Of(WeighInSeries.Of(Demo.Series().Take(5)));
        early.Cautions.Select(caution => caution.Code).Should().Contain("few-weigh-ins");
    }

    [Fact]
    public void Growth_that_hardly_bends_is_said_to_bound_no_mature_weight()
    {
        GrowthFit chick = GrowthFit.Of(Conformance.ChickWeight.ChickWeightData.Series("chick_1"), errors: ErrorModel.EqualVariance);

        chick.Status.Should().Be(FitStatus.Converged);
        chick.Cautions.Should().Contain(caution => caution.Code == "mature-weight-unbounded");
        chick.ProfileLimits(0.95)[0].High.Should().BeNull();
    }

    [Fact]
    public void Means_that_scatter_more_than_their_birds_explain_are_noticed()
    {
        WeighInSeries jumpy = WeighInSeries.Of(Demo.Means.Select((row, i) => WeighIn.Mean(
            Age.FromDays(row.Days), Mass.FromGrams(row.Grams * (i % 2 == 0 ? 1.06 : 0.94)), 60, Mass.FromGrams(0.1 * row.Grams))));

        GrowthFit.Of(jumpy).Cautions.Should().Contain(caution => caution.Code == "weigh-ins-scatter");
        GrowthFit.Of(jumpy, errors: ErrorModel.Sampling()).Cautions.Should().Contain(caution => caution.Code == "weigh-ins-scatter");
        GrowthFit.Of(jumpy, errors: ErrorModel.Sampling(weighInError: 0.06)).Cautions.Should().NotContain(caution => caution.Code == "weigh-ins-scatter");
        Fit.Cautions.Should().NotContain(caution => caution.Code == "weigh-ins-scatter");
    }

    [Fact]
    public void A_spread_that_nobody_measured_is_called_assumed()
    {
        GrowthFit.Of(Demo.Series(), errors: ErrorModel.Sampling()).Cautions.Should().Contain(caution => caution.Code == "spread-assumed");
        GrowthFit.Of(Demo.SingleBirds(), errors: ErrorModel.Sampling()).Cautions.Should().NotContain(caution => caution.Code == "spread-assumed");
    }

    [Fact]
    public void Residuals_are_what_was_weighed_less_what_is_fitted()
    {
        foreach (FitResidual residual in Fit.Residuals())
        {
            (residual.WeighIn.MeanWeight - residual.Fitted).Kilograms.Should().BeApproximately(residual.Difference.Kilograms, 1e-12);
            residual.Fitted.Kilograms.Should().BeApproximately(Fit.Curve!.WeightAt(residual.WeighIn.Age).Kilograms, 1e-9);
            double deviation = Fit.ResidualStandardDeviation * residual.Fitted.Kilograms / Math.Sqrt(residual.WeighIn.BirdsWeighed);
            residual.Standardised.Should().BeApproximately(residual.Difference.Kilograms / deviation, 1e-9);
        }
    }

    [Fact]
    public void A_law_that_has_no_weight_so_early_says_so()
    {
        WeighInSeries late = WeighInSeries.Of(Demo.Series().Skip(2));
        GrowthFit fit = GrowthFit.Of(late, CurveFamilies.VonBertalanffy);
        Age early = Age.FromDays(0);
        double weight = 1 - (Math.Exp(fit.Parameters[1].Value * fit.Parameters[2].Value) / 3);

        (weight > 0).Should().Be(Record.Exception(() => fit.MeanAt(early)) is null);
        VonBertalanffySeries().Invoking(it => it.MeanAt(early)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*no weight*");
    }

    /// <summary>A fit to weights on a curve that starts at 5 d.</summary>
    private static GrowthFit VonBertalanffySeries()
    {
        GrowthCurve curve = CurveFamilies.VonBertalanffy.FromParameters(5, 0.03, 5 + (Math.Log(3) / 0.03));
        return GrowthFit.Of(
            WeighInSeries.Of(((double[])[10, 15, 20, 30, 40, 50]).Select(days => WeighIn.Mean(Age.FromDays(days), curve.WeightAt(Age.FromDays(days)), 5))),
            CurveFamilies.VonBertalanffy);
    }

    [Fact]
    public void Birds_that_all_weigh_the_same_say_nothing_about_spread()
    {
        // 3 x 0.148 kg over 3 is a rounding off 0.148 kg, and must not be taken for a spread.
        WeighInSeries alike = WeighInSeries.Of(Demo.Means.Select(row => WeighIn.Birds(Age.FromDays(row.Days), Enumerable.Repeat(Mass.FromGrams(row.Grams), 3))));

        alike.PooledCoefficientOfVariation.Should().BeNull();
        GrowthFit.Of(alike).Cautions.Should().NotContain(caution => caution.Code == "weigh-ins-scatter");
        GrowthFit known = GrowthFit.Of(alike, errors: ErrorModel.Sampling());
        known.Status.Should().Be(FitStatus.Converged);
        known.Cautions.Should().Contain(caution => caution.Code == "spread-assumed");
        known.MeanAt(Age.FromDays(30)).Interval.Should().Be(GrowthFit.Of(alike, errors: ErrorModel.Sampling(0.10)).MeanAt(Age.FromDays(30)).Interval);
    }

    [Fact]
    public void Weights_on_a_curve_to_the_last_digit_have_the_age_itself_for_limits()
    {
        GompertzCurve curve = GompertzCurve.Of(Mass.FromKilograms(5), DailyRate.FromPerDay(0.04), Age.FromDays(38));
        GrowthFit exact = GrowthFit.Of(WeighInSeries.Of(Enumerable.Range(0, 9).Select(week =>
            WeighIn.Mean(Age.FromWeeks(week), curve.WeightAt(Age.FromWeeks(week)), 20))));

        for (double kilograms = 0.2; kilograms < 3.5; kilograms += 0.01)
        {
            Estimate<Age> age = exact.AgeAt(Mass.FromKilograms(kilograms))!;

            age.Interval.Low!.Value.Days.Should().BeApproximately(age.Value.Days, 1e-6);
            age.Interval.High!.Value.Days.Should().BeApproximately(age.Value.Days, 1e-6);
        }
    }

    [Fact]
    public void No_interval_of_a_weight_reaches_below_nothing()
    {
        GrowthFit equal = GrowthFit.Of(Demo.SingleBirds(), errors: ErrorModel.EqualVariance);

        equal.BirdAt(Age.FromDays(1))!.Interval.Low.Should().BeNull("chicks of 45 g that differ by 100 g as grown birds do");
        equal.BirdAt(Age.FromDays(1))!.Interval.High!.Value.Grams.Should().BeGreaterThan(45);
        equal.BirdAt(Age.FromDays(45))!.Interval.Low.Should().NotBeNull();
    }

    [Fact]
    public void A_parameter_that_the_hatch_weight_fixes_goes_with_no_other()
    {
        GrowthFit fit = GrowthFit.Of(Demo.Series(), CurveFamilies.Lopez, hatchWeight: Mass.FromGrams(42));

        fit.Status.Should().Be(FitStatus.Converged);
        fit.Parameters[1].StandardError.Should().Be(0);
        fit.Correlations.Should().OnlyContain(correlation => Math.Abs(correlation) <= 1 + 1e-12);
        Enumerable.Range(0, 4).Select(other => fit.Correlations[4 + other]).Should().Equal(0, 1, 0, 0);
    }
}
