using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>How many birds of each weight there will be on a day, and which of them customers want.</summary>
internal static class WeightBandsChart
{
    /// <summary>Birds beyond this share on either side are not drawn.</summary>
    private const double Tail = 0.995;

    /// <param name="growth">What the birds will weigh.</param>
    /// <param name="age">The day.</param>
    /// <param name="wanted">Weights of single birds that customers want; null where any will do.</param>
    /// <param name="units">Units of the chart.</param>
    public static Drawing Of(Projection growth, Age age, (Mass Low, Mass High)? wanted, Units units)
    {
        double step = units == Units.Us ? 0.5 : 0.2;
        Interval<Mass> birds = growth.BirdAt(age, Tail).Interval;
        int first = Math.Max(1, (int)Math.Floor(units.Of(birds.Low!.Value) / step)), last = (int)Math.Ceiling(units.Of(birds.High!.Value) / step);
        Mass one = units == Units.Us ? Mass.FromPounds(1) : Mass.FromKilograms(1);
        Mass[] edges = [.. Enumerable.Range(first, last - first + 1).Select(edge => one * (edge * step))];
        WeightBand[] bands = [.. growth.ShareInBands(age, edges).Skip(1).SkipLast(1)];

        PlotModel plot = ChartStyle.Plot("", "", ChartStyle.Axis(AxisPosition.Bottom, "live weight of a bird, " + units.Weight, units == Units.Us ? 1 : 0.4), ChartStyle.Axis(AxisPosition.Left, "birds in the band, %", double.NaN));
        plot.Axes[0].StringFormat = "0.0";
        (plot.Axes[0].Minimum, plot.Axes[0].Maximum) = (units.Of(edges[0]), units.Of(edges[^1]));
        RectangleBarSeries inside = new() { FillColor = ChartStyle.Curve, StrokeThickness = 0, Title = wanted is null ? null : "wanted" };
        RectangleBarSeries outside = new() { FillColor = ChartStyle.CurveBeyond, StrokeThickness = 0, Title = "too light or too heavy" };
        (double low, double high) = wanted is { } range ? (units.Of(range.Low), units.Of(range.High)) : (double.NegativeInfinity, double.PositiveInfinity);
        foreach (WeightBand band in bands)
        {
            (double from, double to) = (units.Of(band.From!.Value) + (0.04 * step), units.Of(band.To!.Value) - (0.04 * step));

            // A band that a limit runs through is drawn in both colours.
            Add(outside, from, Math.Min(to, low), band);
            Add(inside, Math.Max(from, low), Math.Min(to, high), band);
            Add(outside, Math.Max(from, high), to, band);
        }

        plot.Series.Add(inside);
        if (outside.Items.Count > 0)
        {
            plot.Series.Add(outside);
        }

        string said = string.Join(", ", bands.Where(band => band.Share.Fraction >= 0.005).Select(band =>
            units.Text(band.From, 1) + " to " + units.Text(band.To, 1) + " " + units.Weight + " " + Numbers.Percent(band.Share.Fraction) + " %"));
        string share = wanted is var (least, most)
            ? " Wanted, " + units.Text(least, 1) + " to " + units.Text(most, 1) + " " + units.Weight + ": " + growth.ShareInBands(age, least, most)[1].Share + "."
            : "";
        return new(plot, "Weights of the birds at " + age, "Chart of the share of birds by live weight. " + said + "." + share);
    }

    private static void Add(RectangleBarSeries bars, double from, double to, WeightBand band)
    {
        if (from < to)
        {
            bars.Items.Add(new(from, 0, to, band.Share.Percent));
        }
    }
}
