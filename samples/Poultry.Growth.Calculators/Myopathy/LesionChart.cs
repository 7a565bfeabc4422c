using OxyPlot;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>How likely each share of birds is: bars over bands that widen as shares do, for shares reach over five orders of magnitude.</summary>
internal static class LesionChart
{
    /// <summary>Edges of the bands, %.</summary>
    private static readonly double[] Edges = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 25];

    public static string Of(BatchPrevalence batch, string title, double level) => Draw(batch, title, level).ToSvg();

    public static Drawing Draw(BatchPrevalence batch, string title, double level)
    {
        Interval<BirdPrevalence> interval = batch.IntervalAt(level);
        string subtitle = "mean " + SpreadTable.Percent(batch.Mean) + " %, median " + SpreadTable.Percent(batch.Median) + " %, " + Numbers.Percent(level) + " % of flocks from "
            + SpreadTable.Percent(interval.Low) + " to " + SpreadTable.Percent(interval.High) + " % of birds";
        string[] labels = [.. Enumerable.Range(0, Edges.Length + 1).Select(Label)];
        double[] chances = [.. Enumerable.Range(0, Edges.Length + 1).Select(band => Above(batch, band - 1) - Above(batch, band))];
        PlotModel plot = BarChart.Of(title, subtitle, "birds with a lesion, %", labels, "chance, %", [.. chances.Select(chance => 100 * chance)]);
        string bars = string.Join(", ", labels.Zip(chances, (label, chance) => Numbers.Percent(chance, 1) + " % for " + label + " %"));
        string outdoor = batch.Cautions is [{ Code: "no-outdoor-data" } first, ..] ? " " + first.Text : "";
        return new(plot, title + ": share of birds with a lesion", "Chart of the chance of each share of birds. " + subtitle + ". " + bars + "." + outdoor);
    }

    private static double Above(BatchPrevalence batch, int edge) => edge < 0 ? 1
        : edge == Edges.Length ? 0
        : batch.ChanceAbove(BirdPrevalence.FromPercent(Edges[edge])).Fraction;

    private static string Label(int band)
    {
        string Edge(int at) => SpreadTable.Two(Edges[at]);
        return band == 0 ? "below " + Edge(0) : band == Edges.Length ? "above " + Edge(band - 1) : Edge(band - 1) + " to " + Edge(band);
    }
}
