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
}
