using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>What <c>myopathy risk</c> asks.</summary>
internal sealed record RiskQuestion
{
    public required BatchAtRisk Batch { get; init; }

    public required int Birds { get; init; }

    public FarmLesionRate? Farm { get; init; }

    /// <summary>The share of the birds that is deboned at the plant.</summary>
    public double Deboned { get; init; }

    /// <summary>Both tenders of a bird, as the farm's cuts say.</summary>
    public Mass? Tenders { get; init; }

    public TrimRecord Record { get; init; }

    public Money Refund { get; init; }

    /// <summary>Whether the ranges of all parameters are within the intervals.</summary>
    public bool WithRanges { get; init; }

    /// <summary>A factor to explain.</summary>
    public RiskFactor? Factor { get; init; }

    /// <summary>By what a change is hoped to multiply the odds.</summary>
    public double? ChangeOdds { get; init; }
}
