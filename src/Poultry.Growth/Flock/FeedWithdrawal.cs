using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>What live birds lose between the last feed and killing: mostly an emptying gut. The one law of it in this library.</summary>
/// <remarks>
/// Hours off feed run from taking the feed away to killing, road and waiting included. The law is a straight line, after Wabeck; most of the early
/// loss is gut emptying, so it is doubtful in the first hours.
/// </remarks>
public sealed class FeedWithdrawal
{
    private const double MostHours = 24;
    private const double FirstHours = 6;
    private const double MostHoursAsked = 48;

    private FeedWithdrawal(LikelyRange<double> percentPerHour, LikelyRange<double> roadPercentPerHour) =>
        (PercentPerHour, RoadPercentPerHour) = (percentPerHour, roadPercentPerHour);

    /// <summary>Equation and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "feed-withdrawal",
        "Weight lost off feed",
        "W = W0 (1 - s h - r h_r)",
        [
            new ModelSymbol("W", "live weight at killing", "kg"),
            new ModelSymbol("W0", "live weight full-fed", "kg"),
            new ModelSymbol("s", "loss off feed: 0.30, from 0.2 to 0.4", "%/h"),
            new ModelSymbol("h", "time from the last feed to killing", "h"),
            new ModelSymbol("r", "more on the road: 0.05 to 0.17, their middle 0.11", "%/h"),
            new ModelSymbol("h_r", "the part of it on the road", "h"),
        ],
        [
            new Citation("Wabeck1972", "Wabeck C.J. 1972. Poult. Sci. 51:1119-1121", HowKnown.ReadInSource, "abstract: about linear, 24 h about twice 12 h; gut content least at 8 to 10 h"),
            new Citation("ShrinkRate", "0.30 % of live weight per hour off feed, 0.05 to 0.17 %/h more in transport; the paper behind it is not identified", HowKnown.Secondary),
            new Citation("ShrinkPractice", "Common practice of the trade: 0.2 to 0.4 %/h; 8 to 12 h off feed", HowKnown.CommonPractice),
            new Citation("BuhrNorthcutt2004", "Buhr R.J., Northcutt J.K. 2004, USDA Agricultural Research Service", HowKnown.ReadInSource, "abstract: eviscerated against full-fed +0.8 % at 6 h, +0.3 at 12 h, -1.0 at 18 h, -0.8 at 24 h"),
            new Citation("Trampel2005", "Trampel D.W. et al. 2005", HowKnown.Secondary, "about 12 h: 6 in the house with water and 6 on the truck"),
        ],
        "Weak: the rates are the trade's, and the paper behind them is not identified. Other figures: 1.15 % an hour in 2 to 6 h between different birds, 4.3 % in all at worst on short roads. Most of the loss of the first 6 h is gut emptying, so the straight line is doubtful there.",
        HowKnown.CommonPractice,
        [new ValidityRange("time off feed", FirstHours, MostHours, "h")]);

    /// <summary>The trade's rate: 0.30 % an hour off feed, from 0.2 to 0.4, and 0.05 to 0.17 % an hour more on the road.</summary>
    public static FeedWithdrawal Usual { get; } = new(LikelyRange<double>.Of(0.2, 0.30, 0.4), LikelyRange<double>.Of(0.05, 0.11, 0.17));

    /// <summary>Loss off feed in percent of the full-fed weight an hour.</summary>
    public LikelyRange<double> PercentPerHour { get; }

    /// <summary>What the road adds to it, likewise.</summary>
    public LikelyRange<double> RoadPercentPerHour { get; }

    /// <summary>The law with a rate of one's own.</summary>
    /// <param name="percentPerHour">0 to 4 % an hour; the trade's is 0.2 to 0.4.</param>
    /// <param name="roadPercentPerHour">What the road adds; the trade's 0.05 to 0.17 where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rate is out of its range.</exception>
    public static FeedWithdrawal Of(LikelyRange<double> percentPerHour, LikelyRange<double>? roadPercentPerHour = null)
    {
        ArgumentNullException.ThrowIfNull(percentPerHour);
        LikelyRange<double> road = roadPercentPerHour ?? Usual.RoadPercentPerHour;
        Require.Between(percentPerHour.Low, 0, percentPerHour.High, "%/h", nameof(percentPerHour));
        Require.Between(percentPerHour.High, 0, 4, "%/h", nameof(percentPerHour));
        Require.Between(road.Low, 0, road.High, "%/h", nameof(roadPercentPerHour));
        Require.Between(road.High, 0, 4, "%/h", nameof(roadPercentPerHour));
        return new(percentPerHour, road);
    }

    /// <summary>The share of the full-fed weight that is gone.</summary>
    /// <param name="offFeed">From the last feed to killing, 0 to 48 h; measured up to 24 h.</param>
    /// <param name="onRoad">The part of it on the road, 0 h to <paramref name="offFeed"/>; none where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is out of its range, or nothing would be left.</exception>
    public LikelyRange<Probability> ShareLost(Duration offFeed, Duration? onRoad = null)
    {
        double hours = Require.Between(offFeed.Hours, 0, MostHoursAsked, "h", nameof(offFeed));
        double roadHours = Require.Between(onRoad?.Hours ?? 0, 0, hours, "h", nameof(onRoad));
        Probability Lost(double rate, double roadRate) => Probability.FromPercent(Loss(rate, hours, roadRate, roadHours));
        return LikelyRange<Probability>.Of(
            Lost(PercentPerHour.Low, RoadPercentPerHour.Low),
            Lost(PercentPerHour.Likely, RoadPercentPerHour.Likely),
            Lost(PercentPerHour.High, RoadPercentPerHour.High));
    }

    /// <summary>What to mind at so many hours off feed; empty within the range that was measured.</summary>
    /// <param name="offFeed">From the last feed to killing, 0 to 48 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public static IReadOnlyList<Caution> CautionsAt(Duration offFeed) => Require.Between(offFeed.Hours, 0, MostHoursAsked, "h", nameof(offFeed)) switch
    {
        0 => [],
        < FirstHours => [new("withdrawal-first-hours", "In the first 6 h off feed the gut empties faster than the straight line says: the loss may be larger.")],
        > MostHours => [new("withdrawal-too-long", "Loss off feed was measured up to 24 h; beyond that it is a guess, and so long a fast harms the birds. Ask the vet and the plant.")],
        _ => [],
    };

    /// <summary>As in <c>0.3 (0.2 to 0.4) % an hour off feed, 0.11 (0.05 to 0.17) % more on the road</c>, in every culture.</summary>
    public override string ToString() => PercentPerHour + " % an hour off feed, " + RoadPercentPerHour + " % more on the road";

    /// <summary>100 (1 - W/W0) = s h + r h_r.</summary>
    private static double Loss(double s, double h, double r, double roadHours) => (s * h) + (r * roadHours);
}
