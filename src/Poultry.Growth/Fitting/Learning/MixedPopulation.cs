using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>The batches as a crowd: theta = mu + b, b normal with covariance S in the coordinates that differ from batch to batch, the others equal in all; and the variance of an error.</summary>
internal sealed class MixedPopulation
{
    private MixedPopulation(double[] mean, double[] spread, double[] factor, int[] random, double errorVariance) =>
        (Mean, Spread, Factor, Random, ErrorVariance) = (mean, spread, factor, random, errorVariance);

    /// <summary>mu.</summary>
    public double[] Mean { get; }

    /// <summary>S, row by row, of the coordinates that differ.</summary>
    public double[] Spread { get; }

    /// <summary>L of S = L L', row by row, zeros above the diagonal.</summary>
    public double[] Factor { get; }

    /// <summary>Which coordinates differ from batch to batch, in order.</summary>
    public int[] Random { get; }

    /// <summary>tau², added to what is known of each value.</summary>
    public double ErrorVariance { get; }

    /// <summary>The population; null where S is not positive definite.</summary>
    public static MixedPopulation? Of(ReadOnlySpan<double> mean, ReadOnlySpan<double> spread, int[] random, double errorVariance)
    {
        int q = random.Length;
        double[] factor = spread.ToArray();
        if (!Cholesky.Factor(factor, q) || !(errorVariance >= 0))
        {
            return null;
        }

        for (int i = 0; i < q; i++)
        {
            factor.AsSpan((i * q) + i + 1, q - i - 1).Clear();
        }

        return new(mean.ToArray(), spread.ToArray(), factor, random, errorVariance);
    }
}
