namespace Poultry.Growth.Curves;

/// <content>Where a search starts.</content>
internal sealed partial class RichardsShape
{
    /// <summary>Shapes from which a free v is searched; real series end anywhere between -0.5 and 40.</summary>
    private static ReadOnlySpan<double> StartShapes => [-0.3, 0, 0.5, 1, 3, 8, 20];

    public override void Start(
        int start,
        double origin,
        ReadOnlySpan<double> ageDays,
        ReadOnlySpan<double> logKilograms,
        ReadOnlySpan<double> weights,
        Span<double> q,
        Span<double> workspace)
    {
        // W^-v is linear in (1 - exp(-k t))/k for a given k (ln W for v = 0). The rates tried double, so their exponentials are squares.
        double v = fixedShape ?? StartShapes[start];
        int n = ageDays.Length;
        Span<double> x = workspace[..n];
        Span<double> z = workspace.Slice(n, n);
        Span<double> weight = workspace.Slice(2 * n, n);
        (double first, double last) = (double.MaxValue, double.MinValue);
        double mean = 0;
        for (int i = 0; i < n; i++)
        {
            (first, last) = (Math.Min(first, ageDays[i]), Math.Max(last, ageDays[i]));
            mean += logKilograms[i] / n;
        }

        double k = 0.25 / (last - first);
        for (int i = 0; i < n; i++)
        {
            double relative = logKilograms[i] - mean;
            x[i] = Math.Exp(-k * (ageDays[i] - origin));
            z[i] = v == 0 ? relative : Math.Exp(-v * relative);
            weight[i] = v == 0 ? weights[i] : weights[i] / (z[i] * z[i]);
        }

        double best = double.PositiveInfinity;
        for (int doubling = 0; doubling < (fixedShape is null ? 10 : 7); doubling++)
        {
            (double intercept, double slope, double rest) = Line(x, z, weight, k);
            double rho = v == 0 ? slope : -slope / (v * intercept);
            if (rest < best && rho > 0 && (v == 0 || intercept > 0))
            {
                best = rest;
                (q[0], q[1]) = (k, rho);
            }

            k *= 2;
            for (int i = 0; i < n; i++)
            {
                x[i] *= x[i];
            }
        }

        if (double.IsPositiveInfinity(best))
        {
            // Weights that do not grow: any start is as good.
            (q[0], q[1]) = (1 / (last - first), 1 / (last - first));
        }

        if (fixedShape is null)
        {
            q[2] = v;
        }
    }

    /// <summary>Weighted line of z on (1 - x)/k: intercept, slope, and the weighted sum of squares it leaves.</summary>
    private static (double Intercept, double Slope, double Left) Line(
        ReadOnlySpan<double> x, ReadOnlySpan<double> z, ReadOnlySpan<double> weight, double k)
    {
        (double s, double sx, double sz) = (0, 0, 0);
        for (int i = 0; i < x.Length; i++)
        {
            s += weight[i];
            sx += weight[i] * x[i];
            sz += weight[i] * z[i];
        }

        (double meanX, double meanZ) = (sx / s, sz / s);
        (double sxx, double sxz, double szz) = (0, 0, 0);
        for (int i = 0; i < x.Length; i++)
        {
            (double dx, double dz) = (x[i] - meanX, z[i] - meanZ);
            sxx += weight[i] * dx * dx;
            sxz += weight[i] * dx * dz;
            szz += weight[i] * dz * dz;
        }

        double slope = -k * sxz / sxx;
        return (meanZ - (slope * (1 - meanX) / k), slope, szz - (sxz * sxz / sxx));
    }
}
