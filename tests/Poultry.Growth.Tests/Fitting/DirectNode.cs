using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>
/// A Gompertz node without Laplace's approximation: evidence, and mean and deviation of ln W at another age, summed over a grid of the three parameters in
/// standard deviations of the prior. Nothing of the library's kernel is used but Cholesky's factors and the correlation of the discrepancy.
/// </summary>
internal sealed record DirectNode(double Evidence, double Mean, double Deviation)
{
    private const double Reach = 5;
    private const double Step = 0.125;

    public static DirectNode Of(GrowthPrior prior, double discrepancy, ProjectionData data, double days)
    {
        int n = data.Count;
        double[] noise = new double[n * n];
        double[] shared = new double[n];
        for (int i = 0; i < n; i++)
        {
            shared[i] = discrepancy * discrepancy * Matern.Correlation(days - data.Days[i], 10);
            for (int j = 0; j < n; j++)
            {
                noise[(i * n) + j] = (discrepancy * discrepancy * Matern.Correlation(data.Days[i] - data.Days[j], 10)) + (i == j ? data.Variances[i] : 0);
            }
        }

        Cholesky.Factor(noise, n);
        Cholesky.SolveLower(noise, n, shared);
        double[] root = [.. prior.Covariances];
        Cholesky.Factor(root, 3);
        double free = (discrepancy * discrepancy) - shared.Sum(part => part * part);
        double scale = Math.Exp(-0.5 * Cholesky.LogDeterminant(noise, n));
        (double sum, double first, double second) = (0, 0, 0);
        double[] residuals = new double[n];
        for (double a = -Reach; a <= Reach; a += Step)
        {
            for (double b = -Reach; b <= Reach; b += Step)
            {
                for (double c = -Reach; c <= Reach; c += Step)
                {
                    double logMature = prior.Means[0] + (root[0] * a);
                    double rate = Math.Exp(prior.Means[1] + (root[3] * a) + (root[4] * b));
                    double inflection = prior.Means[2] + (root[6] * a) + (root[7] * b) + (root[8] * c);
                    for (int i = 0; i < n; i++)
                    {
                        residuals[i] = data.Logs[i] - logMature + Math.Exp(-rate * (data.Days[i] - inflection));
                    }

                    Cholesky.SolveLower(noise, n, residuals);
                    double squares = (a * a) + (b * b) + (c * c);
                    double mean = logMature - Math.Exp(-rate * (days - inflection));
                    for (int i = 0; i < n; i++)
                    {
                        squares += residuals[i] * residuals[i];
                        mean += residuals[i] * shared[i];
                    }

                    double weight = scale * Math.Exp(-squares / 2);
                    (sum, first, second) = (sum + weight, first + (weight * mean), second + (weight * mean * mean));
                }
            }
        }

        double middle = first / sum;
        return new(sum, middle, Math.Sqrt((second / sum) - (middle * middle) + free));
    }
}
