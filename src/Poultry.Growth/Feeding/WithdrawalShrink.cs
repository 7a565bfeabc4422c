using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What birds lose between the last feed and killing by the usual law of <see cref="FeedWithdrawal"/>, and how long a carcass stands it.</summary>
public static class WithdrawalShrink
{
    /// <summary>The live weight that is left at killing.</summary>
    /// <param name="weight">Live weight when feed is removed, above 0.</param>
    /// <param name="offFeed">From feed removed to killing, with the road and the waiting inside, 0 to 48 h.</param>
    /// <param name="onRoad">Of these, on the road: 0 h to <paramref name="offFeed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range, or more time on the road than off feed.</exception>
    public static LiveShrink Of(Mass weight, Duration offFeed, Duration onRoad)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        return new(kilograms, FeedWithdrawal.Usual.ShareLost(offFeed, onRoad), Cautions(offFeed.Hours));
    }

    private static IReadOnlyList<Caution> Cautions(double hours) =>
    [
        .. ByTime(hours),
        new("plant-rule-first", "The plant's own rule comes first; 8 to 12 h is usual. Water stays until the birds are caught."),
        new("shrink-is-weak", "The rate comes from a paper that we could not identify: weigh a few crates before and after, once, and use your own."),
    ];

    private static IEnumerable<Caution> ByTime(double hours)
    {
        string time = string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} h");
        if (hours < 6)
        {
            yield return new("first-hours", "In the first six hours the gut empties: the loss is not proportional to time, and none of it is meat.");
        }

        if (hours < 8)
        {
            yield return new("gut-not-empty", time + " off feed leave the gut full: it tears in evisceration and soils carcasses. Ask the plant.");
        }

        if (hours is > 12 and <= 18)
        {
            yield return new("carcass-loss-disputed", time + " off feed: to 12 h the carcass lost nothing, at 18 h it had lost 1 %; between them sources disagree.");
        }

        if (hours > 18)
        {
            yield return new("carcass-loses", time + " off feed: the carcass itself loses weight (about 1 % at 18 h), and guts get fragile again.");
        }

        if (hours > 12)
        {
            yield return new("off-feed-welfare", "More than 12 h without feed is hunger, and law limits it in places: the vet, the plant and the local code have the last word.");
        }
    }
}
