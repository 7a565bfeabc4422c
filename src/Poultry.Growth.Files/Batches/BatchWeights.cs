using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Files;

/// <summary>What is known of the weights of a batch: weigh-ins and a prior, or a table.</summary>
public sealed class BatchWeights
{
    internal BatchWeights()
    {
    }

    /// <summary>The weigh-ins; null where there are none yet, or a table is given.</summary>
    public WeighInReading? WeighIns { get; internal init; }

    /// <summary>What was known beforehand; null where a table is given.</summary>
    public GrowthPrior? Prior { get; internal init; }

    /// <summary>The folder that the prior was learned from; null where it is a name or a file.</summary>
    internal string? PriorFolder { get; init; }

    /// <summary>What looks wrong in the weigh-ins, and in those of the past batches that the prior was learned from; all count.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions => [.. WeighIns?.Suspicions ?? [], .. PastSuspicions];

    /// <summary>What looks wrong in the weigh-ins of past batches.</summary>
    internal IReadOnlyList<FileSuspicion> PastSuspicions { get; init; } = [];

    /// <summary>A table of weights that the batch is taken to follow; null where it is projected.</summary>
    public TabulatedCurve? Table { get; internal init; }

    /// <summary>The table, or the weigh-ins and the prior; in every culture.</summary>
    public override string ToString() => Table?.ToString() ?? (WeighIns?.ToString() ?? "no weigh-ins") + "; prior: " + Prior;
}
