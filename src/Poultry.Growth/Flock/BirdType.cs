namespace Poultry.Growth.Flock;

/// <summary>How fast a kind of bird grows: what feed and dressing depend on most.</summary>
public enum BirdType
{
    /// <summary>Fast-growing meat birds, at 2 kg (4.4 lb) within six to eight weeks and killed at seven to nine.</summary>
    Fast,

    /// <summary>Slower-growing meat birds and dual-purpose cockerels, killed at ten to twelve weeks.</summary>
    Slow,

    /// <summary>Very slow and heritage breeds, killed at sixteen weeks.</summary>
    Heritage,
}
