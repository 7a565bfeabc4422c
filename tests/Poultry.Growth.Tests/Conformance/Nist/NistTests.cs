using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>
/// The 27 nonlinear regression problems of the Statistical Reference Datasets, NIST/ITL, public domain, each from both published starts,
/// against certified values of eleven digits. Digits are -log10 of the relative error, of the worst parameter.
/// </summary>
public class NistTests
{
    public static TheoryData<string> Problems => [.. NistProblem.Names];

    public static TheoryData<string, int> Fits
    {
        get
        {
            TheoryData<string, int> fits = [];
            foreach (string name in NistProblem.Names)
            {
                fits.Add(name, 1);
                fits.Add(name, 2);
            }

            return fits;
        }
    }

    [Theory]
    [MemberData(nameof(Problems))]
    public void The_typed_jacobian_agrees_with_central_differences(string name)
    {
        // A step of 6e-6 of the parameter leaves 2e-7 of curvature in the narrow peak of Eckerle4, and less elsewhere.
        NistProblem.Of(name).JacobianError().Should().BeLessThan(1e-6);
    }

    [Theory]
    [MemberData(nameof(Fits))]
    public void Every_start_ends_in_the_certified_minimum(string name, int start)
    {
        NistProblem problem = NistProblem.Of(name);

        NistFit fit = problem.Fit(start, default);

        // Lanczos1 is data of a model without error: its residuals are 4e-13, its certified deviations the rounding of the data.
        bool exact = name == "Lanczos1";
        fit.Result.Status.Should().Be(exact ? LeastSquaresStatus.ExactFit : LeastSquaresStatus.Converged);
        fit.ParameterDigits.Should().BeGreaterThan(7);
        fit.StandardErrorDigits.Should().BeGreaterThan(exact ? 2 : 7);
        (fit.Result.SumOfSquares / problem.CertifiedSumOfSquares).Should().BeApproximately(1, exact ? 1e-2 : 1e-9);
    }

    [Theory]
    [InlineData("Rat42", 1)]
    [InlineData("Rat42", 2)]
    [InlineData("Rat43", 1)]
    [InlineData("Rat43", 2)]
    public void Growth_curves_keep_nine_digits(string name, int start)
    {
        NistFit fit = NistProblem.Of(name).Fit(start, default);

        fit.ParameterDigits.Should().BeGreaterThan(9);
        fit.StandardErrorDigits.Should().BeGreaterThan(8);
    }

    [Theory]
    [MemberData(nameof(Fits))]
    public void Cut_short_it_claims_nothing_false(string name, int start)
    {
        NistProblem problem = NistProblem.Of(name);
        foreach (int limit in (int[])[1, 2, 3, 5, 8, 13, 21, 34, 55, 89])
        {
            NistFit fit = problem.Fit(start, new LeastSquaresOptions { EvaluationLimit = limit });

            fit.Result.Evaluations.Should().BeLessThanOrEqualTo(limit);
            if (fit.Result.Status is LeastSquaresStatus.Converged or LeastSquaresStatus.ExactFit)
            {
                fit.ParameterDigits.Should().BeGreaterThan(4);
            }
        }
    }

    [Fact]
    public void Rat43_has_eleven_degrees_of_freedom()
    {
        NistProblem problem = NistProblem.Of("Rat43");

        // Certified residual standard deviation, 2.8262414662E+01; with the 9 that its file prints it would be 31.2.
        Math.Sqrt(problem.CertifiedSumOfSquares / problem.DegreesOfFreedom).Should().BeApproximately(28.262414662, 5e-10);
    }
}
