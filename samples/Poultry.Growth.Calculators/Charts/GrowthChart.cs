using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Weigh-ins over age, with the fitted curve and how sure it is.</summary>
internal static class GrowthChart
{
    /// <summary>The weigh-ins by themselves.</summary>
    public static string Of(WeighAnswer answer, Units units)
    {
        PlotModel plot = ChartStyle.Plot("Weigh-ins of " + answer.Reading.File, answer.Reading.Series!.ToString(), units.Weight);
        AddWeighIns(plot, answer.Reading.Series!, units);
        return SvgChart.Of(plot, "Live weight by age", Description(answer.Reading.Series!, units));
    }

    /// <summary>The weigh-ins with the standard that they are held against.</summary>
    public static string Of(CompareAnswer answer, Units units)
    {
        PlotModel plot = ChartStyle.Plot(answer.Reading.File + " against a standard", answer.Table.Model.Name, units.Weight);
        LineSeries standard = new() { Title = "standard", Color = ChartStyle.Curve, StrokeThickness = 2.5 };
        (double first, double last) = (answer.Table.Rows.Min(row => row.Age).Days, answer.Table.Rows.Max(row => row.Age).Days);
        standard.Points.AddRange(BandSeries.Ages(first, last).Select(age => new DataPoint(age.Days, units.Of(answer.Table.WeightAt(age)))));
        plot.Series.Add(standard);
        AddWeighIns(plot, answer.Reading.Series!, units);
        return SvgChart.Of(
            plot,
            "Live weight by age against a standard",
            Description(answer.Reading.Series!, units) + " Standard: " + answer.Table.Model.Name + ". " + string.Join(" ", answer.ByAge.Select(age => Against(age, units))));
    }

    /// <summary>The weigh-ins with their curve; beyond the last one it is dashed and lighter.</summary>
    public static string Of(FitAnswer answer, Units units)
    {
        string name = answer.Fit.Family.Model.Name;
        PlotModel plot = ChartStyle.Plot(name + " of " + answer.Reading.File, answer.Fit.WeighIns.ToString(), units.Weight);
        CurveBands bands = CurveBands.Of(answer, units);
        bands.AddTo(plot, Numbers.Percent(answer.Level) + " %");
        AddWeighIns(plot, answer.Fit.WeighIns, units);
        Age last = answer.Fit.WeighIns[^1].Age;
        if (bands.GoesBeyond)
        {
            ChartStyle.Mark(plot, last.Days, "last weigh-in");
        }

        string projected = string.Join(" ", answer.Projections.Select(at => (at.Beyond is null ? "Curve at " : "Beyond the last weigh-in, at ") + at.Age
            + ": mean " + Weight(at.Mean.Value, units) + ", " + Numbers.Percent(answer.Level) + " % interval "
            + (at.Mean.Interval.Low is { } low ? Weight(low, units) : "open") + " to " + Weight(at.Mean.Interval.High!.Value, units) + "."));
        string caution = answer.Beyond is { } beyond ? " " + beyond.Text : "";
        return SvgChart.Of(plot, name + " of live weight by age", Description(answer.Fit.WeighIns, units) + " " + projected + caution);
    }

    /// <summary>Single birds, and the mean of each age with the spread between its birds.</summary>
    public static void AddWeighIns(PlotModel plot, WeighInSeries series, Units units)
    {
        ScatterSeries birds = new() { MarkerType = MarkerType.Circle, MarkerSize = 2.4, MarkerFill = ChartStyle.Bird, Title = "single birds" };
        ScatterErrorSeries means = new()
        {
            MarkerType = MarkerType.Diamond,
            MarkerSize = 6,
            MarkerFill = ChartStyle.Weighed,
            MarkerStroke = OxyColors.White,
            MarkerStrokeThickness = 1,
            ErrorBarColor = ChartStyle.Weighed,
            ErrorBarStopWidth = 5,
            ErrorBarStrokeThickness = 1.5,
            Title = "mean weighed (bar: 1 SD between birds)",
        };
        foreach (WeighIn weighIn in series)
        {
            birds.Points.AddRange(weighIn.Weights.Select(weight => new ScatterPoint(weighIn.Age.Days, units.Of(weight))));
        }

        means.Points.AddRange(Uniformity.ByAge(series).Select(age => new ScatterErrorPoint(
            age.Age.Days, units.Of(age.MeanWeight), 0, age.StandardDeviation is { } deviation ? 2 * units.Of(deviation) : 0)));
        if (birds.Points.Count > 0)
        {
            plot.Series.Add(birds);
        }

        plot.Series.Add(means);
    }

    /// <summary>What was weighed, in words.</summary>
    public static string Description(WeighInSeries series, Units units) => "Chart of live weight against age. Weighed: "
        + string.Join(", ", Uniformity.ByAge(series).Select(age => Weight(age.MeanWeight, units) + " at " + age.Age)) + ".";

    private static string Against(StandardDifference age, Units units)
    {
        string weight = age.Difference is { Value: var difference } ? Numbers.Signed(units.Of(difference), 3) + " " + units.Weight : "not covered";
        return "At " + age.Age + ": " + weight + (age.Ahead is { Value: var ahead } ? ", " + Numbers.Signed(ahead.Days) + " d ahead." : ".");
    }

    private static string Weight(Mass weight, Units units) => units.Text(weight, 3) + " " + units.Weight;
}
