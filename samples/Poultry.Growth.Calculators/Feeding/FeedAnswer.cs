using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Everything that tables, JSON and chart show of the feed of a batch.</summary>
internal sealed class FeedAnswer
{
    public required FeedQuestion Question { get; init; }

    public required FeedForecast Forecast { get; init; }

    /// <summary>What the batch should have eaten by an age, before a farm's record corrects the rest; null where nobody asked and nothing was recorded.</summary>
    public required (Age Age, Estimate<Mass> Feed)? ToDate { get; init; }

    public BatchCalendar Calendar => new(Question.Placed, Question.HeadCount.AgeAtPlacement);

    public IReadOnlyList<Caution> Cautions =>
    [
        .. Forecast.Cautions,
        .. Question.Projection?.Cautions ?? [],
        .. Forecast.FarmFactor is { Reason: { } reason } ? [new Caution("record-not-used", "The record is compared and not used: " + reason + ".")] : Array.Empty<Caution>(),
        new Caution("fresh-feed-and-water", "A forecast is no order to ration: birds eat as they like. If they leave feed, look at the birds, the water and the feed, and ask the vet."),
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. Question.Conditions.Model.Model.Citations
            .Concat(Question.HeadCount.Placed > 1 ? Survival.FastGrowingOutdoor.Model.Citations : [])
            .Concat(Question.Projection is { } projection ? projection.Prior.Model.Citations : Question.Table!.Model.Citations)
            .Concat(DrinkingWater.ByAgeModel.Citations)
            .DistinctBy(source => source.Key),
    ];

    /// <summary>The answer; null, and a problem, where the question cannot be answered.</summary>
    public static FeedAnswer? To(FeedQuestion question, long seed, Action<string> refuse)
    {
        double start = question.HeadCount.AgeAtPlacement.Days;
        int before = 0;
        void Refuse(string problem)
        {
            before++;
            refuse(problem);
        }

        if (question.Until.Days - start is < 1 or > 119)
        {
            Refuse("--until: is out of range; expected an age from a day to 119 d after placement");
        }

        if (question.At is { } at && (at.Days < start || at > question.Until))
        {
            Refuse("--at: is out of range; expected an age from placement to --until");
        }

        if (question.Record is { } record && record.Age > question.Until)
        {
            Refuse("--until: lies before the farm's record of " + record.Age + "; expected a later age");
        }

        if (question.Plan.Phases[0].From.Days > start || question.Plan.Phases[^1].To < question.Until)
        {
            Refuse("--until: the feeds cover " + question.Plan.Phases[0].From + " to " + (question.Plan.Phases[^1].To?.ToString() ?? "the end") + "; expected feeds from placement to " + question.Until);
        }

        if (question.Table is { } table && (table.Rows.Max(row => row.Age) < question.Until || (question.Conditions.HatchWeight is not null && table.Rows.Min(row => row.Age).Days > 7)))
        {
            Refuse("the table of weights covers " + table.Rows.Min(row => row.Age) + " to " + table.Rows.Max(row => row.Age) + "; expected 7 d or earlier, to " + question.Until);
        }

        if (question.Projection is { } growth && ProjectionEnd.Of(growth) is var end && end < question.Until)
        {
            Refuse("--until: lies beyond the projection, which ends at " + end + "; expected an age up to that");
        }

        if (before > 0)
        {
            return null;
        }

        FeedForecastOptions Options(FeedRecord? used) => new()
        {
            Level = question.Level,
            Record = used,
            Curves = question.Projection?.Draws(seed, [.. FeedForecast.AgesFor(question.HeadCount, question.Until)]),
        };
        IGrowthCurve curve = question.Table ?? question.Projection!.Curve;
        FeedForecast Of(FeedRecord? used) => FeedForecast.For(curve, question.HeadCount, question.Plan, question.Conditions, question.Until, Options(used));
        FeedForecast forecast;
        try
        {
            forecast = Of(question.Record);
        }
        catch (ArgumentOutOfRangeException refused) when (refused.ParamName == "curve")
        {
            Refuse("the weights make no feed: " + LibraryRefusal.Said(refused));
            return null;
        }

        Age? asked = question.At ?? question.Record?.Age;
        return new()
        {
            Question = question,
            Forecast = forecast,
            ToDate = asked is { } age ? (age, (question.Record is null ? forecast : Of(null)).BatchFeedTo(age)) : null,
        };
    }
}
