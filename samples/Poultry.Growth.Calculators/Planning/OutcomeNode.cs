using Poultry.Growth.Evidence;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A mean with its range, for programs.</summary>
internal sealed record OutcomeNode
{
    public required double Mean { get; init; }

    public required double? Low { get; init; }

    public required double? High { get; init; }

    public static OutcomeNode Of<T>(Estimate<T> estimate, Func<T, double> number)
        where T : struct, IComparable<T> => new()
    {
        Mean = number(estimate.Value),
        Low = estimate.Interval.Low is { } low ? number(low) : null,
        High = estimate.Interval.High is { } high ? number(high) : null,
    };
}
