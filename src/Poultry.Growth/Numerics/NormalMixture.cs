namespace Poultry.Growth.Numerics;

/// <summary>Normals with weights that sum to 1. A weight of 0 makes its normal of no account, whatever it holds.</summary>
internal readonly ref struct NormalMixture(Span<double> weights, Span<double> means, Span<double> deviations)
{
    public Span<double> Weights { get; } = weights;

    public Span<double> Means { get; } = means;

    /// <summary>Standard deviations, above 0.</summary>
    public Span<double> Deviations { get; } = deviations;

    /// <summary>A mixture in one piece of room.</summary>
    /// <param name="room">Three numbers a normal.</param>
    public static NormalMixture In(Span<double> room)
    {
        int n = room.Length / 3;
        return new(room[..n], room.Slice(n, n), room.Slice(2 * n, n));
    }

    /// <summary>The probability below a value.</summary>
    public double Below(double value)
    {
        double sum = 0;
        for (int i = 0; i < Weights.Length; i++)
        {
            if (Weights[i] > 0)
            {
                sum += Weights[i] * Distributions.NormalProbability((value - Means[i]) / Deviations[i]);
            }
        }

        return sum;
    }

    /// <summary>The value below which the mixture lies with a probability, strictly between 0 and 1.</summary>
    public double Quantile(double probability)
    {
        // The quantile of the mixture lies between the least and the largest of its normals'.
        double z = Distributions.NormalQuantile(probability);
        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < Weights.Length; i++)
        {
            if (Weights[i] > 0)
            {
                double own = Means[i] + (z * Deviations[i]);
                (low, high) = (Math.Min(low, own), Math.Max(high, own));
            }
        }

        const double margin = 1e-9;
        Miss miss = new(this, probability);
        return RootFinding.Bracketed(ref miss, low - margin, high + margin, tolerance: 1e-12, out double root) ? root : (low + high) / 2;
    }

    private readonly ref struct Miss(NormalMixture mixture, double probability) : IScalarFunction
    {
        private readonly NormalMixture mixture = mixture;

        public double At(double x) => mixture.Below(x) - probability;
    }
}
