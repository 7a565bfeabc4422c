using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>What is asked of a floor.</summary>
internal sealed class SpaceQuestion
{
    public required Area Floor { get; init; }

    public int? Birds { get; init; }

    /// <summary>The weight at which birds leave.</summary>
    public required Mass Weight { get; init; }

    /// <summary>The age at which they leave; null where it is not said.</summary>
    public Age? Age { get; init; }

    public Age AgeAtPlacement { get; init; }

    /// <summary>Share of the placed chicks lost by then; null where it is not said.</summary>
    public Probability? Mortality { get; init; }

    /// <summary>The chance of too many birds to live with.</summary>
    public required Probability Risk { get; init; }

    /// <summary>Outdoor run of all birds; null where there is none, or it is not said.</summary>
    public Area? Run { get; init; }

    /// <summary>Openings to the run; null where they are not said.</summary>
    public Length? PopHoles { get; init; }

    public required Keeping Keeping { get; init; }

    public required IReadOnlyList<Limit> Limits { get; init; }

    public (StockingDensity First, StockingDensity Second)? EarlierBatches { get; init; }

    /// <summary>How the birds grow; null where only one weight is asked about.</summary>
    public Projection? Curve { get; init; }

    /// <summary>What looks wrong in the weigh-ins.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; init; } = [];
}
