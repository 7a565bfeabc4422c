using System.Collections.Immutable;

namespace Poultry.Growth.Curves;

/// <summary>The López law as W = scale * (1 + b y/(1 + kappa y)), y = (t/origin)^c: the scale is the hatch weight, and kappa = 0 is the limit without a mature weight.</summary>
internal sealed class LopezShape : CurveShape
{
    /// <summary>Starting ages of half growth, as multiples of the last age, and starting exponents.</summary>
    private static ImmutableArray<(double Halfway, double Exponent)> StartPoints { get; } =
        [(0.7, 1.5), (0.7, 3), (1.5, 1.5), (1.5, 2.5), (4, 1.5), (4, 2.5)];

    public static IReadOnlyList<CurveParameter> ParameterList { get; } =
    [
        CurveParameter.MatureWeight,
        new("hatch weight", "W0", "kg", "The weight at hatch."),
        new("halfway age", "K", "d", "The age at which half of the way from hatch weight to mature weight is done."),
        new("exponent", "c", "-", "Above 1 the curve has an inflection; the larger, the later and steeper."),
    ];

    public override int Count => 3;

    public override int Starts => StartPoints.Length;

    protected override bool EvaluateFours(
        ReadOnlySpan<double> q, double origin, ReadOnlySpan<double> ageDays, Span<double> logShape, Span<double> gradient)
    {
        (double b, double kappa, double c) = (q[0], q[1], q[2]);
        int n = ageDays.Length;
        bool sound = c > 0 && double.IsFinite(c);
        for (int i = 0; i < n; i++)
        {
            double s = ageDays[i] / origin;
            double y = Math.Pow(s, c);
            double damped = y / (1 + (kappa * y));
            double shape = 1 + (b * damped);
            logShape[i] = Math.Log(shape);
            sound &= 1 + (kappa * y) > 0 && shape > 0 && double.IsFinite(shape);
            if (!gradient.IsEmpty)
            {
                gradient[i] = damped / shape;
                gradient[n + i] = -b * damped * damped / shape;
                gradient[(2 * n) + i] = s > 0 ? b * damped / (1 + (kappa * y)) * Math.Log(s) / shape : 0;
            }
        }

        return sound;
    }

    public override void Start(
        int start,
        double origin,
        ReadOnlySpan<double> ageDays,
        ReadOnlySpan<double> logKilograms,
        ReadOnlySpan<double> weights,
        Span<double> q,
        Span<double> workspace)
    {
        // For given halfway age and exponent W is a line in the share done: weighted on the logarithmic scale, so by 1/W^2 here.
        (double halfway, double c) = StartPoints[start];
        double last = 0;
        foreach (double days in ageDays)
        {
            last = Math.Max(last, days);
        }

        double kappa = Math.Pow(origin / (halfway * last), c);
        (double s, double sx, double sz, double sxx, double sxz) = (0, 0, 0, 0, 0);
        for (int i = 0; i < ageDays.Length; i++)
        {
            double y = Math.Pow(ageDays[i] / origin, c);
            double x = y / (1 + (kappa * y));
            double z = Math.Exp(logKilograms[i]);
            double w = weights[i] / (z * z);
            s += w;
            sx += w * x;
            sz += w * z;
            sxx += w * x * x;
            sxz += w * x * z;
        }

        double slope = ((s * sxz) - (sx * sz)) / ((s * sxx) - (sx * sx));
        double intercept = (sz - (slope * sx)) / s;
        q[0] = intercept > 0 && slope > 0 ? slope / intercept : Math.Exp(logKilograms[^1] - logKilograms[0]);
        q[1] = kappa;
        q[2] = c;
    }

    public override bool HasMatureWeight(ReadOnlySpan<double> q) => q[0] > 0 && q[1] > 0;

    public override void ToParameters(double logScale, ReadOnlySpan<double> q, double origin, Span<double> parameters, Span<double> jacobian)
    {
        (double b, double kappa, double c) = (q[0], q[1], q[2]);
        double hatch = Math.Exp(logScale);
        double halfway = origin * Math.Pow(kappa, -1 / c);
        parameters[0] = hatch * (1 + (b / kappa));
        parameters[1] = hatch;
        parameters[2] = halfway;
        parameters[3] = c;
        jacobian[..16].Clear();
        jacobian[0] = parameters[0];
        jacobian[1] = hatch / kappa;
        jacobian[2] = -hatch * b / (kappa * kappa);
        jacobian[4] = hatch;
        jacobian[8 + 2] = -halfway / (c * kappa);
        jacobian[8 + 3] = halfway * Math.Log(kappa) / (c * c);
        jacobian[12 + 3] = 1;
    }

    public override int CoordinateFor(int parameter) => parameter switch { 0 or 1 => 0, NoMatureWeight or 2 => 2, _ => 3 };

    public override bool Hold(int parameter, double value, double origin, Span<double> q, Span<double> derivatives, out double logScale)
    {
        logScale = double.NaN;
        derivatives.Clear();
        (double b, double kappa, double c) = (q[0], q[1], q[2]);
        switch (parameter)
        {
            case NoMatureWeight:
                q[1] = 0;
                return true;
            case 0:
                logScale = Math.Log(value / (1 + (b / kappa)));
                derivatives[0] = -1 / (kappa + b);
                derivatives[1] = b / (kappa * (kappa + b));
                return HasMatureWeight(q) && double.IsFinite(logScale);
            case 1:
                logScale = Math.Log(value);
                return true;
            case 2:
                q[1] = Math.Pow(origin / value, c);
                derivatives[2] = q[1] * Math.Log(origin / value);
                return true;
            default:
                q[2] = value;
                return true;
        }
    }

    public override bool AimAtMatureWeight(double logMature, double logScale, Span<double> q)
    {
        double ratio = Math.Exp(logMature - logScale);
        if (ratio <= 1)
        {
            return false;
        }

        q[1] = q[0] / (ratio - 1);
        return true;
    }

    public override bool LimitIsTowards(int parameter, bool upward) => upward && parameter is (0 or 2);

    public override bool MoveToLimit(int parameter, Span<double> q) => false;
}
