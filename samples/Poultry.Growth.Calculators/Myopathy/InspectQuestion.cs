using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>What <c>myopathy inspect</c> asks; shares are fractions.</summary>
internal sealed record InspectQuestion
{
    public int? Flock { get; init; }

    public double? Prevalence { get; init; }

    public double Confidence { get; init; }

    public double Detection { get; init; }

    public double Correlation { get; init; }

    public int? Opened { get; init; }

    public int? Found { get; init; }

    public FarmLesionRate? Farm { get; init; }
}
