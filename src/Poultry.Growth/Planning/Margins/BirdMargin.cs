using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The textbook margin of one bird by age: one price for all meat, every bird alive and sold, and no doubt. What published optimum ages rest on.</summary>
/// <remarks>
/// A batch is compared by <see cref="HarvestComparison"/>, which knows of losses, packs, demand and doubt; for a batch without any of these both agree (a test). This shows why an
/// optimum age from elsewhere is another.
/// </remarks>
public sealed class BirdMargin
{
    /// <summary>Equations and source.</summary>
    public static ModelInfo Model { get; } = new(
        "bird-margin",
        "Margin of a bird by age",
        "M = p d W - a - s - c F - k t; one day more pays while p d dW > c dF + k dt; in a shelter that is always full M / (t + i) counts; p* = C / m",
        [
            new ModelSymbol("M", "margin of a bird", "money"),
            new ModelSymbol("p", "price of the carcass by weight", "money/kg"),
            new ModelSymbol("d", "carcass over live weight", "-"),
            new ModelSymbol("W", "live weight", "kg"),
            new ModelSymbol("a", "a chick", "money"),
            new ModelSymbol("s", "slaughter of a bird", "money"),
            new ModelSymbol("c", "price of feed", "money/kg"),
            new ModelSymbol("F", "feed eaten so far", "kg"),
            new ModelSymbol("k", "what a day costs", "money/d"),
            new ModelSymbol("t", "age", "d"),
            new ModelSymbol("i", "days that the place stands empty", "d"),
            new ModelSymbol("p*", "break-even price", "money/kg"),
            new ModelSymbol("C", "cost of a bird placed", "money"),
            new ModelSymbol("m", "weight sold of it", "kg"),
        ],
        [new Citation("ERS246", "USDA Economic Research Service 1965, ERS-246", HowKnown.ReadInSource, "abstract: margin by age; keep a bird while another day brings more than it costs")],
        "Arithmetic; as good as the weights, feed and prices put in.",
        HowKnown.Derived);

    /// <summary>Money for the carcass by weight.</summary>
    public required UnitPrice Price { get; init; }

    /// <summary>Carcass over live weight.</summary>
    public required Probability Dressing { get; init; }

    /// <summary>Money for feed by weight.</summary>
    public required UnitPrice Feed { get; init; }

    /// <summary>A chick.</summary>
    public Money Chick { get; init; }

    /// <summary>Slaughter of a bird.</summary>
    public Money Slaughter { get; init; }

    /// <summary>What a bird costs for every day it is kept, feed apart.</summary>
    public Money Day { get; init; }

    /// <summary>M: what is left of a bird killed at an age.</summary>
    /// <param name="age">Its age.</param>
    /// <param name="live">Its live weight, 0 or more.</param>
    /// <param name="feed">What it ate so far, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is negative or not finite.</exception>
    public Money At(Age age, Mass live, Mass feed) => Money.Of(Margin(
        Price.AmountPerKilogram, Dressing.Fraction, Require.NotNegative(live.Kilograms, "kg", nameof(live)), Chick.Amount, Slaughter.Amount,
        Feed.AmountPerKilogram, Require.NotNegative(feed.Kilograms, "kg", nameof(feed)), Day.Amount, age.Days));

    /// <summary>M / (t + i): what a place brings a day where the next chicks wait for it.</summary>
    /// <param name="age">The bird's age.</param>
    /// <param name="live">Its live weight, 0 or more.</param>
    /// <param name="feed">What it ate so far, 0 or more.</param>
    /// <param name="idle">How long the place stands empty between batches, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight or time is negative, or age and time are 0 together.</exception>
    public Money APlaceDay(Age age, Mass live, Mass feed, Duration idle) =>
        Money.Of(At(age, live, feed).Amount / Require.Positive(age.Days + Require.NotNegative(idle.Days, "d", nameof(idle)), "d", nameof(age)));

    /// <summary>p*: what the meat must bring, from what the birds placed cost and what is sold of them.</summary>
    /// <param name="cost">Of all birds placed, or of one; 0 or more.</param>
    /// <param name="sold">Weight sold of as many, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or the cost is negative.</exception>
    public static UnitPrice BreakEven(Money cost, Mass sold) =>
        UnitPrice.FromAmountPerKilogram(cost.Amount / Require.Positive(sold.Kilograms, "kg", nameof(sold)));

    /// <summary>As in <c>meat 8.00/kg (3.63/lb), dressing 72 %, feed 0.60/kg (0.27/lb)</c>, in every culture.</summary>
    public override string ToString() => "meat " + Price + ", dressing " + Dressing + ", feed " + Feed;

    /// <summary>M = p d W - a - s - c F - k t.</summary>
    private static double Margin(double p, double d, double w, double a, double s, double c, double f, double k, double t) => (p * d * w) - a - s - (c * f) - (k * t);
}
