using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The share of birds between two weights by the flock's mean, tabulated over the means that were drawn.</summary>
internal sealed class WantedShare
{
    private const int Cells = 64;

    private readonly double low, step;
    private readonly double[] shares = new double[Cells + 1];

    public WantedShare(BatchPlan plan, Age age, (Mass Low, Mass High) wanted, double[] kilograms)
    {
        low = kilograms.Min();
        step = Math.Max(double.Epsilon, (kilograms.Max() - low) / Cells);
        for (int i = 0; i <= Cells; i++)
        {
            WeightDistribution birds = plan.Growth.WeightsAt(age, Mass.FromKilograms(low + (i * step)));
            shares[i] = Math.Max(0, birds.ShareBelow(wanted.High).Fraction - birds.ShareBelow(wanted.Low).Fraction);
        }
    }

    /// <summary>On a straight line between the entries.</summary>
    public double At(double kilograms)
    {
        int cell = Math.Clamp((int)((kilograms - low) / step), 0, Cells - 1);
        double place = Math.Clamp(((kilograms - low) / step) - cell, 0, 1);
        return shares[cell] + (place * (shares[cell + 1] - shares[cell]));
    }
}
