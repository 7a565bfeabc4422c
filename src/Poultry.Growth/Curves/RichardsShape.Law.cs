using System.Runtime.Intrinsics;

namespace Poultry.Growth.Curves;

/// <content>The law itself, four numbers at a time.</content>
internal sealed partial class RichardsShape
{
    /// <summary>Below this v u the differences of the closed form cancel.</summary>
    private const double SeriesLimit = 0.02;

    /// <summary>ln(W/scale) = -ln(1 - v u)/v and its derivatives by u and v; NaN where there is no weight.</summary>
    public static (double Log, double ByU, double ByV) Law(double v, double u)
    {
        (Vector256<double> log, Vector256<double> byU, Vector256<double> byV) = Law(v, Vector256.Create(u));
        return (log.ToScalar(), byU.ToScalar(), byV.ToScalar());
    }

    private static (Vector256<double> Log, Vector256<double> ByU, Vector256<double> ByV) Law(double v, Vector256<double> u)
    {
        if (v == 0)
        {
            return (u, Vector256<double>.One, u * u * 0.5);
        }

        Vector256<double> w = v * u;
        Vector256<double> open = Vector256<double>.One - w;
        Vector256<double> log = Vector256.Log(open) / -v;
        Vector256<double> byU = Vector256<double>.One / open;
        Vector256<double> byV = ((u * byU) - log) / Vector256.Create(v);
        Vector256<double> near = Vector256.LessThanOrEqual(Vector256.Abs(w), Vector256.Create(SeriesLimit));
        if (near == Vector256<double>.Zero)
        {
            return (log, byU, byV);
        }

        // Near v u = 0 both differences cancel: the series sum w^(n-1) u/n and its derivative by v, to the last bit for |w| < 0.02.
        Vector256<double> value = Vector256<double>.Zero;
        Vector256<double> slope = Vector256<double>.Zero;
        for (int n = 10; n >= 1; n--)
        {
            value = (value * w) + Vector256.Create(1.0 / n);
            slope = n >= 2 ? (slope * w) + Vector256.Create((n - 1.0) / n) : slope;
        }

        return (Vector256.ConditionalSelect(near, u * value, log), byU, Vector256.ConditionalSelect(near, u * u * slope, byV));
    }
}
