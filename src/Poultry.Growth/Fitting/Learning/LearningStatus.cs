namespace Poultry.Growth.Fitting;

/// <summary>How learning from past batches ended.</summary>
public enum LearningStatus
{
    /// <summary>The prior is the farm's own.</summary>
    Learned,

    /// <summary>There was no batch to learn from: the prior is the shipped one.</summary>
    NoBatches,

    /// <summary>The search did not settle: the prior is the shipped one.</summary>
    NotConverged,

    /// <summary>
    /// What was learned is no growth of birds (highest gain before hatch, birds that differ by all their weight, weigh-ins off by half), mostly from ages or weights in a wrong
    /// unit: the prior is the shipped one.
    /// </summary>
    Implausible,
}
