
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A weigh-in to come: the mean that it will show, and the width of the interval on the booked day after it and now.</summary>
internal sealed record NextWeighInNode
{
    public required double AgeDays { get; init; }

    public required int Birds { get; init; }

    /// <summary>Expected after it, of the interval of the mean on the booked day, as a part of that mean.</summary>
    public required double WidthPercent { get; init; }

    /// <summary>The same without it.</summary>
    public required double WidthNowPercent { get; init; }

    public required double MeanKg { get; init; }

    public required double? LowKg { get; init; }

    public required double? HighKg { get; init; }

    public static NextWeighInNode Of(NextWeighIn next) => new()
    {
        AgeDays = next.Worth.Age.Days,
        Birds = next.Worth.Birds,
        WidthPercent = 100 * next.Worth.WidthThenFraction,
        WidthNowPercent = 100 * next.Worth.WidthNowFraction,
        MeanKg = next.Mean.Value.Kilograms,
        LowKg = next.Mean.Interval.Low?.Kilograms,
        HighKg = next.Mean.Interval.High?.Kilograms,
    };
}
