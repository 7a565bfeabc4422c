using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Fitting;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>A projection as a fan of intervals, with what was weighed and the weight to reach.</summary>
internal static class ProjectionChart
{
    /// <summary>Where the fan starts unless something is asked or weighed earlier: before it projections were not tested, d.</summary>
    public const double Youngest = 7;

    /// <summary>The inner intervals of the fan; the outer one is that of the tables.</summary>
    private static readonly double[] Inner = [0.5, 0.8];

    public static string Of(ProjectAnswer answer, Units units)
    {
        WeighInSeries? series = answer.Reading?.Series;
        PlotModel plot = ChartStyle.Plot(
            answer.Reading is { } reading ? "Projection of " + reading.File : "Projection by the prior alone", series?.ToString() ?? answer.Projection.Prior.Name, units.Weight);
        double first = Math.Min(series?[0].Age.Days ?? Youngest, Math.Min(Youngest, answer.Projections[0].Age.Days));
        double last = Math.Max(series?[^1].Age.Days ?? 0, Math.Max(answer.BookedDay.Age.Days, UsualAges.OfSale[0].Days));
        AddFan(plot, answer.Projection, (first, last), [.. Inner.Where(inner => inner < answer.Level), answer.Level], units);
        if (answer.Target is { } target)
        {
            LineSeries line = new() { Title = "target " + units.Text(target.Weight, 2) + " " + units.Weight, Color = ChartStyle.Ink, LineStyle = LineStyle.Dash, StrokeThickness = 1.5 };
            line.Points.AddRange([new(first, units.Of(target.Weight)), new(last, units.Of(target.Weight))]);
            plot.Series.Add(line);
        }

        if (series is not null)
        {
            GrowthChart.AddWeighIns(plot, series, units);
            ChartStyle.Mark(plot, series[^1].Age.Days, "last weigh-in");
        }

        return SvgChart.Of(plot, "Projection of live weight by age", Description(answer, units));
    }

    /// <summary>The fan between two ages in days: the mean at each level, the widest last, and single birds at that.</summary>
    public static void AddFan(PlotModel plot, Projection projection, (double First, double Last) days, IReadOnlyList<double> levels, Units units)
    {
        ProjectedWeight[] Fan(double level) => [.. BandSeries.Ages(days.First, days.Last).Select(age => ProjectedWeight.Of(projection, age, level))];

        ProjectedWeight[] outer = Fan(levels[^1]);
        string level = Numbers.Percent(levels[^1]) + " %";
        plot.Series.Add(BandSeries.Band(outer, at => at.Bird!.Interval, units, level + " interval of one bird", 28));
        plot.Series.Add(BandSeries.Band(outer, at => at.Mean.Interval, units, level + " interval of the mean", 50));
        foreach (double inner in levels.SkipLast(1).Reverse())
        {
            plot.Series.Add(BandSeries.Band(Fan(inner), at => at.Mean.Interval, units, Numbers.Percent(inner) + " % interval of the mean", 60));
        }

        plot.Series.Add(BandSeries.Line(outer, units, "median of the mean", ChartStyle.Curve, LineStyle.Solid));
    }

    private static string Description(ProjectAnswer answer, Units units)
    {
        string level = Numbers.Percent(answer.Level) + " % interval ";
        string Weight(Mass weight) => units.Text(weight, 3) + " " + units.Weight;
        string weighed = answer.Reading?.Series is { } series ? GrowthChart.Description(series, units) : "Chart of live weight against age. No bird is weighed yet.";
        string projected = string.Join(" ", answer.Projections.Select(at => "Projected at " + at.Age + ": mean " + Weight(at.Mean.Value) + ", " + level
            + Weight(at.Mean.Interval.Low!.Value) + " to " + Weight(at.Mean.Interval.High!.Value) + "."));
        string target = answer.Target is { } reached ? " Target " + Weight(reached.Weight) + ": " + reached.Explanation : "";
        string caution = answer.Projection.Disagreement is { } disagreement ? " " + disagreement.Text : "";
        return weighed + " " + projected + target + caution;
    }
}
