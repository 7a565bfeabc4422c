namespace Poultry.Growth.Housing;

/// <summary>How birds are kept, in the words by which rules tell keepings apart.</summary>
public enum RearingSystem
{
    /// <summary>In a house, without a marketing term for more space.</summary>
    Indoor,

    /// <summary>In a house under the marketing term "extensive indoor" or "barn reared".</summary>
    Barn,

    /// <summary>With an outdoor run, under the marketing term "free range".</summary>
    FreeRange,

    /// <summary>With a larger run and slow-growing strains, under the marketing term "traditional free range" or "total freedom".</summary>
    TraditionalFreeRange,

    /// <summary>Certified organic.</summary>
    Organic,

    /// <summary>In floorless shelters that are moved over pasture, without a marketing term or certificate.</summary>
    Shelter,
}
