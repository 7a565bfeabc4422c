using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A day of the forecast, named by the age at its end; feed and energy are of one living bird unless the key says batch.</summary>
internal sealed record FeedDayNode
{
    public required double AgeDays { get; init; }

    public required DateOnly? Date { get; init; }

    public required double Birds { get; init; }

    public required double MeanKg { get; init; }

    public required double FeedG { get; init; }

    public required double? FeedLowG { get; init; }

    public required double? FeedHighG { get; init; }

    public required double CumulativeFeedG { get; init; }

    public required double? CumulativeFeedLowG { get; init; }

    public required double? CumulativeFeedHighG { get; init; }

    public required double BatchFeedKg { get; init; }

    public required double? BatchFeedLowKg { get; init; }

    public required double? BatchFeedHighKg { get; init; }

    public required double EnergyKcal { get; init; }

    /// <summary>Feed of the batch so far over the live weight of the birds alive.</summary>
    public required double FeedConversion { get; init; }

    public required double WaterG { get; init; }

    public required double BatchWaterLitres { get; init; }

    public static FeedDayNode Of(FeedDay day, BatchCalendar calendar) => new()
    {
        AgeDays = day.Age.Days,
        Date = calendar.DateAt(day.Age),
        Birds = day.Birds,
        MeanKg = day.Weight.Kilograms,
        FeedG = day.Feed.Value.Grams,
        FeedLowG = day.Feed.Interval.Low?.Grams,
        FeedHighG = day.Feed.Interval.High?.Grams,
        CumulativeFeedG = day.CumulativeFeed.Value.Grams,
        CumulativeFeedLowG = day.CumulativeFeed.Interval.Low?.Grams,
        CumulativeFeedHighG = day.CumulativeFeed.Interval.High?.Grams,
        BatchFeedKg = day.BatchFeed.Value.Kilograms,
        BatchFeedLowKg = day.BatchFeed.Interval.Low?.Kilograms,
        BatchFeedHighKg = day.BatchFeed.Interval.High?.Kilograms,
        EnergyKcal = Kilocalories.PerDay(day.Energy),
        FeedConversion = day.Conversion.Ratio,
        WaterG = day.Water.GramsPerDay,
        BatchWaterLitres = day.Water.KilogramsPerDay * day.Birds,
    };
}
