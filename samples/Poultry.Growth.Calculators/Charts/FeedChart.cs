using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Feed of a batch so far over age, with how sure it is.</summary>
internal static class FeedChart
{
    public static string Of(FeedAnswer answer, Units units)
    {
        PlotModel plot = ChartStyle.Plot("Feed of " + answer.Question.Title, answer.Question.Conditions.Model.Model.Name, units.Weight);
        plot.Axes[1].Title = "feed of the batch so far, " + units.Weight;
        string level = Numbers.Percent(answer.Question.Level) + " %";
        AreaSeries band = new() { Title = level + " interval", Color = OxyColors.Transparent, Fill = OxyColor.FromAColor(60, ChartStyle.Curve) };
        LineSeries line = new() { Title = "forecast", Color = ChartStyle.Curve, StrokeThickness = 2.5 };
        foreach (FeedDay day in answer.Forecast.ByDay)
        {
            band.Points.Add(new DataPoint(day.Age.Days, units.Of(day.BatchFeed.Interval.Low!.Value)));
            band.Points2.Add(new DataPoint(day.Age.Days, units.Of(day.BatchFeed.Interval.High!.Value)));
            line.Points.Add(new DataPoint(day.Age.Days, units.Of(day.BatchFeed.Value)));
        }

        plot.Series.Add(band);
        plot.Series.Add(line);
        string recorded = "";
        if (answer.Forecast.FarmFactor is { } factor)
        {
            ScatterSeries eaten = new() { Title = "eaten", MarkerType = MarkerType.Diamond, MarkerSize = 6, MarkerFill = ChartStyle.Weighed };
            eaten.Points.Add(new ScatterPoint(factor.Record.Age.Days, units.Of(factor.Record.Eaten)));
            plot.Series.Add(eaten);
            recorded = " Eaten by " + factor.Record.Age + ": " + units.Text(factor.Record.Eaten, 0) + " " + units.Weight + ".";
        }

        FeedDay last = answer.Forecast.Total;
        return SvgChart.Of(
            plot,
            "Feed of the batch by age",
            "Chart of all feed of the batch against age. By " + last.Age + ": " + units.Text(last.BatchFeed.Value, 0) + " " + units.Weight + ", " + level + " interval "
                + units.Text(last.BatchFeed.Interval.Low, 0) + " to " + units.Text(last.BatchFeed.Interval.High, 0) + "." + recorded);
    }
}
