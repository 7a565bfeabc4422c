using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>One day of a forecast: what a living bird eats in the day that ends at an age, and what the batch has eaten by then.</summary>
public sealed class FeedDay
{
    private readonly FeedParts parts;

    internal FeedDay(Age age, double birds, Mass weight, FeedParts parts, MassFlow water, Estimate<Mass> feed, Estimate<Mass> cumulativeFeed, Estimate<Mass> batchFeed)
    {
        (Age, Birds, Weight, Water, Feed, CumulativeFeed, BatchFeed) = (age, birds, weight, water, feed, cumulativeFeed, batchFeed);
        this.parts = parts;
        Conversion = FeedConversion.Of(batchFeed.Value, weight * birds, FeedConversionBasis.LiveWeight);
    }

    /// <summary>The age at the end of the day.</summary>
    public Age Age { get; }

    /// <summary>Birds alive at the end of the day, as counted or expected.</summary>
    public double Birds { get; }

    /// <summary>Mean live weight at the end of the day.</summary>
    public Mass Weight { get; }

    /// <summary>Feed a living bird uses this day, spilt feed included.</summary>
    public Estimate<Mass> Feed { get; }

    /// <summary>Feed of a bird that lives, from placement on.</summary>
    public Estimate<Mass> CumulativeFeed { get; }

    /// <summary>Feed of the whole batch from placement on, birds that died since included.</summary>
    public Estimate<Mass> BatchFeed { get; }

    /// <summary>Feed of the batch so far over the live weight of the birds alive.</summary>
    public FeedConversion Conversion { get; }

    /// <summary>Water a bird drinks this day, by feed and temperature.</summary>
    public MassFlow Water { get; }

    /// <summary>Heat, or maintenance, of the model.</summary>
    public Power Maintenance => Calories.PerDay(parts.Energy.Maintenance);

    /// <summary>The model's temperature term.</summary>
    public Power TemperatureTerm => Calories.PerDay(parts.Energy.TemperatureTerm);

    /// <summary>Energy of gain.</summary>
    public Power Gain => Calories.PerDay(parts.Energy.Gain);

    /// <summary>Stated extra for ranging.</summary>
    public Power Ranging => Calories.PerDay(parts.Ranging);

    /// <summary>All metabolizable energy a bird eats this day, pasture included: the sum of its parts, before a farm's factor.</summary>
    public Power Energy => Calories.PerDay(parts.Kilocalories);

    /// <summary>As in <c>42 d: 182.4 g (6.43 oz) of feed a bird, the batch so far 1210 kg (2668 lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Age}: {WeightText.Of(Feed.Value.Kilograms)} of feed a bird, the batch so far {BatchFeed.Value.Kilograms:0} kg ({BatchFeed.Value.Pounds:0} lb)");
}
