using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What is known beforehand of a batch, and what is asked of its projection.</summary>
internal sealed class ProjectQuestion
{
    public required GrowthPrior Prior { get; init; }

    /// <summary>The past batches that it was learned from; null where it was not.</summary>
    public BatchHistoryReading? Past { get; init; }

    /// <summary>Ages to project to, in order; none for the usual ones.</summary>
    public IReadOnlyList<Age> Ages { get; init; } = [];

    public Mass? Target { get; init; }

    /// <summary>Limits of weight bands, rising; may be none.</summary>
    public IReadOnlyList<Mass> Bands { get; init; } = [];

    public IReadOnlyList<(int Birds, Age Age)> NextWeighIns { get; init; } = [];

    public double Level { get; init; } = GrowthFit.DefaultLevel;
}
