namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Many batches of one row, one stop and one target age.</summary>
internal sealed class StudyCell
{
    private readonly double[] errors;
    private readonly double[] widths;
    private readonly bool[] held;
    private readonly double[] chances;
    private readonly bool[] reached;

    public StudyCell(int batches)
    {
        (errors, widths, held) = (new double[batches], new double[batches], new bool[batches]);
        (chances, reached) = (new double[batches], new bool[batches]);
    }

    public double Median => Quantile(errors, 0.5);

    public double Ninetieth => Quantile(errors, 0.9);

    public double Coverage => held.Count(inside => inside) / (double)held.Length;

    public double Width => Quantile(widths, 0.5);

    /// <summary>What was promised and what came, of batches by the chance given them.</summary>
    public IEnumerable<(double Chance, bool Reached)> Promises => chances.Zip(reached);

    public void Record(int batch, double low, double median, double high, double truth)
    {
        errors[batch] = 100 * Math.Abs((median / truth) - 1);
        widths[batch] = 100 * (high - low) / median;
        held[batch] = truth >= low && truth <= high;
    }

    public void RecordChance(int batch, double chance, bool came) => (chances[batch], reached[batch]) = (chance, came);

    private static double Quantile(double[] values, double share)
    {
        double[] sorted = [.. values.Order()];
        double position = share * (sorted.Length - 1);
        int below = (int)position;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((position - below) * (sorted[above] - sorted[below]));
    }
}
