using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The new batch between two priors: as the farm's past ones, or as the wider prior behind them has it. What it weighed decides between them,
/// p = (1 - eps) L_past / ((1 - eps) L_past + eps L_wide), and its weight at an age is a mixture of both answers.
/// </summary>
internal sealed class NewBatch
{
    private readonly PriorView past;
    private readonly PriorView wide;

    private NewBatch(PriorView past, PriorView wide, double fallbackShare)
    {
        (this.past, this.wide) = (past, wide);
        ChanceLikePast = fallbackShare == 0 ? 1 : 1 / (1 + (fallbackShare / (1 - fallbackShare) * Math.Exp(wide.LogEvidence - past.LogEvidence)));
    }

    /// <summary>The chance that the batch is like the past ones. Below a half: it does not look like them.</summary>
    public double ChanceLikePast { get; }

    /// <summary>The batch under a prior and the wider one behind it, if any.</summary>
    /// <param name="batch">Logarithms of mean weights; may be empty.</param>
    /// <param name="prior">What is known beforehand.</param>
    /// <param name="weighInError">Error of a whole weigh-in as a fraction.</param>
    /// <returns>Null where no mode is found.</returns>
    public static NewBatch? Of(MixedGroup batch, GrowthPrior prior, double weighInError)
    {
        PriorView? past = PriorView.Of(batch, prior, weighInError);
        PriorView? wide = prior.Fallback is { } fallback ? PriorView.Of(batch, fallback, weighInError) : past;
        return past is null || wide is null ? null : new(past, wide, prior.FallbackShare);
    }

    /// <summary>The logarithm of the mean weight in kg below which it lies with a probability between 0 and 1.</summary>
    public double LogKilogramsAt(double days, double probability)
    {
        (double pastMean, double pastDeviation) = past.LogKilogramsAt(days);
        (double wideMean, double wideDeviation) = wide.LogKilogramsAt(days);
        return new NormalMixture([ChanceLikePast, 1 - ChanceLikePast], [pastMean, wideMean], [pastDeviation, wideDeviation]).Quantile(probability);
    }
}
