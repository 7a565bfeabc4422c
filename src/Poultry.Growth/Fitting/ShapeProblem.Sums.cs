namespace Poultry.Growth.Fitting;

/// <content>The three sums of squares, each with its best scale and exact derivatives.</content>
internal ref partial struct ShapeProblem
{
    /// <summary>r = sqrt(w) (y - s phi), with s = sum w y phi / sum w phi².</summary>
    private bool InKilograms(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        // Weighted once and for all: r = rooted - s phi, both times the root of the weight. Spans of one known length spare the bounds checks.
        int n = log.Length;
        ReadOnlySpan<double> logs = log[..n];
        ReadOnlySpan<double> root = roots[..n];
        ReadOnlySpan<double> rooted = rootedKilograms[..n];
        Span<double> phi = residuals[..n];
        (double yPhi, double phi2) = (0, 0);
        for (int i = 0; i < logs.Length; i++)
        {
            double value = root[i] * Math.Exp(logs[i]);
            phi[i] = value;
            yPhi += rooted[i] * value;
            phi2 += value * value;
        }

        double scale = fixedScale ? Math.Exp(LogScale) : yPhi / phi2;
        LogScale = fixedScale ? LogScale : Math.Log(scale);
        for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
        {
            ReadOnlySpan<double> column = columns.Slice(j * n, n);
            Span<double> slopes = jacobian.Slice(j * n, n);
            if (!fixedScale)
            {
                (double yPhiL, double phi2L) = (0, 0);
                for (int i = 0; i < column.Length; i++)
                {
                    double phiL = phi[i] * column[i];
                    yPhiL += phiL * rooted[i];
                    phi2L += phiL * phi[i];
                }

                byScale[j] = (yPhiL / yPhi) - (2 * phi2L / phi2);
            }

            double shift = byScale[j];
            for (int i = 0; i < column.Length; i++)
            {
                slopes[i] = -scale * phi[i] * (column[i] + shift);
            }
        }

        double sum = 0;
        for (int i = 0; i < phi.Length; i++)
        {
            phi[i] = rooted[i] - (scale * phi[i]);
            sum += phi[i];
        }

        return double.IsFinite(sum) && double.IsFinite(scale) && scale > 0;
    }

    /// <summary>r = sqrt(w) (ln y - ln s - ln phi), with ln s the weighted mean of ln y - ln phi.</summary>
    private bool InLogarithms(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        int n = data.Count;
        if (!fixedScale)
        {
            (double sum, double total) = (0, 0);
            for (int i = 0; i < n; i++)
            {
                sum += data.Weights[i];
                total += data.Weights[i] * (data.LogKilograms[i] - log[i]);
            }

            LogScale = total / sum;
            for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
            {
                byScale[j] = 0;
                for (int i = 0; i < n; i++)
                {
                    byScale[j] -= data.Weights[i] * columns[(j * n) + i] / sum;
                }
            }
        }

        bool sound = double.IsFinite(LogScale);
        for (int i = 0; i < n; i++)
        {
            double root = roots[i];
            residuals[i] = root * (data.LogKilograms[i] - LogScale - log[i]);
            for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
            {
                jacobian[(j * n) + i] = -root * (columns[(j * n) + i] + byScale[j]);
            }
        }

        return sound;
    }

    /// <summary>
    /// r = G sqrt(n) (y/phi - s) and G sqrt(squares within)/phi, with G the geometric mean of phi and s the weighted mean of y/phi:
    /// sum r² = S (geometric mean of f)², whose logarithm times half the number of observations is minus the log-likelihood, but for a constant.
    /// </summary>
    private bool ByLikelihood(bool fixedScale, ReadOnlySpan<double> columns, Span<double> byScale, Span<double> residuals, Span<double> jacobian)
    {
        int n = data.Count;
        (double observations, double weights, double meanLog, double ratio) = (0, 0, 0, 0);
        for (int i = 0; i < n; i++)
        {
            double z = Math.Exp(data.LogKilograms[i] - log[i]);
            residuals[i] = z;
            observations += data.Observations[i];
            meanLog += data.Observations[i] * log[i];
            weights += data.Weights[i];
            ratio += data.Weights[i] * z;
        }

        if (!fixedScale)
        {
            LogScale = Math.Log(ratio / weights);
        }

        double scale = Math.Exp(LogScale);
        double geometric = Math.Exp(meanLog / observations);
        bool sound = double.IsFinite(scale) && scale > 0 && double.IsFinite(geometric);
        for (int j = 0; j < byScale.Length && !jacobian.IsEmpty; j++)
        {
            ReadOnlySpan<double> column = columns.Slice(j * n, n);
            (double meanL, double ratioL) = (0, 0);
            for (int i = 0; i < n; i++)
            {
                meanL += data.Observations[i] * column[i] / observations;
                ratioL += data.Weights[i] * residuals[i] * column[i];
            }

            double byLogScale = fixedScale ? byScale[j] : -ratioL / ratio;
            Span<double> between = jacobian.Slice(2 * j * n, n);
            Span<double> within = jacobian.Slice(((2 * j) + 1) * n, n);
            for (int i = 0; i < n; i++)
            {
                double z = residuals[i];
                double root = geometric * roots[i];
                between[i] = root * (((z - scale) * meanL) - (z * column[i]) - (scale * byLogScale));
                within[i] = geometric * Math.Sqrt(data.Within[i]) * z / data.Kilograms[i] * (meanL - column[i]);
            }
        }

        for (int i = 0; i < n; i++)
        {
            double z = residuals[i];
            residuals[i] = geometric * roots[i] * (z - scale);
            residuals[n + i] = geometric * Math.Sqrt(data.Within[i]) * z / data.Kilograms[i];
            sound &= double.IsFinite(residuals[i]) && double.IsFinite(residuals[n + i]);
        }

        return sound;
    }
}
