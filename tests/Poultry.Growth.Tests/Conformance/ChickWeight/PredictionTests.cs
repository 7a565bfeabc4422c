using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>Predicted means and their standard errors against the 50-digit references; known hatch weight against R's nls.</summary>
public class PredictionTests
{
    public static TheoryData<string, string> Fits()
    {
        TheoryData<string, string> fits = [];
        foreach ((string set, string family) in Table.Read("ChickWeight/reference-predictions.csv").Rows.Select(row => (row.Text("set"), row.Text("family"))).Distinct())
        {
            fits.Add(set, family);
        }

        return fits;
    }

    [Theory]
    [MemberData(nameof(Fits))]
    public void Means_and_their_standard_errors_agree(string set, string family)
    {
        GrowthFit fit = GrowthFit.Of(ChickWeightData.Series(set), CurveFamilies.Find(family), ErrorModel.EqualVariance);
        double quantile = Distributions.StudentQuantile(0.95, fit.DegreesOfFreedom);
        foreach (Table.Row row in Table.Read("ChickWeight/reference-predictions.csv").Rows.Where(row => row.Text("set") == set && row.Text("family") == family))
        {
            Estimate<Mass> mean = fit.MeanAt(Age.FromDays(row.Number("age_d")), level: 0.90);
            mean.Value.Grams.Should().BeApproximately(row.Number("mean"), 1e-6 * row.Number("mean"));
            ((mean.Interval.High!.Value - mean.Value).Grams / quantile).Should().BeApproximately(row.Number("se"), 1e-5 * row.Number("se"));
        }
    }

    [Theory]
    [InlineData("gompertz", 907.716584, 0.0307394602, 334.213527, 0.00491861268, 111.63314980)]
    [InlineData("logistic", 317.748807, 0.102393203617, 27.2055252, 0.00390520911, 74.7183845212)]
    public void A_known_hatch_weight_gives_what_R_gives(string family, double mature, double rate, double matureError, double rateError, double sum)
    {
        // R 4.2.2, diet 1 means: nls(weight ~ 42*exp(log(A/42)*(1-exp(-k*Time)))), nls(weight ~ A/(1+(A/42-1)*exp(-k*Time))), tol 1e-7.
        GrowthFit fit = GrowthFit.Of(ChickWeightData.Series("dietmean_1"), CurveFamilies.Find(family), ErrorModel.EqualVariance, Mass.FromGrams(42));

        fit.Curve!.WeightAt(Age.Hatch).Grams.Should().BeApproximately(42, 1e-9);
        fit.MeanAt(Age.Hatch).Interval.High!.Value.Grams.Should().BeApproximately(42, 1e-9);
        (1000 * fit.Parameters[0].Value).Should().BeApproximately(mature, 1e-5 * mature);
        fit.Parameters[1].Value.Should().BeApproximately(rate, 1e-5 * rate);
        (1000 * fit.Parameters[0].StandardError).Should().BeApproximately(matureError, 1e-5 * matureError);
        fit.Parameters[1].StandardError.Should().BeApproximately(rateError, 1e-5 * rateError);
        (1e6 * fit.Residuals().Sum(residual => Math.Pow(residual.Difference.Kilograms, 2))).Should().BeApproximately(sum, 1e-6 * sum);
    }
}
