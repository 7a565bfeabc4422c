namespace Poultry.Growth.Fitting;

/// <summary>Where a search for a population ended.</summary>
internal sealed class LaplaceEmResult
{
    /// <summary>Whether the last round moved less than the tolerance. Otherwise the numbers below are those of a search that was given up.</summary>
    public required bool Converged { get; init; }

    /// <summary>How many rounds.</summary>
    public required int Rounds { get; init; }

    /// <summary>mu, S, tau².</summary>
    public required MixedPopulation Population { get; init; }

    /// <summary>C, the covariance of mu, row by row.</summary>
    public required double[] MeanCovariance { get; init; }

    /// <summary>The mode of each batch, in their order.</summary>
    public required IReadOnlyList<GroupMode> Modes { get; init; }

    /// <summary>By Laplace's method, with the population before the last round; without what draws it.</summary>
    public required double LogLikelihood { get; init; }
}
