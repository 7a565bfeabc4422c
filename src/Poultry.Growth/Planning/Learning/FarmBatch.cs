using Poultry.Growth.Carcass;
using Poultry.Growth.Fitting;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Planning;

/// <summary>A finished batch as the farm's history keeps it. What was not written down is null and teaches nothing.</summary>
public sealed class FarmBatch
{
    /// <summary>Its name, its kind and its weigh-ins.</summary>
    public required PastBatch Weights { get; init; }

    /// <summary>When it was killed; null where that is not known.</summary>
    public DateOnly? Killed { get; init; }

    /// <summary>Birds placed and lost; null where they were not counted.</summary>
    public PastLosses? Losses { get; init; }

    /// <summary>Feed eaten and expected; null where no record goes to the end.</summary>
    public PastFeed? Feed { get; init; }

    /// <summary>Live weight over a scale and carcass weight that came back, loss in cutting put back; null where one of them was not weighed.</summary>
    public (LiveWeight Live, CarcassWeight Carcass)? Dressed { get; init; }

    /// <summary>Birds opened at both tenders; null where nobody looked.</summary>
    public LesionInspection? Inspection { get; init; }

    /// <summary>The farm's own name for it.</summary>
    public string Name => Weights.Name;

    /// <summary>Strain, system and sex.</summary>
    public BatchKind Kind => Weights.Kind;

    /// <summary>Name, kind and weigh-ins in one line.</summary>
    public override string ToString() => Weights.ToString();
}
