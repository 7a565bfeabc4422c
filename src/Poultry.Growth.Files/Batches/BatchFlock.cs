using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Which birds a batch file speaks of, and how many live.</summary>
public sealed class BatchFlock
{
    internal BatchFlock()
    {
    }

    /// <summary>What the farm calls the batch; null where the file does not say.</summary>
    public string? Name { get; internal init; }

    /// <summary>Their strain; null where the file does not say. Batches of different strains are never learned together.</summary>
    public string? Strain { get; internal init; }

    /// <summary>How they are kept, as in <c>movable shelter</c>; null where the file does not say. Likewise.</summary>
    public string? System { get; internal init; }

    /// <summary>The day the chicks were, or will be, placed; null where the file does not say.</summary>
    public DateOnly? Placed { get; internal init; }

    /// <summary>Birds by age, with how old the chicks were when placed.</summary>
    public required HeadCountPath HeadCount { get; init; }

    /// <summary>The share of chicks ordered that come dead; none unless the file says so. It counts for the next order, not for this batch.</summary>
    public Probability ChicksLostInTransit { get; internal init; }

    /// <summary>The sex of the birds.</summary>
    public Sex Sex { get; internal init; }

    /// <summary>Fast or slow growing.</summary>
    public BirdType Type { get; internal init; }

    /// <summary>Mean live weight at hatch.</summary>
    public Mass HatchWeight { get; internal init; }

    /// <summary>The age up to which the file asks; null where it does not say.</summary>
    public Age? Until { get; internal init; }

    /// <summary>As in <c>June batch: 500 placed at 1 d; …</c>, in every culture.</summary>
    public override string ToString() => (Name is null ? "" : Name + ": ") + HeadCount;

    /// <summary>The same birds, counted.</summary>
    internal BatchFlock With(HeadCountPath headCount) => new()
    {
        Name = Name, Strain = Strain, System = System, Placed = Placed, HeadCount = headCount, Sex = Sex, Type = Type, HatchWeight = HatchWeight, Until = Until, ChicksLostInTransit = ChicksLostInTransit,
    };
}
