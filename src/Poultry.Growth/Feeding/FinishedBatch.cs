using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a farm wrote down of a batch that is sold.</summary>
public sealed class FinishedBatch
{
    /// <summary>The record of a batch.</summary>
    /// <param name="placed">Chicks placed, 1 or more.</param>
    /// <param name="sold">Birds sold, 1 to <paramref name="placed"/>.</param>
    /// <param name="ageAtSale">Age at sale (mean of the birds where they went on several days), above 0.</param>
    /// <param name="feed">Feed eaten: delivered less what was left in bins and feeders, above 0.</param>
    /// <param name="liveWeight">Live weight of all birds sold together, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public FinishedBatch(int placed, int sold, Age ageAtSale, Mass feed, Mass liveWeight)
    {
        Placed = Require.AtLeast(placed, 1);
        Sold = (int)Require.Between(sold, 1, placed, "birds");
        Require.Positive(ageAtSale.Days, "d", nameof(ageAtSale));
        AgeAtSale = ageAtSale;
        Feed = Mass.FromKilograms(Require.Positive(feed.Kilograms, "kg", nameof(feed)));
        LiveWeight = Mass.FromKilograms(Require.Positive(liveWeight.Kilograms, "kg", nameof(liveWeight)));
    }

    /// <summary>Chicks placed.</summary>
    public int Placed { get; }

    /// <summary>Birds sold.</summary>
    public int Sold { get; }

    /// <summary>Age at sale.</summary>
    public Age AgeAtSale { get; }

    /// <summary>Feed eaten.</summary>
    public Mass Feed { get; }

    /// <summary>Live weight of all birds sold together.</summary>
    public Mass LiveWeight { get; }

    /// <summary>Mean weight of one chick when placed; null where it was not weighed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or above the mean live weight sold.</exception>
    public Mass? ChickWeight
    {
        get;
        init => field = value is { } chick
            ? Mass.FromKilograms(Require.Between(Require.Positive(chick.Kilograms, "kg", nameof(ChickWeight)), 0, LiveWeight.Kilograms / Sold, "kg", nameof(ChickWeight)))
            : null;
    }

    /// <summary>Weight of all birds that died or were culled, together; null where they were not weighed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Mass? DeadWeight
    {
        get;
        init => field = value is { } dead ? Mass.FromKilograms(Require.NotNegative(dead.Kilograms, "kg", nameof(DeadWeight))) : null;
    }

    /// <summary>Metabolizable energy of the feed, the mean by weight of all feeds; null where it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1000 to 5000 kcal/kg.</exception>
    public SpecificEnergy? DietEnergy
    {
        get;
        init => field = value is { } energy ? Calories.PerKilogram(FeedPhase.RequireDiet(energy, nameof(DietEnergy))) : null;
    }

    /// <summary>As in <c>480 of 500 birds sold at 42 d: 1200 kg (2646 lb) live, 1920 kg (4233 lb) of feed</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Sold} of {Placed} birds sold at {AgeAtSale}: {LiveWeight.Kilograms:0} kg ({LiveWeight.Pounds:0} lb) live, {Feed.Kilograms:0} kg ({Feed.Pounds:0} lb) of feed");
}
