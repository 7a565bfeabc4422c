using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>A weigh-in in plain numbers, to be saved and loaded to the last bit.</summary>
public sealed class WeighInRecord
{
    /// <summary>How the birds were put on the scale.</summary>
    public required WeighInKind Kind { get; init; }

    /// <summary>Age in days, 0 or more.</summary>
    public required double AgeDays { get; init; }

    /// <summary>How many birds, 1 or more.</summary>
    public required int Birds { get; init; }

    /// <summary>Mean live weight in kg, above 0.</summary>
    public required double MeanKilograms { get; init; }

    /// <summary>Standard deviation between the birds in kg; null where it is not known.</summary>
    public double? StandardDeviationKilograms { get; init; }

    /// <summary>Weights of single birds in kg; empty for the other kinds.</summary>
    public IReadOnlyList<double> Kilograms { get; init; } = [];

    /// <summary>Which birds.</summary>
    public Sex Sex { get; init; }

    /// <summary>What was written beside it; null where nothing was.</summary>
    public string? Note { get; init; }
}
