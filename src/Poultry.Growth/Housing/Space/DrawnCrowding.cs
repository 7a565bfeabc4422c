using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>The chance of too many birds at one age, given their weight: verdicts are kept by weight class and chances by number of birds, so that a draw costs next to nothing.</summary>
internal sealed class DrawnCrowding(HeadCountPath heads, Age age, Func<Mass, StockingVerdict> judge, double[] classes)
{
    private readonly Dictionary<int, StockingVerdict> byClass = [];
    private readonly double[] byBirds = [.. Enumerable.Repeat(double.NaN, heads.Placed)];

    /// <summary>The chance that more birds are alive than fit; not a number where no limit is known to bind.</summary>
    public double ChanceOver(double kilograms)
    {
        // The binary search tells a weight between two classes (negative) from one on their edge: on an edge either side may count.
        int weightClass = Array.BinarySearch(classes, kilograms);
        if (!byClass.TryGetValue(weightClass, out StockingVerdict? verdict))
        {
            byClass.Add(weightClass, verdict = judge(Mass.FromKilograms(kilograms)));
        }

        return verdict.MostBirds(kilograms) is not { } most ? double.NaN : most >= byBirds.Length ? 0 : Above(most);
    }

    private double Above(int birds)
    {
        if (double.IsNaN(byBirds[birds]))
        {
            byBirds[birds] = heads.ChanceOfMoreThan(birds, age).Fraction;
        }

        return byBirds[birds];
    }
}
