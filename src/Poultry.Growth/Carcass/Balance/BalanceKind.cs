namespace Poultry.Growth.Carcass;

/// <summary>What a line of a mass balance is.</summary>
public enum BalanceKind
{
    /// <summary>What comes back as carcass, with the water it took up.</summary>
    Carcass,

    /// <summary>A part beside it whose share is known.</summary>
    NamedPart,

    /// <summary>Lost, condemned or trimmed.</summary>
    Loss,

    /// <summary>What is left over when everything known is taken off.</summary>
    ByDifference,

    /// <summary>Water taken up in chilling: it comes in beside the birds.</summary>
    WaterIn,
}
