using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class FamilyComparisonTests
{
    [Fact]
    public void The_best_family_comes_first_and_all_are_there()
    {
        IReadOnlyList<ComparedFamily> rows = FamilyComparison.Of(Demo.SingleBirds());

        rows.Select(row => row.Fit.Family).Should().BeEquivalentTo(CurveFamilies.All);
        rows[0].AiccDifference.Should().Be(0);
        rows.Select(row => row.AiccDifference ?? double.MaxValue).Should().BeInAscendingOrder();
        rows.Sum(row => row.Weight ?? 0).Should().BeApproximately(1, 1e-12);
        (rows[1].Weight / rows[0].Weight).Should().BeApproximately(Math.Exp(-rows[1].AiccDifference!.Value / 2), 1e-12);
    }

    [Fact]
    public void Weights_on_a_logistic_curve_are_known_for_logistic()
    {
        GrowthCurve curve = CurveFamilies.Logistic.FromParameters(3, 0.1, 38);
        double[] noise = [1.01, 0.99, 1.005, 0.995, 1.01, 0.99, 1, 1.003, 0.997, 1.002];
        WeighInSeries weighIns = WeighInSeries.Of(noise.Select((off, i) =>
            WeighIn.Mean(Age.FromDays(7 * i), off * curve.WeightAt(Age.FromDays(7 * i)), 30)));

        FamilyComparison.Of(weighIns)[0].Fit.Family.Should().Be(CurveFamilies.Logistic);
    }

    [Fact]
    public void Families_without_an_answer_come_last_with_their_reason()
    {
        IReadOnlyList<ComparedFamily> rows = FamilyComparison.Of(WeighInSeries.Of(Demo.Series().Take(4)));

        rows.Select(row => row.Fit.Status == FitStatus.Converged).Should().BeInDescendingOrder();
        rows.Where(row => row.Fit.Status == FitStatus.TooFewAges).Should().NotBeEmpty().And.OnlyContain(row => row.Weight == null && row.Fit.Reason != "");
        rows.Should().OnlyContain(row => row.AiccDifference == null, "four means do not carry a corrected criterion");
    }
}
