using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A bird, its day, and how its need is to be worked out.</summary>
internal sealed class EnergyQuestion
{
    public required Mass Weight { get; init; }

    public required MassFlow Gain { get; init; }

    public required Sex Sex { get; init; }

    /// <summary>Null for that of the standard house.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Null where it was not said.</summary>
    public Age? Age { get; init; }

    public required EnergyModel Model { get; init; }

    /// <summary>Null for the usual feed of the age.</summary>
    public SpecificEnergy? Diet { get; init; }

    public required double Level { get; init; }
}
