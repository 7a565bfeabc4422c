namespace Poultry.Growth.Weighing;

/// <summary>Mean, spread and middle of some weights in kg.</summary>
internal static class Spread
{
    /// <summary>Mean and sample standard deviation (n - 1), in two passes: the one-pass formula loses digits where birds are alike.</summary>
    public static (double Mean, double? StandardDeviation) Of(IReadOnlyList<double> values)
    {
        double mean = values.Average();
        double squares = values.Sum(value => (value - mean) * (value - mean));
        return (mean, values.Count > 1 ? Math.Sqrt(squares / (values.Count - 1)) : null);
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
