using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Series;
using Poultry.Growth.Evidence;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Stocking density of the shelters from moving out to the last day offered, against the farm's limit.</summary>
internal static class FloorChart
{
    /// <summary>Null where no floor is stated, or the birds never stand on it.</summary>
    public static Drawing? Of(PlanAnswer answer, Units weights)
    {
        BatchPlan plan = answer.Plan;
        IReadOnlyList<HarvestOption> options = answer.Comparison.Options;
        double last = options.Max(option => option.Age.Days), level = options[0].Margin.Interval.Level;
        if (plan.Shelters is not { } shelters || plan.MoveOut.Days >= last)
        {
            return null;
        }

        HousingUnits units = HousingUnits.Of(weights);
        double Density(Age age, Mass weight) => units.Of(StockingDensity.Of(plan.Birds.BirdsAt(age) * weight, shelters.Floor));
        PlotModel plot = ChartStyle.Plot("", "", weights.Weight);
        plot.Axes[1].Title = "stocking density, " + units.Density;
        AreaSeries band = new() { Title = Numbers.Percent(level) + " % by how heavy they are", Color = OxyColors.Transparent, Fill = OxyColor.FromAColor(60, ChartStyle.Curve) };
        LineSeries line = new() { Title = "expected", Color = ChartStyle.Curve, StrokeThickness = 2.5 };
        foreach (Age age in BandSeries.Ages(plan.MoveOut.Days, last))
        {
            Estimate<Mass> mean = plan.Growth.MeanAt(age, level);
            band.Points.Add(new(age.Days, Density(age, mean.Interval.Low!.Value)));
            band.Points2.Add(new(age.Days, Density(age, mean.Interval.High!.Value)));
            line.Points.Add(new(age.Days, Density(age, mean.Value)));
        }

        string most = Numbers.Fixed(units.Of(shelters.Limit), weights == Units.Us ? 2 : 1) + " " + units.Density;
        LineSeries limit = new() { Title = "limit, " + most, Color = ChartStyle.Weighed, LineStyle = LineStyle.Dash, StrokeThickness = 2 };
        limit.Points.AddRange([new(plan.MoveOut.Days, units.Of(shelters.Limit)), new(last, units.Of(shelters.Limit))]);
        plot.Series.Add(band);
        plot.Series.Add(line);
        plot.Series.Add(limit);
        plot.Axes[0].Minimum = Math.Floor(plan.MoveOut.Days);
        plot.Axes[0].Maximum = last + (0.12 * (last - plan.MoveOut.Days));
        ChartStyle.Mark(plot, answer.Comparison.Recommended.Age.Days, ReportDates.Short(answer.Comparison.Recommended.Date.Date));
        foreach (HarvestOption option in options)
        {
            plot.Annotations.Add(new PointAnnotation { X = option.Age.Days, Y = Density(option.Age, option.MeanWeight.Value), Fill = ChartStyle.Curve, Size = 5 });
        }

        string said = string.Join(" ", options.Select(option => "On " + option.Date + ": " + Numbers.Fixed(Density(option.Age, option.MeanWeight.Value), 1) + " " + units.Density
            + ", the limit is kept with a chance of " + option.ChanceDensityMet + "."));
        return new(plot, "Stocking density in the shelters", "Chart of stocking density against age, from moving out on. Limit " + most + ". " + said);
    }
}
