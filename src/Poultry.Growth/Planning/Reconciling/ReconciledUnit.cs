namespace Poultry.Growth.Planning;

/// <summary>What the numbers of a <see cref="ReconciledFigure"/> count.</summary>
public enum ReconciledUnit
{
    /// <summary>Birds.</summary>
    Birds,

    /// <summary>Kilograms.</summary>
    Kilograms,

    /// <summary>Parts of a hundred.</summary>
    Percent,

    /// <summary>The farm's own currency.</summary>
    Money,
}
