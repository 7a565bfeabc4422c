using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>The share of birds with dead tenders by its quantiles, tabulated once a day of killing.</summary>
internal sealed class LesionShares
{
    private const int Cells = 400;

    private readonly double[] quantiles = new double[Cells];

    public LesionShares(BatchPrevalence lesions)
    {
        for (int i = 0; i < Cells; i++)
        {
            quantiles[i] = lesions.Quantile(Probability.FromFraction((i + 0.5) / Cells)).Share.Fraction;
        }
    }

    /// <summary>The share below which flocks lie with a probability, by the middle of its cell.</summary>
    public double At(double probability) => quantiles[(int)(probability * Cells)];
}
