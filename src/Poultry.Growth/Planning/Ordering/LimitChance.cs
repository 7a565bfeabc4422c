using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A limit and the chance that more birds are alive than it allows.</summary>
public sealed class LimitChance
{
    internal LimitChance(BirdLimit limit, Probability exceeded) => (Limit, Exceeded) = (limit, exceeded);

    /// <summary>The limit.</summary>
    public BirdLimit Limit { get; }

    /// <summary>The chance that it is exceeded.</summary>
    public Probability Exceeded { get; }

    /// <summary>As in <c>plant: at most 300 birds at 56 d; more with a chance of 4.2 %</c>, in every culture.</summary>
    public override string ToString() => Limit + "; more with a chance of " + Exceeded;
}
