using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The batch to the last day.</summary>
internal sealed record FeedTotalsNode
{
    public required double AgeDays { get; init; }

    public required double FeedKg { get; init; }

    public required double? FeedLowKg { get; init; }

    public required double? FeedHighKg { get; init; }

    public required double FeedPerBirdKg { get; init; }

    public required double FeedConversionLive { get; init; }

    public required double WaterLitres { get; init; }

    /// <summary>Null where a price is not known.</summary>
    public required double? Cost { get; init; }

    public required double? CostLow { get; init; }

    public required double? CostHigh { get; init; }

    public static FeedTotalsNode Of(FeedForecast forecast) => new()
    {
        AgeDays = forecast.Total.Age.Days,
        FeedKg = forecast.Total.BatchFeed.Value.Kilograms,
        FeedLowKg = forecast.Total.BatchFeed.Interval.Low?.Kilograms,
        FeedHighKg = forecast.Total.BatchFeed.Interval.High?.Kilograms,
        FeedPerBirdKg = forecast.Total.CumulativeFeed.Value.Kilograms,
        FeedConversionLive = forecast.Total.Conversion.Ratio,
        WaterLitres = forecast.ByDay.Sum(day => day.Water.KilogramsPerDay * day.Birds),
        Cost = forecast.Cost?.Amount,
        CostLow = forecast.CostInterval?.Low?.Amount,
        CostHigh = forecast.CostInterval?.High?.Amount,
    };
}
