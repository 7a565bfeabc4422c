namespace Poultry.Growth.Planning;

/// <summary>What batches of a season share and can run short of.</summary>
public enum SeasonLimitKind
{
    /// <summary>Places in the brooder.</summary>
    BrooderPlaces,

    /// <summary>Shelters outdoors.</summary>
    Shelters,

    /// <summary>Fresh ground.</summary>
    Ground,

    /// <summary>Hands for the birds.</summary>
    Labour,

    /// <summary>Birds that the plant takes on a day.</summary>
    PlantHead,
}
