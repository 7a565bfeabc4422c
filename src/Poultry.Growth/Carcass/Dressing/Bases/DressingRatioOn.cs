using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>A dressing ratio on a basis that is part of the type: only ratios of one basis are compared.</summary>
/// <typeparam name="TBasis">What the carcass is.</typeparam>
public sealed class DressingRatio<TBasis>
    where TBasis : ICarcassBasis
{
    private readonly DressingRatio ratio;

    internal DressingRatio(DressingRatio ratio) => this.ratio = ratio;

    /// <summary>Carcass over live weight; low and high are what one batch may show.</summary>
    public LikelyRange<Probability> Ratio => ratio.Ratio;

    /// <summary>By how many percentage points of live weight this ratio lies above another.</summary>
    /// <param name="other">On the same basis, and of birds weighed in the same state.</param>
    /// <exception cref="ArgumentException">The live birds were weighed in another state, or a state is not stated.</exception>
    public double PercentOfLiveAbove(DressingRatio<TBasis> other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return ratio.MeasuredOn.IsStated && ratio.MeasuredOn.Equals(other.ratio.MeasuredOn)
            ? Ratio.Likely.Percent - other.Ratio.Likely.Percent
            : throw new ArgumentException(
                "The live birds were weighed in different states: " + ratio.MeasuredOn + ", and " + other.ratio.MeasuredOn + "; expected the same, stated.", nameof(other));
    }

    /// <summary>What the carcasses of live birds weigh.</summary>
    /// <inheritdoc cref="DressingRatio.CarcassOf"/>
    public CarcassWeight<TBasis> CarcassOf(LiveWeight live, LiveState? atKilling = null, FeedWithdrawal? withdrawal = null) =>
        ratio.CarcassOf(live, atKilling, withdrawal).On<TBasis>();

    /// <inheritdoc cref="DressingRatio.ToString"/>
    public override string ToString() => ratio.ToString();
}
