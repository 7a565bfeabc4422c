using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>What the solver claims about the point that it returns, and what it refuses to claim.</summary>
public class LeastSquaresClaimsTests
{
    // Pasture yields of Ratkowsky (1983), as in Rat42 of NIST.
    private static readonly double[] Days = [9, 14, 21, 28, 42, 57, 63, 70, 79];
    private static readonly double[] Yields = [8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08];

    [Fact]
    public void A_start_without_a_finite_residual_is_said()
    {
        double[] parameters = [double.NaN, 1];
        LeastSquaresResult result = Solve(new(2, CurveProblem.Line, [1, 2, 3], [3, 6, 6]), parameters);

        result.Status.Should().Be(LeastSquaresStatus.NotFinite);
        result.SumOfSquares.Should().Be(double.PositiveInfinity);
        result.Evaluations.Should().Be(1);
    }

    [Fact]
    public void A_derivative_that_is_not_finite_is_said_too()
    {
        double[] parameters = [4];
        Solve(new(1, EndsBelowTwo, [0, 0], [1, 3]), [1]).Status.Should().Be(LeastSquaresStatus.NotFinite);

        // The minimum, at 1.5, lies where derivatives have ended: the search comes as near as it can and claims nothing.
        LeastSquaresResult result = Solve(new(1, EndsBelowTwo, [0, 0], [1, 2]), parameters);
        result.Status.Should().Be(LeastSquaresStatus.NotConverged);
        parameters[0].Should().BeInRange(2, 2.0001);

        static double EndsBelowTwo(ReadOnlySpan<double> p, double x, Span<double> gradient)
        {
            gradient[0] = p[0] < 2 ? double.PositiveInfinity : 1;
            return p[0];
        }
    }

    [Theory]
    [InlineData(800)]
    [InlineData(360)]
    [InlineData(100)]
    public void A_plateau_is_not_a_minimum(double rate)
    {
        // BoxBOD of NIST: far out the rate moves nothing (its column is zero or below any square), or next to nothing.
        double[] y = [109, 149, 149, 191, 213, 224];
        double[] parameters = [y.Average(), rate];
        LeastSquaresResult result = Solve(new(2, CurveProblem.Saturation, [1, 2, 3, 5, 7, 10], y), parameters);

        result.Status.Should().Be(LeastSquaresStatus.NotConverged);
        result.Certificate.Should().BeGreaterThan(1e-3);
    }

    [Fact]
    public void A_limit_at_infinity_is_not_a_minimum()
    {
        // Chick 19 of R's ChickWeight, grams: no Gompertz beats the exponential, to which it falls as k goes to 0.
        // R 4.2: deviance(nls(weight ~ a * exp(b * Time), subset(ChickWeight, Chick == 19), start = list(a = 40, b = .05)))
        const double Exponential = 227.260156396;
        double[] x = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 21];
        double[] y = [43, 48, 55, 62, 65, 71, 82, 88, 106, 120, 144, 157];
        double[] parameters = [1000, 0.03, 30];
        LeastSquaresResult result = Solve(new(3, CurveProblem.Gompertz, x, y), parameters);

        result.Status.Should().Be(LeastSquaresStatus.NotConverged);
        result.SumOfSquares.Should().BeGreaterThan(Exponential).And.BeLessThan(1.1 * Exponential);
        result.Certificate.Should().BeGreaterThan(0.8);
        LargestCosine(new(3, CurveProblem.Gompertz, x, y), parameters).Should().BeLessThan(0.01, "column by column the limit looks like a minimum");
    }

    [Fact]
    public void Two_parameters_that_do_the_same_are_not_certified()
    {
        double[] parameters = [1, 1];
        Curve twice = (p, x, gradient) =>
        {
            (gradient[0], gradient[1]) = (x, x);
            return (p[0] + p[1]) * x;
        };
        LeastSquaresResult result = Solve(new(2, twice, [1, 2, 3], [3, 6, 6]), parameters);

        result.Status.Should().Be(LeastSquaresStatus.NotConverged);
        result.Certificate.Should().Be(1);
        result.SumOfSquares.Should().BeApproximately(81 - (33.0 * 33 / 14), 1e-12, "the best is found all the same");
    }

    [Fact]
    public void At_the_limit_the_best_point_is_kept()
    {
        double before = double.PositiveInfinity;
        for (int limit = 1; limit <= 12; limit++)
        {
            double[] parameters = [100, 1, 0.1];
            CurveProblem problem = new(3, CurveProblem.Logistic, Days, Yields);
            LeastSquaresResult result = Solve(problem, parameters, new LeastSquaresOptions { EvaluationLimit = limit });

            result.Evaluations.Should().BeLessThanOrEqualTo(limit);
            result.SumOfSquares.Should().BeLessThanOrEqualTo(before * (1 + 1e-12)).And.BeApproximately(SumOfSquares(problem, parameters), 1e-9);
            before = result.SumOfSquares;
        }
    }

    [Fact]
    public void The_certificate_bounds_every_cosine()
    {
        double[] parameters = [100, 1, 0.1];
        CurveProblem problem = new(3, CurveProblem.Logistic, Days, Yields);
        LeastSquaresResult result = Solve(problem, parameters, new LeastSquaresOptions { CertificateTarget = 1e-4 });

        result.Certificate.Should().BeLessThan(1e-4).And.BeGreaterThan(1e-6);
        LargestCosine(problem, parameters).Should().BeLessThanOrEqualTo(result.Certificate);
    }

    private static LeastSquaresResult Solve(CurveProblem problem, double[] parameters, LeastSquaresOptions options = default) =>
        LeastSquares.Solve(ref problem, parameters, new double[LeastSquares.WorkspaceLength(problem.Residuals, problem.Parameters)], options);

    private static double SumOfSquares(CurveProblem problem, double[] parameters)
    {
        double[] residuals = new double[problem.Residuals];
        problem.Evaluate(parameters, residuals, default);
        return residuals.Sum(r => r * r);
    }

    /// <summary>max |J_j'r| / (|J_j| |r|).</summary>
    private static double LargestCosine(CurveProblem problem, double[] parameters)
    {
        double[] residuals = new double[problem.Residuals];
        double[] jacobian = new double[problem.Residuals * problem.Parameters];
        problem.Evaluate(parameters, residuals, jacobian);
        return jacobian.Chunk(problem.Residuals)
            .Max(column => Math.Abs(column.Zip(residuals, (a, b) => a * b).Sum()) / Math.Sqrt(column.Sum(a => a * a) * residuals.Sum(r => r * r)));
    }
}
