using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <content>The second half of a round: C, mu+, S+ and tau²+ from the tangent planes at the modes.</content>
internal sealed partial class LaplaceEm<TCurve>
{
    /// <summary>C and mu+; false where the batches leave mu open.</summary>
    private bool FindMean(out double[] mean)
    {
        mean = new double[p];
        Span<double> precision = meanCovariance;
        Span<double> right = stackalloc double[p];
        right.Clear();
        precision.Clear();
        if (settings.CentrePrecision.Length > 0)
        {
            settings.CentrePrecision.CopyTo(precision);
            SymmetricMatrix.Multiply(precision, settings.Centre, right);
        }

        for (int m = 0; m < modes.Length; m++)
        {
            GroupMode mode = modes[m];
            Span<double> k = Sensitivity(m);
            for (int a = 0; a < q; a++)
            {
                for (int j = 0; j < p; j++)
                {
                    double sum = 0;
                    for (int b = 0; b < q; b++)
                    {
                        sum += mode.Covariance[(a * q) + b] * mode.Information[(population.Random[b] * p) + j];
                    }

                    k[(a * p) + j] = sum;
                }
            }

            for (int i = 0; i < p; i++)
            {
                right[i] += mode.Score[i];
                for (int a = 0; a < q; a++)
                {
                    right[i] -= k[(a * p) + i] * mode.Score[population.Random[a]];
                }

                for (int j = 0; j < p; j++)
                {
                    double sum = mode.Information[(i * p) + j];
                    for (int a = 0; a < q; a++)
                    {
                        sum -= mode.Information[(i * p) + population.Random[a]] * k[(a * p) + j];
                    }

                    precision[(i * p) + j] += sum;
                }
            }
        }

        if (!SymmetricMatrix.Invert(precision, p, meanCovariance))
        {
            return false;
        }

        SymmetricMatrix.Multiply(meanCovariance, right, mean);
        return true;
    }

    /// <summary>S+.</summary>
    private double[] SpreadAbout(double[] mean)
    {
        double[] spread = new double[q * q];
        Span<double> rest = stackalloc double[p];
        Span<double> d = stackalloc double[q];
        for (int m = 0; m < modes.Length; m++)
        {
            GroupMode mode = modes[m];
            ReadOnlySpan<double> k = Sensitivity(m);
            SymmetricMatrix.Multiply(mode.Information, mean, rest);
            for (int a = 0; a < q; a++)
            {
                d[a] = 0;
                for (int b = 0; b < q; b++)
                {
                    int coordinate = population.Random[b];
                    d[a] += mode.Covariance[(a * q) + b] * (mode.Score[coordinate] - rest[coordinate]);
                }
            }

            for (int a = 0; a < q; a++)
            {
                for (int b = 0; b < q; b++)
                {
                    double ofMean = settings.AllowsForMean ? Through(k.Slice(a * p, p), k.Slice(b * p, p)) : 0;
                    spread[(a * q) + b] += mode.Covariance[(a * q) + b] + (d[a] * d[b]) + ofMean;
                }
            }
        }

        for (int i = 0; i < spread.Length; i++)
        {
            double drawn = settings.SpreadBatches > 0 ? settings.SpreadBatches * settings.Spread[i] : 0;
            spread[i] = (spread[i] + drawn) / (settings.SpreadBatches + modes.Length);
        }

        return spread;
    }

    /// <summary>tau²+.</summary>
    private double NextErrorVariance()
    {
        double before = population.ErrorVariance;
        double sum = settings.ErrorWeighIns * settings.ErrorVariance;
        double count = settings.ErrorWeighIns;
        Span<double> slope = stackalloc double[q];
        foreach (GroupMode mode in modes)
        {
            int n = mode.Group.Count;
            for (int i = 0; i < n; i++)
            {
                for (int a = 0; a < q; a++)
                {
                    slope[a] = mode.Slopes[(population.Random[a] * n) + i];
                }

                double share = before / (mode.Group.KnownVariances[i] + before);
                double square = (mode.Residuals[i] * mode.Residuals[i]) + SymmetricMatrix.Form(mode.Covariance, slope);
                sum += (share * share * square) + (before * (1 - share));
            }

            count += n;
        }

        return count > 0 ? sum / count : before;
    }

    private Span<double> Sensitivity(int m) => sensitivities.AsSpan(m * q * p, q * p);

    private double Through(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        double sum = 0;
        for (int i = 0; i < p; i++)
        {
            for (int j = 0; j < p; j++)
            {
                sum += left[i] * meanCovariance[(i * p) + j] * right[j];
            }
        }

        return sum;
    }
}
