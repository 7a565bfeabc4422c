using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Fitting;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// The check case of the projection method, from two programs written apart from this library (own arithmetic): objectives of 2012, males, 184, 477, 943 and
/// 1550 g at 7 to 28 d as means of 50 birds, spread 10 %. Tolerance 0.1 %, which is what the method asks of an implementation; figures are printed to 0.001 kg.
/// </summary>
public class ProjectionCheckCaseTests
{
    private static readonly Projection CheckCase = Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);

    [Theory]
    [InlineData(49, 3.298, 3.785, 4.237)]
    [InlineData(56, 3.769, 4.443, 5.076)]
    [InlineData(63, 4.149, 5.008, 5.828)]
    public void Limits_and_median_are_those_of_the_other_programs(double days, double low, double median, double high)
    {
        double[] ours = ProjectionCases.Kilograms(CheckCase.MeanAt(Age.FromDays(days)));

        ours[0].Should().BeApproximately(low, 0.001 * low);
        ours[1].Should().BeApproximately(median, 0.001 * median);
        ours[2].Should().BeApproximately(high, 0.001 * high);
    }

    [Fact]
    public void The_Gompertz_curves_by_the_prior_carry_the_printed_share() =>
        CheckCase.FamilyWeights[0].After.Fraction.Should().BeApproximately(0.870, 0.00087);

    /// <summary>Laplace's approximation against 20,000 draws a node at 56 d: 3.791, 4.438, 5.033 kg. The method states 0.05 to 1.7 % as its error.</summary>
    [Fact]
    public void The_approximation_is_as_far_from_the_exact_limits_as_stated()
    {
        double[] ours = ProjectionCases.Kilograms(CheckCase.MeanAt(Age.FromDays(56)));

        ours.Zip([3.791, 4.438, 5.033], (mine, exact) => Math.Abs((mine / exact) - 1)).Max().Should().BeLessThan(0.017);
    }
}
