using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A guess of low, likely and high, taken for a triangular law.</summary>
internal static class Triangular
{
    /// <summary>The value below which the law lies with a probability.</summary>
    public static double Quantile(double low, double likely, double high, double probability)
    {
        double width = high - low;
        if (width == 0)
        {
            return likely;
        }

        double below = (likely - low) / width;
        return probability < below
            ? low + Math.Sqrt(probability * width * (likely - low))
            : high - Math.Sqrt((1 - probability) * width * (high - likely));
    }

    /// <inheritdoc cref="Quantile(double, double, double, double)"/>
    public static double Quantile(LikelyRange<double> range, double probability) => Quantile(range.Low, range.Likely, range.High, probability);

    /// <inheritdoc cref="Quantile(double, double, double, double)"/>
    public static double Quantile(LikelyRange<Probability> range, double probability) =>
        Quantile(range.Low.Fraction, range.Likely.Fraction, range.High.Fraction, probability);
}
