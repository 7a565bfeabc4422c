namespace Poultry.Growth.Primitives;

/// <summary>The sex of the birds weighed.</summary>
public enum Sex
{
    /// <summary>Straight run: cockerels and pullets together, as hatched, or sex not recorded.</summary>
    Mixed,

    /// <summary>Cockerels.</summary>
    Male,

    /// <summary>Pullets.</summary>
    Female,
}
