using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A share of birds as a distribution.</summary>
internal sealed record SpreadNode(double MeanPercent, double MedianPercent, double LowPercent, double HighPercent, IReadOnlyList<ChanceNode> ChanceAbove)
{
    /// <summary>The shares of which the chance of more is told, %.</summary>
    public static readonly IReadOnlyList<double> Limits = [1, 5, 10, 25];

    public static SpreadNode Of(BatchPrevalence batch, double level)
    {
        Primitives.Interval<BirdPrevalence> interval = batch.IntervalAt(level);
        return new(batch.Mean.Percent, batch.Median.Percent, interval.Low!.Value.Percent, interval.High!.Value.Percent, ChanceNode.Of(batch));
    }
}
