using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a batch needs of one feed: how much, how many bags, when to order, what it costs.</summary>
public sealed class PhaseFeed
{
    internal PhaseFeed(FeedPhase phase, Estimate<Mass> feed, Age ageAtPlacement) => (Phase, Feed, OrderBy) = (phase, feed, OrderTime(phase, ageAtPlacement));

    /// <summary>The feed.</summary>
    public FeedPhase Phase { get; }

    /// <summary>Feed of the whole batch in this phase, as far as the forecast goes.</summary>
    public Estimate<Mass> Feed { get; }

    /// <summary>The last moment to order it, as a time after placement; below 0: before the chicks come.</summary>
    public Duration OrderBy { get; }

    /// <summary>Full bags that hold the expected feed; null where it comes loose.</summary>
    public int? Bags => BagsFor(Feed.Value);

    /// <summary>Full bags that hold the upper bound.</summary>
    public int? BagsAtMost => Feed.Interval.High is { } high ? BagsFor(high) : null;

    /// <summary>What the bags cost, or the loose feed; null where no price is known.</summary>
    public Money? Cost => CostOf(Feed.Value);

    /// <summary>The same at the bounds of the feed, with the chance that they claim; null where no price is known.</summary>
    public Interval<Money>? CostInterval => Phase.Price is null ? null
        : Interval<Money>.Of(Feed.Interval.Low is { } low ? CostOf(low) : null, Feed.Interval.High is { } high ? CostOf(high) : null, Feed.Interval.Level);

    /// <summary>As in <c>starter: 312 kg (688 lb), 14 bags</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Phase.Name}: {Feed.Value.Kilograms:0} kg ({Feed.Value.Pounds:0} lb)") + (Bags is { } count ? ", " + CountText.Of(count, "bag") : "");

    private Money? CostOf(Mass feed) => Phase.Price?.For(BagsFor(feed) is { } bags ? Phase.Bag!.Value * bags : feed);

    private static Duration OrderTime(FeedPhase phase, Age ageAtPlacement) =>
        Duration.FromDays(Math.Max(0, (phase.From - ageAtPlacement).Days) - phase.DeliveryTime.Days);

    /// <summary>A rounding short of a full bag is a full bag.</summary>
    private int? BagsFor(Mass feed) => Phase.Bag is { } bag ? (int)Math.Ceiling((feed.Kilograms / bag.Kilograms) - 1e-9) : null;
}
