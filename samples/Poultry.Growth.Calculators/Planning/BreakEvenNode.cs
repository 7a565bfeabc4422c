using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>What the meat must bring, for programs.</summary>
internal sealed record BreakEvenNode(double PerKg, double? LowPerKg, double? HighPerKg)
{
    public static BreakEvenNode Of(Estimate<UnitPrice> price) => new(
        price.Value.AmountPerKilogram, price.Interval.Low?.AmountPerKilogram, price.Interval.High?.AmountPerKilogram);
}
