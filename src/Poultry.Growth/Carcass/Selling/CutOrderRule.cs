namespace Poultry.Growth.Carcass;

/// <summary>Which birds go to which line of an order.</summary>
public enum CutOrderRule
{
    /// <summary>The first line takes the heaviest birds, the next line the heaviest of the rest: what growers do with birds to be cut up.</summary>
    HeaviestFirst,

    /// <summary>Each line takes its share of birds as they come, whatever they weigh.</summary>
    AsTheyCome,

    /// <summary>Each line takes the birds of its weights.</summary>
    ByWeight,
}
