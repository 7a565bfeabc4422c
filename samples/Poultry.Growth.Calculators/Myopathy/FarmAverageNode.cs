using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>One farm over many batches that nobody inspected: its average in percent of birds, and the chance that the worst of ten batches has 5 % or more.</summary>
internal sealed record FarmAverageNode(double MeanPercent, double MedianPercent, double LowPercent, double HighPercent, double ChanceWorstOfTenAbove5Percent)
{
    public static FarmAverageNode? Of(RiskAnswer answer)
    {
        if (answer.Farm is not { } farm)
        {
            return null;
        }

        Interval<BirdPrevalence> range = farm.IntervalAt(answer.Level);
        return new(
            farm.Mean.Percent, farm.Median.Percent, range.Low!.Value.Percent, range.High!.Value.Percent, farm.ChanceWorstAbove(BirdPrevalence.FromPercent(5), 10).Percent);
    }
}
