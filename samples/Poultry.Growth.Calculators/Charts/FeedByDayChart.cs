using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>What the batch eats on each day, in the colour of its feed.</summary>
internal static class FeedByDayChart
{
    private static readonly OxyColor[] Colours = [ChartStyle.CurveBeyond, ChartStyle.Curve, ChartStyle.Faint, ChartStyle.Weighed];

    public static Drawing Of(FeedAnswer answer, Units units)
    {
        PlotModel plot = ChartStyle.Plot("", "", units.Weight);
        plot.Axes[1].Title = "feed of the batch a day, " + units.Weight;
        Dictionary<FeedPhase, RectangleBarSeries> bars = [];
        foreach ((int at, PhaseFeed phase) in answer.Forecast.Phases.Index())
        {
            bars[phase.Phase] = new() { Title = phase.Phase.Name + ": " + Weight(phase.Feed.Value), FillColor = Colours[at % Colours.Length], StrokeThickness = 0 };
            plot.Series.Add(bars[phase.Phase]);
        }

        Mass before = Mass.Zero, most = Mass.Zero;
        foreach (FeedDay day in answer.Forecast.ByDay)
        {
            Mass eaten = day.BatchFeed.Value - before;
            (before, most) = (day.BatchFeed.Value, eaten > most ? eaten : most);
            Age middle = Age.FromDays(day.Age.Days - 0.5);
            FeedPhase fed = answer.Forecast.Phases.Last(phase => phase.Phase.From <= middle || phase == answer.Forecast.Phases[0]).Phase;
            bars[fed].Items.Add(new(day.Age.Days - 0.9, 0, day.Age.Days - 0.1, units.Of(eaten)));
        }

        FeedDay last = answer.Forecast.Total;
        return new(plot, "Feed of the batch by day", "Chart of the feed of the batch on each day. By " + last.Age + " in all " + Weight(last.BatchFeed.Value) + ", " + Numbers.Percent(answer.Question.Level)
            + " % interval " + Weight(last.BatchFeed.Interval.Low) + " to " + Weight(last.BatchFeed.Interval.High) + "; on the day of most " + Weight(most) + ". "
            + string.Join(" ", answer.Forecast.Phases.Select(phase => phase.Phase.Name + ": " + Weight(phase.Feed.Value) + ".")));

        string Weight(Mass? weight) => units.Text(weight, 0) + " " + units.Weight;
    }
}
