using System.Runtime.Intrinsics;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <content>The three sums of squares, each with its best scale and exact derivatives, four weigh-ins at a time. Padding has no weight, and so no residual.</content>
internal ref partial struct ShapeProblem
{
    /// <summary>r = sqrt(w) (y - s phi), with s = sum w y phi / sum w phi².</summary>
    private bool InKilograms(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        // Weighted once and for all: r = rooted - s phi, both times the root of the weight. Spans of one known length spare the bounds checks.
        Span<Vector256<double>> phi = Lanes.Of(residuals);
        ReadOnlySpan<Vector256<double>> root = Lanes.Of(roots)[..phi.Length];
        ReadOnlySpan<Vector256<double>> rooted = Lanes.Of(rootedKilograms)[..phi.Length];
        ReadOnlySpan<Vector256<double>> curve = Lanes.Of(log)[..phi.Length];
        for (int i = 0; i < phi.Length; i++)
        {
            // In a pass of their own: the call would drive the sums out of the registers.
            phi[i] = Vector256.Exp(curve[i]);
        }

        (Vector256<double> yPhis, Vector256<double> phi2s) = (default, default);
        for (int i = 0; i < phi.Length; i++)
        {
            phi[i] *= root[i];
            yPhis += rooted[i] * phi[i];
            phi2s += phi[i] * phi[i];
        }

        (double yPhi, double phi2) = (Vector256.Sum(yPhis), Vector256.Sum(phi2s));
        double scale = fixedScale ? Scale : yPhi / phi2;
        Scale = scale;
        for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
        {
            ReadOnlySpan<Vector256<double>> column = Lanes.Of(columns.Slice(j * log.Length, log.Length))[..phi.Length];
            Span<Vector256<double>> slopes = Lanes.Of(jacobian.Slice(j * log.Length, log.Length))[..phi.Length];
            if (!fixedScale)
            {
                (Vector256<double> yPhiL, Vector256<double> phi2L) = (default, default);
                for (int i = 0; i < phi.Length; i++)
                {
                    Vector256<double> phiL = phi[i] * column[i];
                    yPhiL += phiL * rooted[i];
                    phi2L += phiL * phi[i];
                }

                byScale[j] = (Vector256.Sum(yPhiL) / yPhi) - (2 * Vector256.Sum(phi2L) / phi2);
            }

            Vector256<double> shift = Vector256.Create(byScale[j]);
            for (int i = 0; i < phi.Length; i++)
            {
                slopes[i] = -scale * phi[i] * (column[i] + shift);
            }
        }

        for (int i = 0; i < phi.Length; i++)
        {
            phi[i] = rooted[i] - (scale * phi[i]);
        }

        return double.IsFinite(scale * phi2) && scale > 0;
    }

    /// <summary>r = sqrt(w) (ln y - ln s - ln phi), with ln s the weighted mean of ln y - ln phi.</summary>
    private bool InLogarithms(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        int n = log.Length;
        double sum = Lanes.Sum(data.Weights);
        double logScale = fixedScale ? Math.Log(Scale) : (Lanes.Dot(data.Weights, data.LogKilograms) - Lanes.Dot(data.Weights, log)) / sum;
        Scale = Math.Exp(logScale);
        for (int i = 0; i < n; i++)
        {
            residuals[i] = roots[i] * (data.LogKilograms[i] - logScale - log[i]);
        }

        for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
        {
            ReadOnlySpan<double> column = columns.Slice(j * n, n);
            Span<double> slopes = jacobian.Slice(j * n, n);
            byScale[j] = fixedScale ? byScale[j] : -Lanes.Dot(data.Weights, column) / sum;
            for (int i = 0; i < n; i++)
            {
                slopes[i] = -roots[i] * (column[i] + byScale[j]);
            }
        }

        return double.IsFinite(logScale);
    }

    /// <summary>
    /// r = G sqrt(n) (y/phi - s) and G sqrt(squares within)/phi, with G the geometric mean of phi and s the weighted mean of y/phi:
    /// sum r² = S (geometric mean of f)², whose logarithm times half the number of observations is minus the log-likelihood, but for a constant.
    /// </summary>
    private bool ByLikelihood(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        int n = log.Length;
        double all = Lanes.Sum(data.Observations);
        double geometric = Math.Exp(Lanes.Dot(data.Observations, log) / all);
        Span<double> ratios = residuals[..n];
        Span<Vector256<double>> z = Lanes.Of(ratios);
        ReadOnlySpan<Vector256<double>> logKilograms = Lanes.Of(data.LogKilograms)[..z.Length];
        ReadOnlySpan<Vector256<double>> curve = Lanes.Of(log)[..z.Length];
        for (int i = 0; i < z.Length; i++)
        {
            z[i] = Vector256.Exp(logKilograms[i] - curve[i]);
        }

        double ratio = Lanes.Dot(data.Weights, ratios);
        Scale = fixedScale ? Scale : ratio / Lanes.Sum(data.Weights);
        Vector256<double> scale = Vector256.Create(Scale);
        ReadOnlySpan<Vector256<double>> root = Lanes.Of(roots)[..z.Length];
        ReadOnlySpan<Vector256<double>> squaresWithin = Lanes.Of(data.Within)[..z.Length];
        ReadOnlySpan<Vector256<double>> kilograms = Lanes.Of(data.Kilograms)[..z.Length];
        ReadOnlySpan<Vector256<double>> weight = Lanes.Of(data.Weights)[..z.Length];
        for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
        {
            ReadOnlySpan<double> columnOfLog = columns.Slice(j * n, n);
            ReadOnlySpan<Vector256<double>> column = Lanes.Of(columnOfLog)[..z.Length];
            Vector256<double> meanL = Vector256.Create(Lanes.Dot(data.Observations, columnOfLog) / all);
            Vector256<double> ratioL = default;
            for (int i = 0; i < z.Length; i++)
            {
                ratioL += weight[i] * z[i] * column[i];
            }

            Vector256<double> scaleL = scale * (fixedScale ? byScale[j] : -Vector256.Sum(ratioL) / ratio);
            Span<Vector256<double>> between = Lanes.Of(jacobian.Slice(2 * j * n, n))[..z.Length];
            Span<Vector256<double>> within = Lanes.Of(jacobian.Slice(((2 * j) + 1) * n, n))[..z.Length];
            for (int i = 0; i < z.Length; i++)
            {
                between[i] = geometric * root[i] * (((z[i] - scale) * meanL) - (z[i] * column[i]) - scaleL);
                within[i] = geometric * Vector256.Sqrt(squaresWithin[i]) * z[i] / kilograms[i] * (meanL - column[i]);
            }
        }

        Span<Vector256<double>> withinResiduals = Lanes.Of(residuals[n..])[..z.Length];
        for (int i = 0; i < z.Length; i++)
        {
            withinResiduals[i] = geometric * Vector256.Sqrt(squaresWithin[i]) * z[i] / kilograms[i];
            z[i] = geometric * root[i] * (z[i] - scale);
        }

        return double.IsFinite(Scale) && double.IsFinite(geometric) && double.IsFinite(Lanes.Sum(residuals));
    }
}
