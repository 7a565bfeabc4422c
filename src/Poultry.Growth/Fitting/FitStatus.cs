namespace Poultry.Growth.Fitting;

/// <summary>How a fit ended.</summary>
public enum FitStatus
{
    /// <summary>A certified optimum with a finite mature weight.</summary>
    Converged,

    /// <summary>The weights do not bend: no finite mature weight fits best. The exponential is what they support.</summary>
    NoFiniteMatureWeight,

    /// <summary>The optimum is finite but absurd as a weight of a bird: the weights hardly bend.</summary>
    ImplausibleMatureWeight,

    /// <summary>There are not enough different ages, or not enough weigh-ins, for the family's parameters.</summary>
    TooFewAges,

    /// <summary>The weights leave a parameter open; the reason names it.</summary>
    NotIdentified,

    /// <summary>The search ended without a certificate. No number is given.</summary>
    NotConverged,
}
