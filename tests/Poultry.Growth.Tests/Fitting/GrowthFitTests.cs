using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class GrowthFitTests
{
    private static readonly string[] ErrorIds = ["equal", "proportional", "iterated", "sampling"];
    private static readonly double[] Weeks = [0, 7, 14, 21, 28, 35, 42, 49, 56];

    public static TheoryData<string, double[]> Truths() => new()
    {
        { "gompertz", [6, 0.04, 38] },
        { "logistic", [3.5, 0.09, 40] },
        { "von-bertalanffy", [9, 0.023, 45] },
        { "richards", [5, 0.05, 38, 0.4] },
        { "richards", [8, 0.03, 40, -0.15] },
        { "lopez", [6.5, 0.045, 60, 2.1] },
    };

    public static TheoryData<string> ErrorModels() => [.. ErrorIds];

    [Theory]
    [MemberData(nameof(Truths))]
    public void Weights_on_a_curve_give_that_curve_back(string id, double[] truth)
    {
        CurveFamily family = CurveFamilies.Find(id)!;
        GrowthCurve curve = family.FromParameters(truth);
        WeighInSeries weighIns = WeighInSeries.Of(Weeks.Select(days => WeighIn.Mean(Age.FromDays(days), curve.WeightAt(Age.FromDays(days)), 20)));

        foreach (string errors in ErrorIds)
        {
            GrowthFit fit = GrowthFit.Of(weighIns, family, ErrorModel.Find(errors));
            fit.Status.Should().Be(FitStatus.Converged, "{0}: {1}", errors, fit.Reason);
            for (int i = 0; i < truth.Length; i++)
            {
                fit.Parameters[i].Value.Should().BeApproximately(truth[i], 1e-6 * Math.Abs(truth[i]), errors);
            }
        }
    }

    [Theory]
    [MemberData(nameof(ErrorModels))]
    public void Pounds_in_are_kilograms_in(string errors)
    {
        WeighInSeries inGrams = Demo.Series();
        WeighInSeries inPounds = WeighInSeries.Of(inGrams.Select(weighIn =>
            WeighIn.Mean(weighIn.Age, Mass.FromPounds(weighIn.MeanWeight.Pounds), weighIn.BirdsWeighed)));

        GrowthFit one = GrowthFit.Of(inGrams, errors: ErrorModel.Find(errors));
        GrowthFit other = GrowthFit.Of(inPounds, errors: ErrorModel.Find(errors));

        other.Parameters[0].Value.Should().BeApproximately(one.Parameters[0].Value, 1e-9);
        other.MeanAt(Age.FromDays(56)).Value.Kilograms.Should().BeApproximately(one.MeanAt(Age.FromDays(56)).Value.Kilograms, 1e-9);
    }

    [Theory]
    [MemberData(nameof(ErrorModels))]
    public void Heavier_birds_of_the_same_pattern_scale_the_curve_and_nothing_else(string errors)
    {
        GrowthFit one = GrowthFit.Of(Demo.Series(), errors: ErrorModel.Find(errors));
        GrowthFit tripled = GrowthFit.Of(Demo.Series(3), errors: ErrorModel.Find(errors));

        tripled.Parameters[0].Value.Should().BeApproximately(3 * one.Parameters[0].Value, 1e-7);
        tripled.Parameters[1].Value.Should().BeApproximately(one.Parameters[1].Value, 1e-9);
        tripled.Parameters[2].StandardError.Should().BeApproximately(one.Parameters[2].StandardError, 1e-7);
    }

    [Theory]
    [InlineData("proportional")]
    [InlineData("iterated")]
    public void A_mean_with_its_standard_deviation_says_what_its_birds_say(string errors)
    {
        GrowthFit birds = GrowthFit.Of(Demo.SingleBirds(), errors: ErrorModel.Find(errors));
        GrowthFit means = GrowthFit.Of(Demo.MeansOfSingleBirds(), errors: ErrorModel.Find(errors));

        means.Observations.Should().Be(birds.Observations).And.Be(40);
        means.LogLikelihood.Should().BeApproximately(birds.LogLikelihood, 1e-9);
        for (int i = 0; i < 3; i++)
        {
            means.Parameters[i].Value.Should().BeApproximately(birds.Parameters[i].Value, 1e-9);
            means.Parameters[i].StandardError.Should().BeApproximately(birds.Parameters[i].StandardError, 1e-9);
        }
    }

    [Fact]
    public void The_likelihood_is_that_of_normal_birds_with_a_spread_in_proportion()
    {
        GrowthFit fit = GrowthFit.Of(Demo.SingleBirds());
        List<(double Weight, double Fitted)> birds = [.. fit.Residuals().SelectMany(residual =>
            residual.WeighIn.Weights.Select(weight => (weight.Kilograms, residual.Fitted.Kilograms)))];
        double variance = birds.Average(bird => Math.Pow((bird.Weight / bird.Fitted) - 1, 2));

        double expected = birds.Sum(bird =>
            -(Math.Log(2 * Math.PI * variance * bird.Fitted * bird.Fitted) + (Math.Pow((bird.Weight / bird.Fitted) - 1, 2) / variance)) / 2);

        fit.LogLikelihood.Should().BeApproximately(expected, 1e-9);
    }

    [Fact]
    public void The_order_in_which_weigh_ins_are_given_does_not_matter()
    {
        GrowthFit one = GrowthFit.Of(Demo.Series());
        GrowthFit reversed = GrowthFit.Of(WeighInSeries.Of(Demo.Series().Reverse()));

        reversed.Parameters.Select(parameter => parameter.Value).Should().Equal(one.Parameters.Select(parameter => parameter.Value));
    }

    [Fact]
    public void Counts_are_weights_where_birds_scatter_and_not_where_every_figure_counts_the_same()
    {
        WeighInSeries even = Demo.Series();
        WeighInSeries uneven = WeighInSeries.Of(even.Select((weighIn, i) => WeighIn.Mean(weighIn.Age, weighIn.MeanWeight, i == 7 ? 2000 : 20)));

        double Off(WeighInSeries series, ErrorModel errors) => Math.Abs(GrowthFit.Of(series, errors: errors).Residuals()[^1].Difference.Kilograms);

        Off(uneven, ErrorModel.Proportional).Should().BeLessThan(Off(even, ErrorModel.Proportional) / 5);
        Off(uneven, ErrorModel.EqualVariance).Should().Be(Off(even, ErrorModel.EqualVariance));
    }

    [Fact]
    public void Too_few_ages_are_refused_with_what_is_missing()
    {
        WeighInSeries two = WeighInSeries.Of(Demo.SingleBirds().Take(2));
        WeighInSeries threeMeans = WeighInSeries.Of(Demo.Series().Take(3));

        GrowthFit.Of(two).Status.Should().Be(FitStatus.TooFewAges);
        GrowthFit.Of(two).Reason.Should().Contain("3 free parameters").And.Contain("2 different ages");
        GrowthFit.Of(threeMeans).Status.Should().Be(FitStatus.TooFewAges, "nothing is left to judge the fit by");
        GrowthFit.Of(threeMeans, errors: ErrorModel.Sampling(0.1)).Status.Should().Be(FitStatus.Converged, "the scatter is known");
    }

    [Fact]
    public void Birds_that_do_not_grow_have_no_mature_weight_and_no_exponential()
    {
        WeighInSeries losing = WeighInSeries.Of(Weeks.Take(6).Select(days => WeighIn.Mean(Age.FromDays(days), Mass.FromGrams(500 - (3 * days) + (days % 2)), 10)));

        GrowthFit fit = GrowthFit.Of(losing);

        fit.Status.Should().NotBe(FitStatus.Converged);
        fit.Curve.Should().BeNull();
        fit.Exponential.Should().BeNull();
    }

    [Fact]
    public void Without_a_curve_nothing_is_predicted()
    {
        GrowthFit fit = GrowthFit.Of(WeighInSeries.Of(Demo.Series().Take(2)));

        fit.Parameters.Should().BeEmpty();
        fit.Residuals().Should().BeEmpty();
        fit.Invoking(it => it.MeanAt(Age.FromDays(30))).Should().Throw<InvalidOperationException>().WithMessage("*2 different ages*");
        fit.Invoking(it => it.ProfileLimits()).Should().Throw<InvalidOperationException>();
    }

    [Fact]
    public void A_shape_that_the_weights_leave_open_is_named()
    {
        // Straight growth to a hard stop: the larger the shape the better.
        WeighInSeries stopped = WeighInSeries.Of(Weeks.Select(days => WeighIn.Mean(Age.FromDays(days), Mass.FromGrams(Math.Min(40 * Math.Exp(0.06 * days), 600)), 10)));

        GrowthFit fit = GrowthFit.Of(stopped, CurveFamilies.Richards, ErrorModel.EqualVariance);

        fit.Status.Should().Be(FitStatus.NotIdentified);
        fit.Reason.Should().Contain("shape");
    }

    [Fact]
    public void Bad_arguments_are_named()
    {
        FluentActions.Invoking(() => GrowthFit.Of(Demo.Series(), hatchWeight: Mass.FromGrams(-1))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*hatchWeight*");
        FluentActions.Invoking(() => GrowthFit.Of(Demo.Series()).MeanAt(Age.FromDays(30), level: 1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*level*");
        FluentActions.Invoking(() => GrowthFit.Of(Demo.Series()).NextWeighInAt(Age.FromDays(30), birds: 0)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*birds*");
        FluentActions.Invoking(() => ErrorModel.Sampling(weighInError: -0.1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*weighInError*");
    }

    [Fact]
    [Trait("Speed", "Slow")]
    public void The_same_fit_on_many_threads_has_the_same_bits()
    {
        WeighInSeries shared = Demo.SingleBirds();
        double[] first = [.. GrowthFit.Of(shared, CurveFamilies.Richards).Parameters.Select(parameter => parameter.Value)];

        Parallel.For(0, 200, _ =>
            GrowthFit.Of(shared, CurveFamilies.Richards).Parameters.Select(parameter => parameter.Value).Should().Equal(first));
    }
}
