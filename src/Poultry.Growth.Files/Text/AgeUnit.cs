namespace Poultry.Growth.Files;

/// <summary>A unit in which ages are written in files.</summary>
public enum AgeUnit
{
    /// <summary>Days since hatch.</summary>
    Day,

    /// <summary>Weeks of seven days since hatch.</summary>
    Week,
}
