using Poultry.Growth.Primitives;

namespace Poultry.Growth.Numerics;

/// <summary>
/// Roots between two points of opposite sign, by inverse quadratic interpolation where the last three points bear it and by halving elsewhere:
/// T. R. Chandrupatla (1997), A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without
/// using derivatives, Advances in Engineering Software 28, 145-149.
/// </summary>
internal static class RootFinding
{
    /// <summary>Seeks a root between two points.</summary>
    /// <param name="function">The function; it need not be smooth, and may be infinite.</param>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end.</param>
    /// <param name="tolerance">How far off the root may be, 0 or more; four roundings of the root are always allowed.</param>
    /// <param name="root">A root or a change of sign, within the ends; not a number where the answer is false.</param>
    /// <returns>False where both ends have the same sign, or the function is not a number where it was asked.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ends are not in order or not a finite distance apart, or the tolerance is negative or not a number.</exception>
    public static bool Bracketed<TFunction>(ref TFunction function, double low, double high, double tolerance, out double root)
        where TFunction : struct, IScalarFunction, allows ref struct
    {
        Require.NotNegative(high - low, "");
        Require.Between(tolerance, 0, double.PositiveInfinity, "");
        (double newest, double opposite) = (low, high);
        (double atNewest, double atOpposite) = (function.At(low), function.At(high));
        if (atNewest == 0 || atOpposite == 0)
        {
            root = atNewest == 0 ? low : high;
            return true;
        }

        root = double.NaN;
        if (double.IsNaN(atNewest * atOpposite) || (atNewest > 0) == (atOpposite > 0))
        {
            return false;
        }

        double share = 0.5;
        while (true)
        {
            double next = newest + (share * (opposite - newest));
            double atNext = function.At(next);
            if (double.IsNaN(atNext))
            {
                return false;
            }

            bool sameSide = (atNext > 0) == (atNewest > 0);
            (double oldest, double atOldest) = sameSide ? (newest, atNewest) : (opposite, atOpposite);
            (opposite, atOpposite) = sameSide ? (opposite, atOpposite) : (newest, atNewest);
            bool stuck = next == newest || next == opposite;
            (newest, atNewest) = (next, atNext);
            double best = Math.Abs(atNewest) < Math.Abs(atOpposite) ? newest : opposite;
            double least = ((2 * Workspace.UnitRounding * Math.Abs(best)) + (0.5 * tolerance)) / Math.Abs(opposite - newest);
            if (atNewest == 0 || stuck || least > 0.5)
            {
                root = atNewest == 0 ? newest : best;
                return true;
            }

            double place = (newest - opposite) / (oldest - opposite);
            double value = (atNewest - atOpposite) / (atOldest - atOpposite);
            share = value * value < place && (1 - value) * (1 - value) < 1 - place
                ? Interpolate(newest, opposite, oldest, atNewest, atOpposite, atOldest)
                : 0.5;
            share = Math.Clamp(share, least, 1 - least);
        }
    }

    /// <summary>The share of the way from a to b at which the inverse parabola through the three points is zero.</summary>
    private static double Interpolate(double a, double b, double c, double atA, double atB, double atC) =>
        (atA / (atB - atA) * atC / (atB - atC)) + ((c - a) / (b - a) * atA / (atC - atA) * atB / (atC - atB));
}
