namespace Poultry.Growth.Fitting;

/// <summary>What a search for a population starts from, what it is drawn to, and when it stops.</summary>
internal sealed class LaplaceEmSettings
{
    /// <summary>The population to start from.</summary>
    public required MixedPopulation Start { get; init; }

    /// <summary>m0: where mu is drawn to. Not used where <see cref="CentrePrecision"/> is empty.</summary>
    public double[] Centre { get; init; } = [];

    /// <summary>B0⁻¹, row by row; empty where mu is free.</summary>
    public double[] CentrePrecision { get; init; } = [];

    /// <summary>W0: what S is drawn to. Not used where <see cref="SpreadBatches"/> is 0.</summary>
    public double[] Spread { get; init; } = [];

    /// <summary>nu0: how many batches W0 counts as.</summary>
    public double SpreadBatches { get; init; }

    /// <summary>tau0².</summary>
    public double ErrorVariance { get; init; }

    /// <summary>a0: how many weigh-ins tau0 counts as.</summary>
    public double ErrorWeighIns { get; init; }

    /// <summary>Whether S allows for mu being estimated too (REML); else maximum likelihood.</summary>
    public bool AllowsForMean { get; init; }

    /// <summary>The change of mu in standard deviations, of ln sd and of ln tau at which the search is content.</summary>
    public required double Tolerance { get; init; }

    /// <summary>The most rounds.</summary>
    public required int RoundLimit { get; init; }
}
