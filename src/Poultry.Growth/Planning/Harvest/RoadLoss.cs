using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Birds dead on arrival at the plant, as a share of those loaded: every fate of a batch has its own.</summary>
public sealed class RoadLoss
{
    private RoadLoss(LikelyRange<Probability> share) => Share = share;

    /// <summary>Source of the usual.</summary>
    public static ModelInfo Model { get; } = new(
        "dead-on-arrival",
        "Birds dead on arrival at the plant",
        "delivered = loaded (1 - d), d triangular (low, likely, high)",
        [new ModelSymbol("d", "share of the birds loaded that are dead on arrival", "-")],
        [new Citation("Vieira", "Vieira et al., in another's account", HowKnown.Secondary, "13,937 flocks in Brazil: summer 0.42, spring 0.39, winter 0.28, autumn 0.23 %")],
        "Means of seasons of large flocks; likely is the mean of the four. One hot or badly loaded trip may cost many times as much: no figure was to be had.",
        HowKnown.Secondary);

    /// <summary>0.23 to 0.42 %, likely 0.33 %: seasons of large flocks in Brazil.</summary>
    public static RoadLoss Usual { get; } = Of(LikelyRange<Probability>.Of(Probability.FromPercent(0.23), Probability.FromPercent(0.33), Probability.FromPercent(0.42)));

    /// <summary>No bird, as where they are killed on the farm.</summary>
    public static RoadLoss None { get; } = Of(LikelyRange<Probability>.Exactly(default));

    /// <summary>The share, and how low and high it may be.</summary>
    public LikelyRange<Probability> Share { get; }

    /// <summary>The farm's own.</summary>
    /// <param name="share">Of the birds loaded, 0 to 100 %.</param>
    public static RoadLoss Of(LikelyRange<Probability> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        return new(share);
    }

    /// <summary>As in <c>0.33 % (0.23 to 0.42 %) dead on arrival</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Share.Likely.Percent:0.##} % ({Share.Low.Percent:0.##} to {Share.High.Percent:0.##} %) dead on arrival");
}
