using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A share of birds with its range.</summary>
internal sealed record PercentNode(double MedianPercent, double LowPercent, double HighPercent)
{
    public static PercentNode Of(Estimate<BirdPrevalence> estimate) => new(estimate.Value.Percent, estimate.Interval.Low!.Value.Percent, estimate.Interval.High!.Value.Percent);
}
