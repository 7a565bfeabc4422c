namespace Poultry.Growth.Evidence;

/// <summary>How a figure or an equation is known: what an auditor asks first.</summary>
public enum HowKnown
{
    /// <summary>Read in the source itself: the paper, its abstract, the official page or table.</summary>
    ReadInSource,

    /// <summary>Our own arithmetic from figures that were read, or mathematics that anyone can check.</summary>
    Derived,

    /// <summary>Read in somebody else's account of the source.</summary>
    Secondary,

    /// <summary>Recalled, unverified: never authoritative.</summary>
    Memory,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    /// <summary>Chosen, no data.</summary>
    Assumption,
}
