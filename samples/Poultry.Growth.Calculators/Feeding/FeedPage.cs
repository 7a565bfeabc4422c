using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The feed of a batch as tables, cautions and sources.</summary>
internal static class FeedPage
{
    public static void Print(FeedAnswer answer, Page page)
    {
        page.Line("Feed of " + answer.Question.Title + ", to " + answer.Forecast.Total.Age + ", by " + EnergyModels.NameOf(answer.Question.Conditions.Model));
        page.Line("Temperatures: " + answer.Question.Conditions.Temperatures);
        Record(answer, page);
        ByWeek(answer, page);
        Phases(answer, page);
        page.Flagged(answer.Question.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static void Record(FeedAnswer answer, Page page)
    {
        if (answer.ToDate is var (age, feed))
        {
            page.Line("By " + age + " the batch should have eaten " + Between(feed, page));
        }

        if (answer.Forecast.FarmFactor is { } factor)
        {
            page.Line("It ate " + page.Units.Text(factor.Record.Eaten, 0) + " " + page.Units.Weight + " by " + factor.Record.Age + ": factor " + Numbers.Fixed(factor.Ratio, 2)
                + (factor.Interval is { } interval ? " (" + Numbers.Fixed(interval.Low!.Value, 2) + " to " + Numbers.Fixed(interval.High!.Value, 2) + " for the rest), and the forecast is corrected by it" : ", not used"));
        }
    }

    private static void ByWeek(FeedAnswer answer, Page page)
    {
        string weight = page.Units.Weight;
        FeedDay last = answer.Forecast.Total;
        page.Title("By week (" + Numbers.Percent(answer.Question.Level) + " % intervals; every day in JSON)");
        page.Table(
            ["age d", "date", "birds", "mean " + weight, "feed " + page.Units.DailyWeight + " a bird a day", "low", "high", "so far " + weight + " a bird", "batch so far " + weight, "low", "high", "conversion", "water " + page.Units.Volume + " a day"],
            answer.Forecast.ByDay.Where(day => day == last || day.Age.Days % 7 == 0).Select(day => (IReadOnlyList<string>)
            [
                Numbers.Days(day.Age),
                Numbers.Date(answer.Calendar.DateAt(day.Age)),
                Numbers.Whole(day.Birds),
                page.Units.Text(day.Weight, 2),
                page.Units.DailyText(day.Feed.Value),
                page.Units.DailyText(day.Feed.Interval.Low),
                page.Units.DailyText(day.Feed.Interval.High),
                page.Units.Text(day.CumulativeFeed.Value, 2),
                page.Units.Text(day.BatchFeed.Value, 0),
                page.Units.Text(day.BatchFeed.Interval.Low, 0),
                page.Units.Text(day.BatchFeed.Interval.High, 0),
                Numbers.Fixed(day.Conversion.Ratio, 2),
                Numbers.Fixed(page.Units.OfLitres(day.Water.KilogramsPerDay * day.Birds), answer.Question.HeadCount.Placed == 1 ? 2 : 0),
            ]));
    }

    private static void Phases(FeedAnswer answer, Page page)
    {
        string weight = page.Units.Weight;
        page.Title("To buy");
        page.Table(["<feed", "from d", weight, "low", "high", "bags", "at most", "order by", "cost"], answer.Forecast.Phases.Select(phase => (IReadOnlyList<string>)
        [
            phase.Phase.Name,
            Numbers.Days(phase.Phase.From),
            page.Units.Text(phase.Feed.Value, 0),
            page.Units.Text(phase.Feed.Interval.Low, 0),
            page.Units.Text(phase.Feed.Interval.High, 0),
            phase.Bags is { } bags ? Numbers.Whole(bags) : "-",
            phase.BagsAtMost is { } most ? Numbers.Whole(most) : "-",
            FeedPhaseNode.BuyByOf(phase, answer.Question.Placed) is { } day ? Numbers.Date(day) : Numbers.Signed(phase.OrderBy.Days, 0) + " d from placement",
            phase.Cost is { } cost ? Numbers.Fixed(cost.Amount, 2) : "-",
        ]));
        page.Line("All feed: " + Between(answer.Forecast.Total.BatchFeed, page) + Cost(answer.Forecast));
    }

    private static string Cost(FeedForecast forecast) => forecast.Cost is not { } cost ? ""
        : ", cost " + Numbers.Fixed(cost.Amount, 2) + " (" + Numbers.Fixed(forecast.CostInterval!.Low!.Value.Amount, 2) + " to " + Numbers.Fixed(forecast.CostInterval.High!.Value.Amount, 2) + ")";

    private static string Between(Estimate<Mass> feed, Page page) => page.Units.Text(feed.Value, 0) + " " + page.Units.Weight + " (" + Numbers.Percent(feed.Interval.Level) + " %: "
        + page.Units.Text(feed.Interval.Low, 0) + " to " + page.Units.Text(feed.Interval.High, 0) + ")";
}
