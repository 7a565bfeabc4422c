using CsCheck;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

public class RootFindingTests
{
    [Fact]
    public void Textbook_roots_are_found_to_the_last_digits()
    {
        Root(x => (x * x) - 2, 0, 2).Should().BeApproximately(Math.Sqrt(2), 1e-15);
        Root(x => Math.Cos(x) - x, 0, 1).Should().BeApproximately(0.7390851332151607, 1e-15, "Dottie's number, OEIS A003957");
        Root(x => Math.Exp(x) - 1e-30, -100, 0).Should().BeApproximately(-30 * Math.Log(10), 1e-13);
        Root(x => x - 1e-200, -1, 1).Should().BeApproximately(1e-200, 1e-214);
    }

    [Fact]
    public void Falling_rises_and_ends_count_alike()
    {
        Root(x => 2 - (x * x), 0, 2).Should().BeApproximately(Math.Sqrt(2), 1e-15);
        Root(x => x, 0, 1).Should().Be(0);
        Root(x => x - 1, 0, 1).Should().Be(1);
        Root(x => x, 0, 0).Should().Be(0);
    }

    [Fact]
    public void Flat_steep_and_broken_functions_are_no_trouble()
    {
        Root(x => Math.Pow(x - 0.3, 9), -1, 2).Should().BeApproximately(0.3, 1e-15);
        Root(x => Math.Sign(x - 0.3), -1, 2).Should().BeApproximately(0.3, 1e-15);
        Root(x => 1 / (x - 0.3), -1, 2).Should().BeApproximately(0.3, 1e-15, "a change of sign through infinity counts");
        Root(x => x < 0.3 ? double.NegativeInfinity : x, -1, 2).Should().BeApproximately(0.3, 1e-15);
        Root(x => Math.Cbrt(x), -1, 8).Should().BeApproximately(0, 1e-300);
    }

    [Fact]
    public void The_tolerance_saves_evaluations_and_is_kept()
    {
        ScalarFunction coarse = new(x => Math.Exp(x) - 2);
        ScalarFunction fine = new(x => Math.Exp(x) - 2);
        RootFinding.Bracketed(ref coarse, 0, 10, 1e-3, out double near).Should().BeTrue();
        RootFinding.Bracketed(ref fine, 0, 10, 0, out double exact).Should().BeTrue();

        near.Should().BeApproximately(Math.Log(2), 1e-3);
        exact.Should().BeApproximately(Math.Log(2), 1e-15);
        coarse.Evaluations.Should().BeLessThan(fine.Evaluations).And.BeLessThan(14);
        fine.Evaluations.Should().BeLessThan(18);
    }

    [Fact]
    public void Without_a_change_of_sign_there_is_no_answer()
    {
        Finds(x => 1 + (x * x), -1, 1).Should().BeFalse();
        Finds(x => double.NaN, -1, 1).Should().BeFalse();
        Finds(x => x is -1 or 1 ? x : double.NaN, -1, 1).Should().BeFalse();
    }

    [Fact]
    public void Any_cubic_is_solved_within_its_bracket() =>
        Gen.Select(Gen.Double[-100, 100], Gen.Double[1e-6, 1e6], Gen.Double[0, 10])
            .Sample((root, steepness, bend) =>
            {
                double found = Root(x => (x - root) * (steepness + (bend * (x - root) * (x - root))), -101, 103);
                found.Should().BeApproximately(root, 1e-13);
            });

    [Fact]
    public void Ends_out_of_order_and_tolerances_below_zero_are_refused()
    {
        ((Action)(() => Finds(x => x, 1, -1))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*-2*high - low*");
        ((Action)(() => Finds(x => x, double.NegativeInfinity, 1))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*high - low*");
        ((Action)(() => Finds(x => x, -1, 1, -1e-9))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*tolerance*");
    }

    private static double Root(Func<double, double> function, double low, double high)
    {
        ScalarFunction scalar = new(function);
        RootFinding.Bracketed(ref scalar, low, high, 0, out double root).Should().BeTrue();
        root.Should().BeInRange(low, high);
        return root;
    }

    private static bool Finds(Func<double, double> function, double low, double high, double tolerance = 0)
    {
        ScalarFunction scalar = new(function);
        bool found = RootFinding.Bracketed(ref scalar, low, high, tolerance, out double root);
        double.IsNaN(root).Should().Be(!found);
        return found;
    }

    private struct ScalarFunction(Func<double, double> function) : IScalarFunction
    {
        public int Evaluations { get; private set; }

        public double At(double x)
        {
            Evaluations++;
            return function(x);
        }
    }
}
