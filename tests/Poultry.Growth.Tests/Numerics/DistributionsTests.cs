using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>What must hold by itself; the conformance of this room holds quantiles and tails against R.</summary>
public class DistributionsTests
{
    [Theory]
    [InlineData(0.5 + 1e-10, 1)]
    [InlineData(0.5 - 1e-10, 1)]
    [InlineData(1e-100, 1)]
    [InlineData(1 - 1e-15, 1)]
    public void Student_with_one_degree_is_Cauchy(double probability, double degreesOfFreedom)
    {
        // tan(pi (p - 1/2)), which keeps its digits near the middle, or -1 / tan(pi p), which does near the ends.
        double expected = Math.Abs(probability - 0.5) < 0.25 ? Math.Tan(Math.PI * (probability - 0.5))
            : probability < 0.5 ? -1 / Math.Tan(Math.PI * probability)
            : 1 / Math.Tan(Math.PI * (1 - probability));

        Distributions.StudentQuantile(probability, degreesOfFreedom).Should().BeApproximately(expected, 1e-12 * Math.Abs(expected));
    }

    [Fact]
    public void Student_quantile_is_the_same_from_both_sides_of_the_expansion()
    {
        foreach (double probability in (double[])[1e-10, 0.05, 0.49, 0.9, 0.9999])
        {
            double below = Distributions.StudentQuantile(probability, 2e4);
            Distributions.StudentQuantile(probability, 2e4 * (1 + 1e-14)).Should().BeApproximately(below, 1e-11 * Math.Abs(below));
        }
    }

    [Fact]
    public void Arguments_out_of_range_are_refused_by_name_value_and_range()
    {
        Refused(() => Distributions.StudentQuantile(1, 3), "1 is not allowed; expected 1E-100 to 0.999999999999999*probability*");
        Refused(() => Distributions.StudentQuantile(0.9, 0.5), "0.5 is not allowed; expected 1 to*degreesOfFreedom*");
        Refused(() => Distributions.StudentQuantile(0.9, double.NaN), "NaN is not allowed*degreesOfFreedom*");
        Refused(() => Distributions.StudentQuantile(double.NaN, 3), "NaN is not allowed*probability*");
        Refused(() => Distributions.NormalQuantile(0), "0 is not allowed; expected between 0 and 1*probability*");
        Refused(() => Distributions.NormalQuantile(1), "1 is not allowed*probability*");
        Refused(() => Distributions.NormalProbability(double.NaN), "NaN is not allowed*value*");
        Refused(() => Distributions.ChiSquareUpperTail(-1, 2), "-1 is not allowed; expected 0 or more*value*");
        Refused(() => Distributions.ChiSquareUpperTail(1, 0), "0 is not allowed; expected above 0*degreesOfFreedom*");
        Refused(() => Distributions.ChiSquareUpperTail(double.PositiveInfinity, 2), "* is not allowed; expected 0 or more*value*");
        Refused(() => Distributions.FUpperTail(-1, 1, 2), "-1 is not allowed*value*");
        Refused(() => Distributions.FUpperTail(1, 0, 2), "0 is not allowed*numeratorDegrees*");
        Refused(() => Distributions.FUpperTail(1, 1, -2), "-2 is not allowed*denominatorDegrees*");
    }

    private static void Refused(Func<double> asking, string message) =>
        asking.Should().Throw<ArgumentOutOfRangeException>().WithMessage(message);
}
