namespace Poultry.Growth.Housing;

/// <summary>Whether a house stays where it is.</summary>
public enum HouseKind
{
    /// <summary>It stays.</summary>
    Fixed,

    /// <summary>It is moved; rules for it mostly end at a floor of 150 m².</summary>
    Mobile,
}
