using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>
/// What the tangent plane leaves out, where it is known by hand: r = (x + 1, b x² + x - 1), an example of many courses (no source). Its squares have a minimum of 2 at x = 0 for b
/// below 1, and near it a step of Gauss and Newton leaves b times the distance.
/// </summary>
public class ResidualCurvatureTests
{
    [Theory]
    [InlineData(0.9)]
    [InlineData(-0.9)]
    [InlineData(-3)]
    public void Large_residuals_that_bend_are_no_long_way(double bending)
    {
        // Gauss and Newton's steps would take 190 evaluations for the nine digits asked for, and with b = -3 never arrive.
        double[] parameters = [0.01];
        LeastSquaresResult result = Solve(Bent(bending), parameters);

        result.Status.Should().Be(LeastSquaresStatus.Converged);
        result.Evaluations.Should().BeLessThan(10);
        parameters[0].Should().BeApproximately(0, 1e-8);
        result.SumOfSquares.Should().BeApproximately(2, 1e-12);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(-0.001)]
    public void A_maximum_is_left(double start)
    {
        // With b = 3 half the slope is x (18 x² + 9 x - 4): a maximum at 0, and a minimum on both sides of it.
        double[] parameters = [start];
        Solve(Bent(3), parameters).Status.Should().Be(LeastSquaresStatus.Converged);

        double root = Math.Sqrt((9 * 9) + (4 * 18 * 4));
        Math.Min(Math.Abs(parameters[0] - ((root - 9) / 36)), Math.Abs(parameters[0] + ((root + 9) / 36))).Should().BeLessThan(1e-8);
    }

    [Fact]
    public void One_step_teaches_how_one_parameter_bends()
    {
        // From 0.5 to 0.4 with b = 0.75: J = (1, 1.75) and (1, 1.6), r there (1.4, -0.48), so that S = -0.15 * -0.48 / -0.1 = -0.72.
        const double slope = 1.4 - (1.6 * 0.48);
        const double plane = 1 + (1.6 * 1.6);
        Path path = new(Bent(0.75), 1, [0.5]);
        path.Go([0.4]);

        (double[] step, double promise) = path.Step()!.Value;
        step[0].Should().BeApproximately(-slope / (plane - 0.72), 1e-14);
        promise.Should().BeApproximately(slope * slope / (plane - 0.72), 1e-14);

        path.Curvature.Forget();
        path.Step()!.Value.Step[0].Should().BeApproximately(-slope / plane, 1e-14, "what is left is the tangent plane's step");
    }

    [Fact]
    public void Where_the_squares_have_a_maximum_there_is_no_step()
    {
        // b = 3 at 0: J'J = 2, S = -6.
        Path path = new(Bent(3), 1, [0.1]);
        path.Go([0]);

        path.Step().Should().BeNull();
    }

    [Fact]
    public void A_step_that_teaches_nothing_changes_nothing()
    {
        // A line does not bend: J is the same everywhere, and what differs is rounding.
        Path path = new(new(2, CurveProblem.Line, [1, 2, 3], [3, 6, 6]), 2, [0, 0]);
        path.Go([1, 0.25]);

        double[] step = path.Step()!.Value.Step;
        step[0].Should().BeApproximately(1, 1e-13);
        step[1].Should().BeApproximately(1.25, 1e-13);
    }

    [Fact]
    public void A_lost_column_teaches_nothing()
    {
        // At b = 0 the first parameter of a (1 - exp(-b x)) moves nothing.
        CurveProblem problem = new(2, CurveProblem.Saturation, [1, 2, 4], [3, 4, 6]);
        Path path = new(problem, 2, [5, 0]);
        path.Go([5, 0.4]);
        Path fresh = new(problem, 2, [5, 0.4]);

        path.Step()!.Value.Step.Should().Equal(fresh.Step()!.Value.Step);
    }

    [Fact]
    public void Two_steps_teach_two_parameters_by_matrices_of_rank_one()
    {
        // The same sums in full: v = (J there - J here)' r there - S s, S becomes S + v v' / v's.
        CurveProblem problem = new(2, CurveProblem.Saturation, [1, 2, 3, 5, 7], [3, 4.5, 4, 6, 5.5]);
        double[][] points = [[5, 0.5], [5.5, 0.6], [5.4, 0.75]];
        Path path = new(problem, 2, points[0]);
        (double s00, double s01, double s11) = (0, 0, 0);
        for (int k = 1; k < points.Length; k++)
        {
            path.Go(points[k]);
            double[] residuals = Residuals(problem, points[k], out double[] there);
            Residuals(problem, points[k - 1], out double[] here);
            double[] step = [points[k][0] - points[k - 1][0], points[k][1] - points[k - 1][1]];
            double Bent(int j) => Enumerable.Range(0, 5).Sum(i => (there[(5 * j) + i] - here[(5 * j) + i]) * residuals[i]);
            double[] v = [Bent(0) - (s00 * step[0]) - (s01 * step[1]), Bent(1) - (s01 * step[0]) - (s11 * step[1])];
            double along = (v[0] * step[0]) + (v[1] * step[1]);
            (s00, s01, s11) = (s00 + (v[0] * v[0] / along), s01 + (v[0] * v[1] / along), s11 + (v[1] * v[1] / along));
        }

        double[] r = Residuals(problem, points[^1], out double[] jacobian);
        double Product(int a, int b) => Enumerable.Range(0, 5).Sum(i => jacobian[(5 * a) + i] * jacobian[(5 * b) + i]);
        double Slope(int a) => Enumerable.Range(0, 5).Sum(i => jacobian[(5 * a) + i] * r[i]);
        (double h00, double h01, double h11) = (Product(0, 0) + s00, Product(0, 1) + s01, Product(1, 1) + s11);
        double determinant = (h00 * h11) - (h01 * h01);
        double first = ((h01 * Slope(1)) - (h11 * Slope(0))) / determinant;
        double second = ((h01 * Slope(0)) - (h00 * Slope(1))) / determinant;

        (double[] found, double promise) = path.Step()!.Value;
        found[0].Should().BeApproximately(first, 1e-10 * Math.Abs(first));
        found[1].Should().BeApproximately(second, 1e-10 * Math.Abs(second));
        promise.Should().BeApproximately(-(Slope(0) * first) - (Slope(1) * second), 1e-10);
    }

    private static CurveProblem Bent(double bending) => new(
        1,
        (p, which, gradient) =>
        {
            gradient[0] = which == 0 ? 1 : (2 * bending * p[0]) + 1;
            return which == 0 ? p[0] + 1 : (bending * p[0] * p[0]) + p[0] - 1;
        },
        [0, 1],
        [0, 0]);

    private static LeastSquaresResult Solve(CurveProblem problem, double[] parameters) =>
        LeastSquares.Solve(ref problem, parameters, new double[LeastSquares.WorkspaceLength(problem.Residuals, problem.Parameters)], default);

    private static double[] Residuals(CurveProblem problem, double[] point, out double[] jacobian)
    {
        double[] residuals = new double[problem.Residuals];
        jacobian = new double[problem.Residuals * problem.Parameters];
        problem.Evaluate(point, residuals, jacobian);
        return residuals;
    }

    /// <summary>Points one after the other, as a search visits them.</summary>
    private ref struct Path
    {
        private CurveProblem problem;
        private double[] last;
        private Linearisation here;
        private Linearisation there;

        public Path(CurveProblem problem, int columns, double[] start)
        {
            (this.problem, last) = (problem, start);
            Span<double> room = new double[200];
            here = new(problem.Residuals, columns, ref room);
            there = new(problem.Residuals, columns, ref room);
            Curvature = new(columns, ref room);
            here.Evaluate(ref this.problem, start).Should().BeTrue();
            here.Factor().Should().BeTrue();
        }

        public ResidualCurvature Curvature { get; }

        public void Go(double[] point)
        {
            there.Evaluate(ref problem, point).Should().BeTrue();
            Curvature.Note(here, there);
            there.Factor().Should().BeTrue();
            Curvature.Learn(there, [.. point.Zip(last, (to, from) => to - from)]);
            last = point;
            Linearisation left = here;
            here = there;
            there = left;
        }

        public readonly (double[] Step, double Promise)? Step()
        {
            double[] step = new double[last.Length];
            return Curvature.FindStep(here, step, out double promise) ? (step, promise) : null;
        }
    }
}
