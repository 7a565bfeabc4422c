namespace Poultry.Growth.Weighing;

/// <summary>Bars of equal width on round edges.</summary>
/// <remarks>
/// Width: 2 IQR / n^(1/3) (Freedman and Diaconis 1981), rounded up to 1, 2 or 5 times a power of ten kilograms so that edges can be read
/// aloud; where the quartiles coincide, the range over the root of n instead. Edges are whole multiples of the width, and a wild weight
/// widens the bars rather than making more than 50 of them.
/// </remarks>
internal static class Histogram
{
    private const int MostBins = 50;

    public static IReadOnlyList<HistogramBin> Of(IEnumerable<double> kilograms)
    {
        double[] sorted = [.. kilograms.Order()];
        if (sorted.Length == 0)
        {
            return [];
        }

        double width = Width(sorted);
        long first = Index(sorted[0], width);
        int[] counts = new int[Index(sorted[^1], width) - first + 1];
        foreach (double weight in sorted)
        {
            counts[Index(weight, width) - first]++;
        }

        return [.. counts.Select((birds, bin) => new HistogramBin((first + bin) * width, (first + bin + 1) * width, birds))];
    }

    private static double Width(double[] sorted)
    {
        double quartiles = Spread.Quantile(sorted, 0.75) - Spread.Quantile(sorted, 0.25);
        double range = sorted[^1] - sorted[0];
        double wanted = quartiles > 0 ? 2 * quartiles / Math.Cbrt(sorted.Length) : range / Math.Sqrt(sorted.Length);

        // Birds all alike still fill a bar: one of about a tenth of their weight.
        wanted = wanted > 0 ? Math.Max(wanted, range / (MostBins - 2)) : sorted[0] / 10;
        double power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        double steps = (wanted / power) - 1e-9;
        return power * (steps <= 1 ? 1 : steps <= 2 ? 2 : steps <= 5 ? 5 : 10);
    }

    /// <summary>The bar of a weight; the slack keeps 0.3 kg, which is not quite three times 0.1, in the bar that starts at 0.3.</summary>
    private static long Index(double kilograms, double width) => (long)Math.Floor((kilograms / width) + 1e-9);
}
