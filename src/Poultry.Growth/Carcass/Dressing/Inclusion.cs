namespace Poultry.Growth.Carcass;

/// <summary>Whether a part was weighed with the carcass.</summary>
public enum Inclusion
{
    /// <summary>The source does not say.</summary>
    NotStated,

    /// <summary>Weighed with it.</summary>
    With,

    /// <summary>Taken off before.</summary>
    Without,
}
