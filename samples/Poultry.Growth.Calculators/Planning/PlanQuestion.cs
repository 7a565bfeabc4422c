using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>What is asked of a plan.</summary>
internal sealed record PlanQuestion(BatchPlan Plan, string File, HarvestOptions Options)
{
    /// <summary>The folder of finished batches in place of the one that the file names; null where the file decides.</summary>
    public string? History { get; init; }

    /// <summary>What looks wrong in the weigh-ins.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; init; } = [];

    /// <summary>Whether to try every day between those offered.</summary>
    public bool EveryDay { get; init; }

    /// <summary>Shares of the birds that may go on an earlier day; none where the batch is not split.</summary>
    public IReadOnlyList<Probability> SplitShares { get; init; } = [];

    /// <summary>Which birds these would be.</summary>
    public FirstBirds SplitBirds { get; init; }
}
