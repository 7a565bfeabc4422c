using CsCheck;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

public class LeastSquaresTests
{
    // Pasture yields of Ratkowsky (1983), as in Rat42 of NIST.
    private static readonly double[] Days = [9, 14, 21, 28, 42, 57, 63, 70, 79];
    private static readonly double[] Yields = [8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08];

    [Fact]
    public void A_line_is_found_in_one_step()
    {
        // By hand: the means are 2 and 5, the sums of squares and products about them 2 and 3.
        double[] parameters = [0, 0];
        LeastSquaresResult result = Solve(new(2, CurveProblem.Line, [1, 2, 3], [3, 6, 6]), parameters);

        result.Status.Should().Be(LeastSquaresStatus.Converged);
        result.Iterations.Should().Be(1);
        parameters.Should().SatisfyRespectively(a => a.Should().BeApproximately(2, 1e-14), b => b.Should().BeApproximately(1.5, 1e-14));
        result.SumOfSquares.Should().BeApproximately(1.5, 1e-14);
    }

    [Fact]
    public void A_minimum_at_zero_is_found_though_nothing_gives_it_a_size()
    {
        double[] parameters = [0, 0];
        LeastSquaresResult result = Solve(new(2, CurveProblem.Line, [-1, 0, 1], [1, -2, 1]), parameters);

        result.Status.Should().Be(LeastSquaresStatus.Converged);
        parameters.Should().AllSatisfy(p => p.Should().BeApproximately(0, 1e-15));
    }

    [Fact]
    public void Residuals_that_vanish_are_an_exact_fit()
    {
        double[] parameters = [1, 1];
        Solve(new(2, CurveProblem.Line, [1, 2, 3], [3, 5, 7]), parameters).Status.Should().Be(LeastSquaresStatus.ExactFit);

        double[] truth = [5.2, 3.1, 0.08];
        double[] exact = [.. Days.Select(x => CurveProblem.Logistic(truth, x, new double[3]))];
        double[] found = [4, 2, 0.05];
        Solve(new(3, CurveProblem.Logistic, Days, exact), found).Status.Should().Be(LeastSquaresStatus.ExactFit);
        found.Zip(truth).Should().AllSatisfy(p => p.First.Should().BeApproximately(p.Second, 1e-12));
    }

    [Fact]
    public void As_many_residuals_as_parameters_are_an_exact_fit()
    {
        double[] parameters = [1, 1];
        Solve(new(2, CurveProblem.Saturation, [1, 4], [3, 5]), parameters).Status.Should().Be(LeastSquaresStatus.ExactFit);
        CurveProblem.Saturation(parameters, 1, new double[2]).Should().BeApproximately(3, 1e-14);
        CurveProblem.Saturation(parameters, 4, new double[2]).Should().BeApproximately(5, 1e-14);
    }

    [Fact]
    public void A_step_out_of_the_models_domain_is_refused()
    {
        // The first step from 8 to the minimum of ln p at 0.05 leads below 0, where a logarithm has no value.
        double[] parameters = [8];
        Curve logarithm = (p, x, gradient) =>
        {
            gradient[0] = 1 / p[0];
            return Math.Log(p[0]);
        };
        double truth = Math.Log(0.05);
        LeastSquaresResult result = Solve(new(1, logarithm, [0, 0], [truth - 1, truth + 1]), parameters);

        result.Status.Should().Be(LeastSquaresStatus.Converged);
        result.Evaluations.Should().BeGreaterThan(result.Iterations + 1);
        parameters[0].Should().BeApproximately(0.05, 1e-10);
    }

    [Fact]
    public void Units_do_not_matter()
    {
        // Powers of two change no digit, so that every step is the same.
        double[] parameters = [75, 2.5, 0.07];
        double[] rescaled = [75 * 1024, 2.5, 0.07 / 8];
        Solve(new(3, CurveProblem.Logistic, Days, Yields), parameters);
        Solve(new(3, CurveProblem.Logistic, [.. Days.Select(x => 8 * x)], [.. Yields.Select(y => 1024 * y)]), rescaled);

        rescaled.Should().Equal(1024 * parameters[0], parameters[1], parameters[2] / 8);
    }

    [Fact]
    public void What_the_workspace_held_does_not_matter()
    {
        CurveProblem problem = new(3, CurveProblem.Logistic, Days, Yields);
        double[] parameters = [100, 1, 0.1];
        double[] again = [100, 1, 0.1];
        double[] dirty = new double[LeastSquares.WorkspaceLength(problem.Residuals, 3) + 5];
        Array.Fill(dirty, double.NaN);
        LeastSquares.Solve(ref problem, again, dirty, default);
        Solve(problem, parameters);

        again.Should().Equal(parameters);
        dirty[^5..].Should().AllSatisfy(left => left.Should().Be(double.NaN));
    }

    [Fact]
    public void Nothing_is_allocated()
    {
        CurveProblem problem = new(3, CurveProblem.Logistic, Days, Yields);
        double[] workspace = new double[LeastSquares.WorkspaceLength(problem.Residuals, problem.Parameters)];
        double[] parameters = [100, 1, 0.1];
        double[] covariance = new double[9];
        LeastSquares.Solve(ref problem, parameters, workspace, default);
        LeastSquares.Covariance(ref problem, parameters, covariance, workspace, out _);

        (parameters[0], parameters[1], parameters[2]) = (100, 1, 0.1);
        long before = GC.GetAllocatedBytesForCurrentThread();
        LeastSquares.Solve(ref problem, parameters, workspace, default);
        LeastSquares.Covariance(ref problem, parameters, covariance, workspace, out _);
        (GC.GetAllocatedBytesForCurrentThread() - before).Should().Be(0);
    }

    [Fact]
    public void A_logistic_is_found_again_from_afar() =>
        Gen.Select(Gen.Double[0.5, 10], Gen.Double[2, 5], Gen.Double[0.03, 0.15], Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5])
            .Sample((a, b, c, awayA, awayB, awayC) =>
            {
                double[] truth = [a, b, c];
                double[] y = [.. Days.Select(x => CurveProblem.Logistic(truth, x, new double[3]))];
                double[] parameters = [a * Math.Exp(awayA), b * Math.Exp(awayB), c * Math.Exp(awayC)];
                Solve(new(3, CurveProblem.Logistic, Days, y), parameters).Status.Should().Be(LeastSquaresStatus.ExactFit);
                parameters.Zip(truth).Should().AllSatisfy(p => p.First.Should().BeApproximately(p.Second, 1e-8 * p.Second));
            });

    [Fact]
    public void Spans_that_do_not_fit_the_problem_are_refused()
    {
        CurveProblem problem = new(2, CurveProblem.Line, [1, 2, 3], [3, 6, 6]);
        int length = LeastSquares.WorkspaceLength(3, 2);
        Solving(problem, 3, length).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*parameters*3*2*");
        Solving(problem, 2, length - 1).Should().Throw<ArgumentOutOfRangeException>().WithMessage($"*{length - 1}*{length}*");
        Solving(new(2, CurveProblem.Line, [1], [3]), 2, length).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*problem.Residuals*1*2*");
    }

    private static Action Solving(CurveProblem problem, int parameters, int workspace) =>
        () => LeastSquares.Solve(ref problem, new double[parameters], new double[workspace], default);

    private static LeastSquaresResult Solve(CurveProblem problem, double[] parameters) =>
        LeastSquares.Solve(ref problem, parameters, new double[LeastSquares.WorkspaceLength(problem.Residuals, problem.Parameters)], default);
}
