using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A mean with its range, for programs.</summary>
internal sealed record OutcomeNode
{
    public required double Mean { get; init; }

    public required double? Low { get; init; }

    public required double? High { get; init; }

    /// <summary>A weight, in kg.</summary>
    public static OutcomeNode Of(Estimate<Mass> estimate) => Of(estimate, weight => weight.Kilograms);

    /// <summary>Money, in the farm's currency.</summary>
    public static OutcomeNode Of(Estimate<Money> estimate) => Of(estimate, money => money.Amount);

    public static OutcomeNode Of<T>(Estimate<T> estimate, Func<T, double> number)
        where T : struct, IComparable<T> => new()
    {
        Mean = number(estimate.Value),
        Low = estimate.Interval.Low is { } low ? number(low) : null,
        High = estimate.Interval.High is { } high ? number(high) : null,
    };
}
