namespace Poultry.Growth.Weighing;

/// <summary>Mean, spread and middle of some weights in kg.</summary>
internal static class Spread
{
    /// <summary>Mean and sample standard deviation (n - 1), in two passes: the one-pass formula loses digits where birds are alike.</summary>
    public static (double Mean, double? StandardDeviation) Of(IReadOnlyList<double> values)
    {
        // Birds all alike must come out so: their sum over their number may be a rounding off.
        if (values.Min() == values.Max())
        {
            return (values[0], values.Count > 1 ? 0 : null);
        }

        double mean = values.Average();
        double squares = values.Sum(value => (value - mean) * (value - mean));
        return (mean, Math.Sqrt(squares / (values.Count - 1)));
    }

    /// <summary>c² = Σ (n - 1) c² / Σ (n - 1) over the weigh-ins that show a spread; null where none does, or all birds of each weigh the same.</summary>
    public static double? PooledVariation(IEnumerable<WeighIn> weighIns)
    {
        double squares = 0, degrees = 0;
        foreach (WeighIn weighIn in weighIns)
        {
            if (weighIn.CoefficientOfVariation is { } variation)
            {
                squares += (weighIn.BirdsWeighed - 1) * variation * variation;
                degrees += weighIn.BirdsWeighed - 1;
            }
        }

        return squares > 0 ? Math.Sqrt(squares / degrees) : null;
    }

    /// <summary>The middle value, or the mean of the two in the middle.</summary>
    public static double Median(IEnumerable<double> values) => Quantile([.. values.Order()], 0.5);

    /// <summary>The quantile of sorted values, between neighbours by straight line (position p (n - 1)).</summary>
    public static double Quantile(IReadOnlyList<double> sorted, double p)
    {
        double position = p * (sorted.Count - 1);
        int below = (int)position;
        int above = Math.Min(below + 1, sorted.Count - 1);
        return sorted[below] + ((position - below) * (sorted[above] - sorted[below]));
    }
}
