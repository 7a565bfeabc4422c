using CsCheck;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Properties;

public class FittingProperties
{
    private static readonly Gen<(double Mature, double Rate, double Inflection)> Truth =
        Gen.Select(Gen.Double[3, 9], Gen.Double[0.03, 0.06], Gen.Double[30, 46]);

    [Fact]
    public void A_curve_without_scatter_is_found_again_by_every_error_model() =>
        Gen.Select(Truth, Gen.OneOf(Gen.Const("equal"), Gen.Const("proportional"), Gen.Const("iterated"), Gen.Const("sampling"))).Sample((truth, errors) =>
        {
            GrowthFit fit = GrowthFit.Of(Weighed(truth, _ => 1), errors: ErrorModel.Find(errors));

            fit.Status.Should().Be(FitStatus.Converged);
            fit.Parameters[0].Value.Should().BeApproximately(truth.Mature, 1e-5 * truth.Mature);
            fit.Parameters[1].Value.Should().BeApproximately(truth.Rate, 1e-5 * truth.Rate);
        });

    [Fact]
    [Trait("Speed", "Slow")]
    public void With_scatter_every_fit_has_a_certificate_or_a_reason() =>
        Gen.Select(Truth, Gen.Double[-0.15, 0.15].Array[8], Gen.Int[0, CurveFamilies.All.Count - 1]).Sample((truth, off, family) =>
        {
            GrowthFit fit = GrowthFit.Of(Weighed(truth, i => 1 + off[i]), CurveFamilies.All[family]);

            if (fit.Status == FitStatus.Converged)
            {
                // Residuals that are mere rounding carry no certificate: the curve goes through every weight.
                (fit.Certificate < 1e-6 || fit.ResidualStandardDeviation < 1e-9).Should().BeTrue();
                fit.Parameters.Should().OnlyContain(parameter => double.IsFinite(parameter.Value) && parameter.StandardError >= 0);
            }
            else
            {
                fit.Reason.Should().NotBeEmpty();
                fit.Curve.Should().BeNull();
            }
        });

    [Fact]
    public void Profile_limits_hold_the_estimate_and_widen_with_the_level() =>
        Gen.Select(Truth, Gen.Double[-0.05, 0.05].Array[8]).Sample((truth, off) =>
        {
            GrowthFit fit = GrowthFit.Of(Weighed(truth, i => 1 + off[i]));
            if (fit.Curve is null)
            {
                return;
            }

            IReadOnlyList<Interval<double>> narrow = fit.ProfileLimits(0.5);
            IReadOnlyList<Interval<double>> wide = fit.ProfileLimits(0.9);
            for (int i = 0; i < narrow.Count; i++)
            {
                narrow[i].Contains(fit.Parameters[i].Value).Should().BeTrue();
                (wide[i].Low ?? double.NegativeInfinity).Should().BeLessThanOrEqualTo(narrow[i].Low ?? double.NegativeInfinity);
                (wide[i].High ?? double.PositiveInfinity).Should().BeGreaterThanOrEqualTo(narrow[i].High ?? double.PositiveInfinity);
            }
        });

    private static WeighInSeries Weighed((double Mature, double Rate, double Inflection) truth, Func<int, double> off)
    {
        GrowthCurve curve = CurveFamilies.Gompertz.FromParameters(truth.Mature, truth.Rate, truth.Inflection);
        return WeighInSeries.Of(Enumerable.Range(0, 8).Select(i =>
            WeighIn.Mean(Age.FromDays(7 + (7 * i)), off(i) * curve.WeightAt(Age.FromDays(7 + (7 * i))), birds: 20)));
    }
}
