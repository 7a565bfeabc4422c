using System.Runtime.Intrinsics;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Curves;

/// <summary>
/// One law under four names. Every Richards curve, with Gompertz (v = 0), logistic (v = 1) and von Bertalanffy (v = -1/3) among them, is
/// W = scale * (1 - v u)^(-1/v), u = rho (1 - exp(-k (t - origin)))/k, where the scale is the weight and rho the relative gain at the origin.
/// </summary>
/// <remarks>
/// In these coordinates the limit without a mature weight is an ordinary point: the exponential at k = v rho (v not below 0), the
/// power of t at k = 0 (v below 0). So a fit that wants to be exponential walks through it and is recognised.
/// </remarks>
internal sealed partial class RichardsShape : CurveShape
{
    private readonly double? fixedShape;

    private RichardsShape(double? fixedShape) => this.fixedShape = fixedShape;

    public override int Count => fixedShape is null ? 3 : 2;

    public override int Starts => fixedShape is null ? StartShapes.Length : 1;

    /// <summary>Coordinates (k, rho) for a law of known shape.</summary>
    public static RichardsShape Fixed(double shape) => new(shape);

    /// <summary>Coordinates (k, rho, v).</summary>
    public static RichardsShape Free() => new(null);

    protected override bool EvaluateFours(
        ReadOnlySpan<double> q, double origin, ReadOnlySpan<double> ageDays, Span<double> logShape, Span<double> gradient)
    {
        double k = q[0];
        double rho = q[1];
        double v = fixedShape ?? q[2];
        int n = ageDays.Length;
        ReadOnlySpan<Vector256<double>> days = Lanes.Of(ageDays);
        Span<Vector256<double>> log = Lanes.Of(logShape)[..days.Length];
        Span<Vector256<double>> byK = gradient.IsEmpty ? default : Lanes.Of(gradient[..n])[..days.Length];
        Span<Vector256<double>> byRho = gradient.IsEmpty ? default : Lanes.Of(gradient.Slice(n, n))[..days.Length];
        Span<Vector256<double>> byV = gradient.IsEmpty || fixedShape is not null ? default : Lanes.Of(gradient.Slice(2 * n, n))[..days.Length];
        Vector256<double> origins = Vector256.Create(origin);
        Warp warp = new(k);

        // Exponentials and the law in passes of their own: their calls would drive all else out of the registers.
        for (int i = 0; i < log.Length; i++)
        {
            log[i] = warp.Decay(days[i] - origins);
        }

        for (int i = 0; i < log.Length; i++)
        {
            warp.At(days[i] - origins, log[i], out Vector256<double> g, out Vector256<double> gByK);
            log[i] = rho * g;
            if (!byK.IsEmpty)
            {
                byK[i] = rho * gByK;
                byRho[i] = g;
            }
        }

        for (int i = 0; i < log.Length && (v != 0 || !byV.IsEmpty); i++)
        {
            (log[i], Vector256<double> byU, Vector256<double> byShape) = Law(v, log[i]);
            if (!byK.IsEmpty)
            {
                byK[i] *= byU;
                byRho[i] *= byU;
            }

            if (!byV.IsEmpty)
            {
                byV[i] = byShape;
            }
        }

        return double.IsFinite(Lanes.Sum(logShape)) && v > -1;
    }

    public override bool HasMatureWeight(ReadOnlySpan<double> q)
    {
        double v = fixedShape ?? q[2];
        return q[1] > 0 && q[0] > 0 && q[0] > v * q[1];
    }

    public override void ToParameters(double logScale, ReadOnlySpan<double> q, double origin, Span<double> parameters, Span<double> jacobian)
    {
        double k = q[0];
        double rho = q[1];
        double v = fixedShape ?? q[2];
        int columns = 1 + Count;
        double rest = k - (v * rho);
        (double log, double byU, double byV) = Law(v, rho / k);
        double logE = Math.Log(rho / rest);
        double mature = Math.Exp(logScale + log);
        parameters[0] = mature;
        parameters[1] = k;
        parameters[2] = origin + (logE / k);
        jacobian[..(parameters.Length * columns)].Clear();
        jacobian[0] = mature;
        jacobian[1] = -mature * byU * rho / (k * k);
        jacobian[2] = mature * byU / k;
        jacobian[columns + 1] = 1;
        jacobian[(2 * columns) + 1] = -((logE / k) + (1 / rest)) / k;
        jacobian[(2 * columns) + 2] = 1 / (rho * rest);
        if (fixedShape is null)
        {
            parameters[3] = v;
            jacobian[3] = mature * byV;
            jacobian[(2 * columns) + 3] = rho / (rest * k);
            jacobian[(3 * columns) + 3] = 1;
        }
    }

    public override int CoordinateFor(int parameter) => parameter switch { NoMatureWeight => 1, 0 => 0, 1 => 1, 2 => 2, _ => 3 };

    public override bool Hold(int parameter, double value, double origin, Span<double> q, Span<double> derivatives, out double logScale)
    {
        logScale = double.NaN;
        derivatives.Clear();
        double v = fixedShape ?? q[2];
        switch (parameter)
        {
            case NoMatureWeight:
                q[0] = Math.Max(v, 0) * q[1];
                derivatives[1] = Math.Max(v, 0);
                SetByShape(derivatives, v > 0 ? q[1] : 0);
                return true;
            case 0:
                (double log, double byU, double byV) = Law(v, q[1] / q[0]);
                logScale = Math.Log(value) - log;
                derivatives[0] = byU * q[1] / (q[0] * q[0]);
                derivatives[1] = -byU / q[0];
                SetByShape(derivatives, -byV);
                return HasMatureWeight(q) && double.IsFinite(logScale);
            case 1:
                q[0] = value;
                return true;
            case 2:
                double e = Math.Exp(q[0] * (value - origin));
                double open = 1 + (v * e);
                q[1] = q[0] * e / open;
                derivatives[0] = (e / open) + (q[1] * (value - origin) / open);
                SetByShape(derivatives, -q[1] * e / open);
                return q[0] > 0 && q[1] > 0 && double.IsFinite(q[1]);
            default:
                q[2] = value;
                return true;
        }
    }

    public override bool AimAtMatureWeight(double logMature, double logScale, Span<double> q)
    {
        double v = fixedShape ?? q[2];
        double ratio = logMature - logScale;
        if (ratio <= 0)
        {
            return false;
        }

        // (1 - v rho/k)^(-1/v) = A/scale, solved for k.
        q[0] = v == 0 ? q[1] / ratio : v * q[1] / (1 - Math.Exp(-v * ratio));
        return true;
    }

    public override bool LimitIsTowards(int parameter, bool upward) =>
        upward ? parameter is 0 or 2 : parameter == 1 && (fixedShape is null or <= 0);

    public override bool MoveToLimit(int parameter, Span<double> q)
    {
        if (parameter != 1 || fixedShape is not > 0)
        {
            return false;
        }

        q[1] = q[0] / fixedShape.Value;
        return true;
    }

    private void SetByShape(Span<double> derivatives, double value)
    {
        if (fixedShape is null)
        {
            derivatives[2] = value;
        }
    }
}
