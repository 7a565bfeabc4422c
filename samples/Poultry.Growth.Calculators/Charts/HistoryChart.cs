using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Past batches with their curves, and the next one by them and by the shipped prior.</summary>
internal static class HistoryChart
{
    private const double FirstDays = 7;

    public static string Of(HistoryAnswer answer, Units units)
    {
        PlotModel plot = ChartStyle.Plot("Past batches of " + Path.GetFileName(Path.TrimEndingDirectorySeparator(answer.Reading.Folder)), answer.Learned.Kind.ToString(), units.Weight);
        double last = Math.Max(answer.ByAge[^1].Own.Age.Days, answer.Learned.Batches.Max(batch => batch.Batch.WeighIns[^1].Age.Days));
        Age[] ages = [.. BandSeries.Ages(FirstDays, last)];
        ProjectedWeight[] own = [.. ages.Select(age => ProjectedWeight.Of(answer.Own, age, answer.Level))];
        ProjectedWeight[] shipped = [.. ages.Select(age => ProjectedWeight.Of(answer.Shipped, age, answer.Level))];
        string level = Numbers.Percent(answer.Level) + " % interval";
        plot.Series.Add(BandSeries.Band(own, at => at.Mean.Interval, units, "next batch by the own past, " + level, 60));
        plot.Series.Add(Line(shipped, at => at.Mean.Interval.Low!.Value, units, "by the shipped prior, " + level));
        plot.Series.Add(Line(shipped, at => at.Mean.Interval.High!.Value, units, null));
        foreach (LearnedBatch batch in answer.Learned.Batches)
        {
            LineSeries curve = new() { Color = ChartStyle.CurveBeyond, StrokeThickness = 1, RenderInLegend = false };
            curve.Points.AddRange(ages.Select(age => new DataPoint(age.Days, units.Of(batch.Curve.WeightAt(age)))));
            plot.Series.Add(curve);
        }

        plot.Series.Add(BandSeries.Line(own, units, "next batch, median", ChartStyle.Curve, LineStyle.Solid));
        ScatterSeries means = new() { MarkerType = MarkerType.Diamond, MarkerSize = 5, MarkerFill = ChartStyle.Weighed, MarkerStroke = OxyColors.White, MarkerStrokeThickness = 1, Title = "means weighed" };
        means.Points.AddRange(answer.Learned.Batches.SelectMany(batch => batch.Batch.WeighIns).Select(weighIn => new ScatterPoint(weighIn.Age.Days, units.Of(weighIn.MeanWeight))));
        plot.Series.Add(means);
        return SvgChart.Of(plot, "Past batches and the next one: live weight by age", Description(answer, units));
    }

    private static LineSeries Line(IEnumerable<ProjectedWeight> at, Func<ProjectedWeight, Mass> limit, Units units, string? title)
    {
        LineSeries line = new() { Title = title, RenderInLegend = title is not null, Color = ChartStyle.Faint, LineStyle = LineStyle.Dash, StrokeThickness = 1.5 };
        line.Points.AddRange(at.Select(point => new DataPoint(point.Age.Days, units.Of(limit(point)))));
        return line;
    }

    private static string Description(HistoryAnswer answer, Units units)
    {
        string Weight(Mass weight) => units.Text(weight, 3) + " " + units.Weight;
        string Said(ProjectedWeight at) => Weight(at.Mean.Value) + ", " + Weight(at.Mean.Interval.Low!.Value) + " to " + Weight(at.Mean.Interval.High!.Value);
        return "Chart of live weight against age. Batches: " + string.Join(", ", answer.Learned.Batches.Select(batch => batch.Batch.Name + " "
            + Weight(batch.Curve.WeightAt(UsualAges.EightWeeks)) + " at " + UsualAges.EightWeeks)) + ". "
            + string.Join(" ", answer.ByAge.Select(at => "Next batch at " + at.Own.Age + ": " + Said(at.Own) + "; by the shipped prior " + Said(at.Shipped) + "."));
    }
}
