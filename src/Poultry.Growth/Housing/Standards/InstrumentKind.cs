namespace Poultry.Growth.Housing;

/// <summary>What kind of text sets a limit, and so whom it binds.</summary>
public enum InstrumentKind
{
    /// <summary>Law, or an authority's reading of it: binds everybody whom its scope names.</summary>
    Law,

    /// <summary>A code of practice to which law or the trade refers.</summary>
    Code,

    /// <summary>A programme, label or pledge: binds those who joined it.</summary>
    Scheme,

    /// <summary>Advice: binds nobody.</summary>
    Advice,
}
