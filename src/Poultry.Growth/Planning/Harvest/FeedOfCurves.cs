using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Feed of the batch to every day for one drawn curve and one fate of the flock, and what it costs.</summary>
internal sealed class FeedOfCurves
{
    private readonly BatchPlan plan;
    private readonly FeedForecast forecast;
    private readonly double[] pricePerKilogram;
    private readonly double[] middleDays;
    private readonly double logFactor, logError;

    /// <summary>What the batch ate on the days of a record, which no curve changes, kg.</summary>
    private readonly double[] recorded;

    /// <summary>Birds alive on the days on which they were counted.</summary>
    private readonly double[] counted;

    /// <summary>Feed by the middle curve: for a curve that no bird could follow, of which there are a few in ten thousand.</summary>
    private readonly double[] usual;

    public FeedOfCurves(BatchPlan plan, Age last)
    {
        this.plan = plan;
        forecast = FeedForecast.For(plan.Growth.Curve, plan.Birds, plan.Feeds, plan.Feeding, last, new() { Record = plan.FeedRecord });

        // A record of this batch goes before what earlier batches ate.
        (logFactor, logError) = plan.Farm?.Feed is { } farm && forecast.FarmFactor is not { IsApplied: true } ? (farm.LogMean, farm.LogSpread) : (0, forecast.LogError);
        double start = plan.Birds.AgeAtPlacement.Days;
        middleDays = [.. Enumerable.Range(0, forecast.ByDay.Count).Select(day => start + day + 0.5)];
        counted = [.. middleDays.TakeWhile(days => days <= plan.Birds.CountedUntil.Days).Select(days => plan.Birds.BirdsAt(Age.FromDays(days)))];
        recorded = [.. forecast.ByDay.Take(forecast.RecordedDays).Select((day, at) => day.BatchFeed.Value.Kilograms - (at == 0 ? 0 : forecast.ByDay[at - 1].BatchFeed.Value.Kilograms))];
        usual = [.. forecast.ByDay.Select(day => day.Feed.Value.Kilograms)];
        pricePerKilogram = [.. middleDays.Select(age => plan.Feeds.Phases[plan.Feeds.IndexAt(age)].Price?.AmountPerKilogram ?? 0)];
    }

    /// <summary>Fills feed in kg and its cost, from placement to each day.</summary>
    public void Draw(Span<double> kilograms, double survival, double lost, double struckDays, double error, Span<double> feedKilograms, Span<double> cost)
    {
        // The cost of a day is written over the feed of the same day, once that is used.
        Span<double> bird = cost[1..];
        if (!forecast.OfCurve(kilograms, bird))
        {
            usual.CopyTo(bird);
        }

        double factor = Math.Exp(logFactor + (error * logError));
        (feedKilograms[0], double sum, double money) = (0, 0, 0);
        for (int day = 0; day < bird.Length; day++)
        {
            Age age = Age.FromDays(middleDays[day]);
            double birds = day < counted.Length ? counted[day] : plan.Birds.BirdsInBatch(age, survival) * (age.Days > struckDays ? 1 - lost : 1);
            double eaten = day < recorded.Length ? recorded[day] : birds * bird[day] * factor;
            sum += eaten;
            money += eaten * pricePerKilogram[day];
            (feedKilograms[day + 1], cost[day + 1]) = (sum, money);
        }

        cost[0] = 0;
    }
}
