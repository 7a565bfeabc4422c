namespace Poultry.Growth.Myopathy;

/// <summary>What the evidence for a risk factor amounts to.</summary>
public enum FactorVerdict
{
    /// <summary>There are figures, and the library uses them.</summary>
    Used,

    /// <summary>Good data looked for an effect and found none: it moves nothing.</summary>
    Null,

    /// <summary>It seems to raise the risk, but nobody has published by how much.</summary>
    DirectionOnly,

    /// <summary>No data, or none of a kind that a number could come from.</summary>
    LeftOut,
}
