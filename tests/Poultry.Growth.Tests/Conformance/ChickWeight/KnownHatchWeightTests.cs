using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

public class KnownHatchWeightTests
{
    [Theory]
    [InlineData("gompertz")]
    [InlineData("logistic")]
    public void A_curve_from_a_known_hatch_weight_starts_there_without_error(string family)
    {
        GrowthFit fit = GrowthFit.Of(ChickWeightData.Series("dietmean_1"), CurveFamilies.Find(family), ErrorModel.EqualVariance, Mass.FromGrams(42));

        fit.Curve!.WeightAt(Age.Hatch).Grams.Should().BeApproximately(42, 1e-9);
        fit.MeanAt(Age.Hatch).Interval.High!.Value.Grams.Should().BeApproximately(42, 1e-9);
    }
}
