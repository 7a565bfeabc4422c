using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>How a flock's birds lie about their mean at one age, and about the target.</summary>
internal sealed class FlockAtAge
{
    public FlockAtAge(Projection projection, Age age, Mass? target, IReadOnlyList<Mass> bands)
    {
        Age = age;
        Uniformity = projection.UniformityAt(age);
        ChanceAtTarget = target is { } reached ? projection.ChanceMeanReaches(reached, age) : null;
        ShareAtTarget = target is { } weight ? projection.ShareAbove(weight, age) : null;
        Bands = bands.Count > 0 ? projection.ShareInBands(age, [.. bands]) : [];
    }

    public Age Age { get; }

    /// <summary>The share of the birds within 10 % of the mean.</summary>
    public Probability Uniformity { get; }

    /// <summary>The chance that the mean is at the target or above; null without a target.</summary>
    public Probability? ChanceAtTarget { get; }

    /// <summary>The share of the birds at the target or above; null without a target.</summary>
    public Probability? ShareAtTarget { get; }

    /// <summary>The shares of the birds between the limits asked for.</summary>
    public IReadOnlyList<WeightBand> Bands { get; }
}
