namespace Poultry.Growth.Numerics;

/// <summary>
/// A cubic through each pair of neighbouring points that rises where they rise (Fritsch and Carlson 1980; slopes at the points by
/// the weighted harmonic mean of Fritsch and Butland 1984), for x increasing and y not falling.
/// </summary>
/// <remarks>
/// Own code, since it must refuse to extrapolate, invert, take two points and name its steepest point; a test holds it against
/// the interpolation of the numerics library.
/// </remarks>
internal sealed class MonotoneCubic
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slopes;

    /// <summary>The curve through two or more points; the arrays are kept, not copied.</summary>
    public MonotoneCubic(double[] x, double[] y)
    {
        (this.x, this.y) = (x, y);
        slopes = Slopes(x, y);
    }

    /// <summary>Whether a place lies between the first point and the last, both included.</summary>
    public bool Covers(double at) => at >= x[0] && at <= x[^1];

    /// <summary>The value; NaN outside the points.</summary>
    public double Value(double at)
    {
        if (!Covers(at))
        {
            return double.NaN;
        }

        int i = Piece(at);
        double h = x[i + 1] - x[i];
        double s = (at - x[i]) / h;
        double open = 1 - s;

        // Hermite's form: no cancellation, and the points come out exactly. The curve stays between its points; its rounding must too.
        double value = (y[i] * open * open * (1 + (2 * s)))
            + (y[i + 1] * s * s * (3 - (2 * s)))
            + (h * s * open * ((slopes[i] * open) - (slopes[i + 1] * s)));
        return Math.Clamp(value, y[i], y[i + 1]);
    }

    /// <summary>The slope; NaN outside the points.</summary>
    public double Slope(double at)
    {
        if (!Covers(at))
        {
            return double.NaN;
        }

        int i = Piece(at);
        double s = (at - x[i]) / (x[i + 1] - x[i]);
        return (6 * Secant(x, y, i) * s * (1 - s)) + (slopes[i] * (1 - s) * (1 - (3 * s))) + (slopes[i + 1] * s * ((3 * s) - 2));
    }

    /// <summary>The first place where a value from the first to the last y is reached.</summary>
    public double Inverse(double value)
    {
        int next = 0;
        while (y[next] < value)
        {
            next++;
        }

        if (y[next] == value)
        {
            return x[next];
        }

        // Halving ends by itself when no number lies between: sure, and fast enough for tables.
        (double low, double high) = (x[next - 1], x[next]);
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
        {
            (low, high) = Value(middle) < value ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>Where the slope is highest; null where that is an end.</summary>
    public double? Steepest()
    {
        double best = Math.Max(slopes[0], slopes[^1]);
        double? where = null;
        for (int i = 0; i < x.Length - 1; i++)
        {
            // The slope is a parabola 6 m s(1-s) + d0 (1-s)(1-3s) + d1 s(3s-2): its vertex, where it opens downwards inside the piece.
            double bend = slopes[i] + slopes[i + 1] - (2 * Secant(x, y, i));
            double s = ((2 * slopes[i]) + slopes[i + 1] - (3 * Secant(x, y, i))) / (3 * bend);
            double candidate = bend < 0 && s > 0 && s < 1 ? x[i] + (s * (x[i + 1] - x[i])) : x[i];
            double slope = Slope(candidate);

            // On a straight stretch no place is steeper than another by more than rounding.
            if (slope > best * (1 + 1e-12))
            {
                (best, where) = (slope, candidate);
            }
        }

        return where;
    }

    private static double Secant(double[] x, double[] y, int i) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]);

    private static double[] Slopes(double[] x, double[] y)
    {
        int last = x.Length - 1;
        double[] slopes = new double[x.Length];
        if (last == 1)
        {
            slopes[0] = slopes[1] = Secant(x, y, 0);
            return slopes;
        }

        for (int i = 1; i < last; i++)
        {
            (double before, double after) = (Secant(x, y, i - 1), Secant(x, y, i));
            double weightBefore = (2 * x[i + 1]) - x[i] - x[i - 1];
            double weightAfter = x[i + 1] + x[i] - (2 * x[i - 1]);
            slopes[i] = before > 0 && after > 0 ? (weightBefore + weightAfter) / ((weightBefore / before) + (weightAfter / after)) : 0;
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], Secant(x, y, 0), Secant(x, y, 1));
        slopes[last] = End(x[last] - x[last - 1], x[last - 1] - x[last - 2], Secant(x, y, last - 1), Secant(x, y, last - 2));
        return slopes;
    }

    /// <summary>The slope of the parabola through three points at its end, or 0 where it would make the curve fall.</summary>
    private static double End(double h, double nextH, double secant, double nextSecant) =>
        Math.Max(0, ((((2 * h) + nextH) * secant) - (h * nextSecant)) / (h + nextH));

    private int Piece(double at)
    {
        int found = Array.BinarySearch(x, at);
        return Math.Min(found >= 0 ? found : ~found - 1, x.Length - 2);
    }
}
