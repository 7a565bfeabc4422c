using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

public class CovarianceTests
{
    [Fact]
    public void A_line_has_the_covariance_of_the_textbook()
    {
        // x = 1, 2, 3, 6: n 4, mean 3, squares about it 14: variance of the slope 1/14, of the intercept 1/4 + 9/14, between them -3/14.
        double[] covariance = Covariance(new(2, CurveProblem.Line, [1, 2, 3, 6], [0, 0, 0, 0]), [1, 1], out int blamed)!;

        blamed.Should().Be(-1);
        covariance[0].Should().BeApproximately(0.25 + (9.0 / 14), 1e-15);
        covariance[1].Should().BeApproximately(-3.0 / 14, 1e-15);
        covariance[2].Should().Be(covariance[1]);
        covariance[3].Should().BeApproximately(1.0 / 14, 1e-15);
    }

    [Fact]
    public void Units_cost_no_digits()
    {
        double[] plain = Covariance(new(2, CurveProblem.Line, [1, 2, 3, 6], new double[4]), [1, 1], out _)!;
        double[] tiny = Covariance(new(2, CurveProblem.Line, [1e-90, 2e-90, 3e-90, 6e-90], new double[4]), [1, 1], out _)!;

        (tiny[1] * 1e-90).Should().BeApproximately(plain[1], 1e-15);
        (tiny[3] * 1e-90 * 1e-90).Should().BeApproximately(plain[3], 1e-15);
    }

    [Fact]
    public void The_squared_condition_is_not_lost()
    {
        // 1, x, with x = 1e7 + (0, 1, 2, 3): J'J as such has a condition above 1e28. The slope's variance is that of 0, 1, 2, 3: 1/5.
        double[] covariance = Covariance(new(2, CurveProblem.Line, [1e7, 1e7 + 1, 1e7 + 2, 1e7 + 3], new double[4]), [0, 0], out _)!;

        covariance[3].Should().BeApproximately(0.2, 1e-8);
    }

    [Fact]
    public void A_parameter_that_moves_nothing_is_blamed()
    {
        CurveProblem plateau = new(2, CurveProblem.Saturation, [1, 2, 3], [5, 6, 6]);

        Covariance(plateau, [5, 800], out int blamed).Should().BeNull();
        blamed.Should().Be(1);
    }

    [Fact]
    public void A_parameter_that_the_others_explain_is_blamed()
    {
        // The third column is the sum of the others.
        Curve plane = (p, x, gradient) =>
        {
            (gradient[0], gradient[1], gradient[2]) = (1, x, 1 + x);
            return p[0] + (p[1] * x) + (p[2] * (1 + x));
        };

        Covariance(new(3, plane, [1, 2, 3, 5], new double[4]), [1, 1, 1], out int blamed).Should().BeNull();
        blamed.Should().BeInRange(0, 2);
    }

    [Fact]
    public void A_derivative_that_is_not_finite_is_blamed()
    {
        Curve broken = (p, x, gradient) =>
        {
            (gradient[0], gradient[1]) = (1, x > 2 ? double.NaN : x);
            return p[0];
        };

        Covariance(new(2, broken, [1, 2, 3], new double[3]), [1, 1], out int blamed).Should().BeNull();
        blamed.Should().Be(1);
    }

    [Fact]
    public void Without_residuals_there_is_no_one_to_blame()
    {
        RefusingProblem problem = new();
        LeastSquares.Covariance(ref problem, [1], new double[1], new double[LeastSquares.WorkspaceLength(2, 1)], out int blamed).Should().BeFalse();
        blamed.Should().Be(-1);
    }

    [Fact]
    public void Room_for_the_wrong_number_is_refused()
    {
        CurveProblem problem = new(2, CurveProblem.Line, [1, 2, 3], [1, 2, 3]);
        Action asking = () => LeastSquares.Covariance(ref problem, [1, 1], new double[3], new double[LeastSquares.WorkspaceLength(3, 2)], out _);

        asking.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*3*4*");
    }

    private static double[]? Covariance(CurveProblem problem, double[] parameters, out int blamed)
    {
        double[] covariance = new double[parameters.Length * parameters.Length];
        double[] workspace = new double[LeastSquares.WorkspaceLength(problem.Residuals, problem.Parameters)];
        return LeastSquares.Covariance(ref problem, parameters, covariance, workspace, out blamed) ? covariance : null;
    }

    private readonly struct RefusingProblem : ILeastSquaresProblem
    {
        public int Residuals => 2;

        public int Parameters => 1;

        public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian) => false;
    }
}
