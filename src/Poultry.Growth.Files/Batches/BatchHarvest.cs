using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>What a batch file says of the plant, of what sells and of costs.</summary>
public sealed class BatchHarvest
{
    internal BatchHarvest()
    {
    }

    /// <summary>The days offered.</summary>
    public required IReadOnlyList<OfferedDate> Dates { get; init; }

    /// <summary>Dressing, condemnation, loss in cutting.</summary>
    public required PlantConditions Plant { get; init; }

    /// <summary>The dressing ratio as the file states it, before what the farm's own batches make of it.</summary>
    public required DressingRatio StatedDressing { get; init; }

    /// <summary>The share of birds condemned, with its range; null where the file does not say.</summary>
    public LikelyRange<Probability>? CondemnedBirds { get; internal init; }

    /// <summary>Birds dead on arrival.</summary>
    public RoadLoss DeadOnArrival { get; internal init; } = RoadLoss.Usual;

    /// <summary>What packs of cut pieces weigh of what the shares say, with its range.</summary>
    public LikelyRange<double> CutWeights { get; internal init; } = LikelyRange<double>.Exactly(1);

    /// <summary>What cutting and packing cost.</summary>
    public required PlantCharges Cutting { get; init; }

    /// <summary>Which birds stay whole and which are cut.</summary>
    public required CutOrder Order { get; init; }

    /// <summary>Packs, prices, what sells.</summary>
    public required IReadOnlyList<PackOffer> Offers { get; init; }

    /// <summary>What else the batch costs.</summary>
    public required BatchCosts Costs { get; init; }

    /// <summary>The floor of the shelters; null where the file does not say.</summary>
    public ShelterSpace? Shelters { get; internal init; }

    /// <summary>Weights of single birds that customers want; null where the file does not say.</summary>
    public (Mass Low, Mass High)? WantedWeights { get; internal init; }

    /// <summary>The share of birds deboned at the plant.</summary>
    public Probability Deboned { get; internal init; }

    /// <summary>How far selling prices may lie from those stated.</summary>
    public LikelyRange<double> Prices { get; internal init; } = LikelyRange<double>.Exactly(1);

    /// <summary>The days offered and what becomes of the birds, in every culture.</summary>
    public override string ToString() => string.Join(", ", Dates) + "; " + Order;
}
