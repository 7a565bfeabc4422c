using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What the weights support where they have no finite mature weight.</summary>
internal sealed record ExponentialNode(double HatchWeightKg, double RatePerDay)
{
    public static ExponentialNode? Of(GrowthFit fit) => fit.Exponential is { } curve ? new(curve.HatchWeight.Kilograms, curve.Rate.PerDay) : null;
}
