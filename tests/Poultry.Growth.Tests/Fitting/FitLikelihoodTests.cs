using MathNet.Numerics.Distributions;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Likelihoods, criteria and profile limits from their definitions.</summary>
public class FitLikelihoodTests
{
    [Fact]
    public void With_known_errors_it_is_that_of_log_normal_weights()
    {
        GrowthFit fit = GrowthFit.Of(Demo.Series(), errors: ErrorModel.Sampling(0.1, 0.02));
        double variance = (0.01 / 20) + 0.0004;

        fit.LogLikelihood.Should().BeApproximately(
            fit.Residuals().Sum(one => new LogNormal(Math.Log(one.Fitted.Kilograms), Math.Sqrt(variance)).DensityLn(one.WeighIn.MeanKilograms)), 1e-9);
        fit.ResidualStandardDeviation.Should().Be(1);
        fit.Aicc.Should().BeApproximately(Criterion(parameters: 3, fit.LogLikelihood, observations: 8), 1e-9);
    }

    [Fact]
    public void Means_without_their_spread_scatter_in_proportion_and_by_the_root_of_their_birds()
    {
        WeighInSeries uneven = WeighInSeries.Of(Demo.Means.Select((row, at) => WeighIn.Mean(Age.FromDays(row.Days), Mass.FromGrams(row.Grams), 5 + (10 * at))));
        GrowthFit fit = GrowthFit.Of(uneven, errors: ErrorModel.Proportional);
        List<(double Kilograms, double Fitted, int Birds)> means = [.. fit.Residuals().Select(one => (one.WeighIn.MeanKilograms, one.Fitted.Kilograms, one.WeighIn.BirdsWeighed))];
        double variance = means.Average(mean => mean.Birds * Math.Pow((mean.Kilograms / mean.Fitted) - 1, 2));

        fit.LogLikelihood.Should().BeApproximately(means.Sum(mean => Normal.PDFLn(mean.Fitted, mean.Fitted * Math.Sqrt(variance / mean.Birds), mean.Kilograms)), 1e-9);
        fit.Aicc.Should().BeApproximately(Criterion(parameters: 4, fit.LogLikelihood, observations: 8), 1e-9);
    }

    /// <summary>One bird weighed alone is a mean of one: its spread within is nothing, and it is one observation.</summary>
    [Fact]
    public void A_bird_weighed_alone_is_a_mean_of_one()
    {
        WeighInSeries Weighed(Func<(double Days, double Grams), WeighIn> weigh) => WeighInSeries.Of(Demo.Means.Select(weigh));
        GrowthFit birds = GrowthFit.Of(Weighed(row => WeighIn.Birds(Age.FromDays(row.Days), Mass.FromGrams(row.Grams))));
        GrowthFit means = GrowthFit.Of(Weighed(row => WeighIn.Mean(Age.FromDays(row.Days), Mass.FromGrams(row.Grams), 1)));

        birds.LogLikelihood.Should().BeApproximately(means.LogLikelihood, 1e-9);
    }

    [Fact]
    public void There_is_no_criterion_without_an_observation_to_spare()
    {
        GrowthFit Of(int weighIns) => GrowthFit.Of(WeighInSeries.Of(Demo.Series().Take(weighIns)), errors: ErrorModel.Proportional);

        Of(5).Aicc.Should().BeNull("three parameters and the scatter leave one of five");
        Of(6).Aicc.Should().BeApproximately(Criterion(parameters: 4, Of(6).LogLikelihood, observations: 6), 1e-9);
    }

    /// <summary>Where weights hardly scatter the objective is a parabola, and the limits of a profile are those of the standard errors.</summary>
    [Theory]
    [InlineData("equal")]
    [InlineData("proportional")]
    [InlineData("sampling")]
    public void Profile_limits_of_weights_that_hardly_scatter_are_those_of_the_standard_errors(string errors)
    {
        GrowthFit known = GrowthFit.Of(Demo.Series());
        WeighInSeries even = WeighInSeries.Of(Demo.Means.Select((row, at) =>
            WeighIn.Mean(Age.FromDays(row.Days), known.MeanAt(Age.FromDays(row.Days)).Value * (1 + (0.0002 * ((at % 3) - 1))), 20)));
        GrowthFit fit = GrowthFit.Of(even, errors: errors == "sampling" ? ErrorModel.Sampling(0.001) : ErrorModel.Find(errors));
        double reach = double.IsInfinity(fit.DegreesOfFreedom) ? Normal.InvCDF(0, 1, 0.95) : StudentT.InvCDF(0, 1, fit.DegreesOfFreedom, 0.95);

        foreach ((FittedParameter parameter, Interval<double> limits) in fit.Parameters.Zip(fit.ProfileLimits(0.90)))
        {
            double width = reach * parameter.StandardError;
            ((parameter.Value - limits.Low!.Value) / width).Should().BeApproximately(1, 0.01);
            ((limits.High!.Value - parameter.Value) / width).Should().BeApproximately(1, 0.01);
        }
    }

    private static double Criterion(double parameters, double logLikelihood, double observations) =>
        (2 * parameters) - (2 * logLikelihood) + (2 * parameters * (parameters + 1) / (observations - parameters - 1));
}
