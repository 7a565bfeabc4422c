using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What draws say about one outcome.</summary>
internal static class Sample
{
    /// <summary>Mean and the range that holds so many of the draws.</summary>
    public static Estimate<T> Estimate<T>(double[] draws, double level, Func<double, T> make, IReadOnlyList<Caution> cautions)
        where T : struct, IComparable<T>
    {
        double[] sorted = [.. draws];
        Array.Sort(sorted);
        return new(make(Mean(draws)), Interval<T>.Of(make(Quantile(sorted, (1 - level) / 2)), make(Quantile(sorted, (1 + level) / 2)), level), HarvestComparison.Model, cautions);
    }

    public static double Mean(double[] draws)
    {
        double sum = 0;
        foreach (double value in draws)
        {
            sum += value;
        }

        return sum / draws.Length;
    }

    /// <summary>The mean of the worst part of the draws.</summary>
    public static double MeanOfWorst(double[] draws, double part)
    {
        double[] sorted = [.. draws];
        Array.Sort(sorted);
        int count = Math.Max(1, (int)Math.Round(part * draws.Length));
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += sorted[i];
        }

        return sum / count;
    }

    public static double Share(double[] draws, Func<double, bool> holds)
    {
        int count = 0;
        foreach (double value in draws)
        {
            count += holds(value) ? 1 : 0;
        }

        return (double)count / draws.Length;
    }

    /// <summary>The squared correlation of two outcomes of the same draws; 0 where one does not vary.</summary>
    public static double SharedVariance(double[] a, double[] b)
    {
        (double meanA, double meanB, double aa, double bb, double ab) = (Mean(a), Mean(b), 0, 0, 0);
        for (int i = 0; i < a.Length; i++)
        {
            double x = a[i] - meanA, y = b[i] - meanB;
            (aa, bb, ab) = (aa + (x * x), bb + (y * y), ab + (x * y));
        }

        return aa > 0 && bb > 0 ? ab * ab / (aa * bb) : 0;
    }

    /// <summary>Between sorted draws on a straight line.</summary>
    private static double Quantile(double[] sorted, double probability)
    {
        double at = probability * (sorted.Length - 1);
        int below = Math.Min((int)at, sorted.Length - 2);
        return sorted.Length == 1 ? sorted[0] : sorted[below] + ((at - below) * (sorted[below + 1] - sorted[below]));
    }
}
