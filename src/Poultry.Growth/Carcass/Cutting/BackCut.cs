namespace Poultry.Growth.Carcass;

/// <summary>Where the back of a bird goes when it is cut. The two kinds of set have different shares and must not be mixed.</summary>
public enum BackCut
{
    /// <summary>Farm cut: the back is left over as a separate frame.</summary>
    SeparateFrame,

    /// <summary>Trade cut: each piece keeps its part of the back.</summary>
    InThePieces,
}
