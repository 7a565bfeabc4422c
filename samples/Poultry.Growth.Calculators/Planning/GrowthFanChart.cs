using OxyPlot;
using Poultry.Growth.Fitting;
using Poultry.Growth.Planning;
using UnitsNet;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>What the birds will weigh, with what was weighed and the day recommended.</summary>
internal static class GrowthFanChart
{
    /// <summary>Half of all fates, inside the level that is asked for.</summary>
    private const double Inner = 0.5;

    public static Drawing Of(PlanAnswer answer, Units units)
    {
        Projection growth = answer.Plan.Growth;
        IReadOnlyList<HarvestOption> options = answer.Comparison.Options;
        double last = options.Max(option => option.Age.Days), level = options[0].Margin.Interval.Level;
        PlotModel plot = ChartStyle.Plot("", "", units.Weight);
        ProjectionChart.AddFan(plot, growth, (ProjectionChart.Youngest, last), level > Inner ? [Inner, level] : [level], units);

        // Room for a word at the last day.
        plot.Axes[0].Maximum = last * 1.1;
        string weighed = "";
        if (growth.WeighIns is { } series)
        {
            GrowthChart.AddWeighIns(plot, series, units);
            weighed = GrowthChart.Description(series, units) + " ";
        }

        ChartStyle.Mark(plot, answer.Comparison.Recommended.Age.Days, ReportDates.Short(answer.Comparison.Recommended.Date.Date));
        string Weight(Mass? weight) => units.Text(weight, 2) + " " + units.Weight;
        string expected = string.Join(" ", options.Select(option => "At " + option.Age + ", " + option.Date + ": mean " + Weight(option.MeanWeight.Value) + ", " + Numbers.Percent(level)
            + " % interval " + Weight(option.MeanWeight.Interval.Low) + " to " + Weight(option.MeanWeight.Interval.High) + "."));
        return new(plot, "Live weight by age", weighed + expected);
    }
}
