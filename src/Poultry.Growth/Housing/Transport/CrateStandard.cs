using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>How much crate floor a bird gets on the road, by its weight. There is no default: name the standard that binds you, or your plant's or haulier's own.</summary>
/// <remarks>
/// Standards by weight class step the wrong way at their edges: a bird of 2.01 kg gets less floor by the German table than one of 2.00 kg. The law's own area is given by
/// <see cref="AreaPerBird"/>; <see cref="AdvisedAreaPerBird"/> never gives a heavier bird less than a lighter one.
/// </remarks>
public sealed class CrateStandard
{
    private readonly Limit[] limits;
    private readonly CrateClass[] classes;
    private readonly Limit[] heights;
    private readonly (double Coefficient, double Exponent)? power;

    private CrateStandard(string name, HowKnown howKnown, Citation source, Limit[] limits, Limit[] heights, (double, double)? power)
    {
        (Name, HowKnown, Source, this.limits, this.heights, this.power) = (name, howKnown, source, limits, heights, power);
        classes = Array.ConvertAll(limits, CrateClass.Of);
    }

    /// <summary>The proposal of EFSA 2022, as recalled: area = 290 W^(2/3) cm².</summary>
    public static ModelInfo Efsa2022Model { get; } = new(
        "crate-area-efsa-2022",
        "Crate floor of a bird, proposal of 2022",
        "area = 290 W^(2/3)",
        [new("area", "floor of a bird", "cm2"), new("W", "live weight", "kg")],
        [new Citation("EFSA2022", "EFSA Journal 2022;20(9):7441 (advice, not law)", HowKnown.Memory, "recalled, unverified")],
        "A proposal, not law; recalled, unverified.",
        HowKnown.Memory);

    /// <summary>German law of 2009.</summary>
    public static CrateStandard Germany2009 { get; } = Shipped("TierSchTrV Anl. 1 no. 1");

    /// <summary>EU law of 2005, recalled and unverified; of a band the stricter figure.</summary>
    public static CrateStandard Eu2005 { get; } = Shipped("Regulation (EC) 1/2005 Annex I ch. VII E");

    /// <summary>EFSA's proposal of 2022, recalled and unverified.</summary>
    public static CrateStandard Efsa2022 { get; } = new(
        "EFSA 2022 (advice, not law)", HowKnown.Memory, Efsa2022Model.Citations[0], [], [], (290, 2.0 / 3));

    /// <summary>Every shipped standard, the read one first.</summary>
    public static IReadOnlyList<CrateStandard> All { get; } = Array.AsReadOnly([Germany2009, Eu2005, Efsa2022]);

    /// <summary>The text's name.</summary>
    public string Name { get; }

    /// <summary>How the figures are known.</summary>
    public HowKnown HowKnown { get; }

    /// <summary>Whether the figures are recalled and nobody has checked them.</summary>
    public bool IsUnverified => HowKnown == HowKnown.Memory;

    /// <summary>Where the figures come from.</summary>
    public Citation Source { get; }

    /// <summary>A standard from a file of one's own: its limits on crate floor, and on crate height if it has any.</summary>
    /// <param name="limits">Limits of one instrument, with conditions on bird weight only.</param>
    /// <exception cref="ArgumentException">No limit is on crate floor, or they are of several instruments.</exception>
    public static CrateStandard Of(IReadOnlyList<Limit> limits)
    {
        Limit[] floor = [.. Require.Some(limits).Where(limit => limit.Subject == LimitSubject.CrateAreaPerWeight)];
        return floor.Select(limit => limit.Instrument).Distinct().Count() == 1
            ? new(
                floor[0].Instrument + (floor[0].IsUnverified ? ", unverified" : ""),
                floor.Max(limit => limit.HowKnown),
                new Citation(floor[0].Instrument.Name, floor[0].Instrument.ToString(), floor.Max(limit => limit.HowKnown), floor[0].Source),
                floor,
                [.. limits.Where(limit => limit.Subject == LimitSubject.CrateHeight)],
                power: null)
            : throw new ArgumentException("Expected limits on crate floor of one instrument.", nameof(limits));
    }

    /// <summary>Floor of one bird by the text itself.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or heavier than the text goes.</exception>
    public Area AreaPerBird(Mass weight) => Area.FromSquareCentimeters(SquareCentimeters(Require.Positive(weight.Kilograms, "kg", nameof(weight))));

    /// <summary>Floor of one bird by the text, and never less than for any lighter bird.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or heavier than the text goes.</exception>
    public Area AdvisedAreaPerBird(Mass weight) => LargestBetween(Mass.Zero, weight);

    /// <summary>The largest floor that any bird between two weights gets: what a crate of unequal birds needs for each.</summary>
    /// <param name="lightest">0 or more.</param>
    /// <param name="heaviest">Above 0, not below <paramref name="lightest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weights are out of order, or heavier than the text goes.</exception>
    internal Area LargestBetween(Mass lightest, Mass heaviest)
    {
        double heavy = Require.Positive(heaviest.Kilograms, "kg", nameof(heaviest));
        double light = Require.Between(lightest.Kilograms, 0, heavy, "kg", nameof(lightest));
        double largest = SquareCentimeters(heavy);
        foreach (CrateClass weights in classes.Where(weights => weights.ToKilograms > light && weights.FromKilograms < heavy))
        {
            largest = Math.Max(largest, weights.AreaUpTo(heavy));
        }

        // A class that ends exactly at the lightest weight counts where it includes its end.
        return Area.FromSquareCentimeters(light > 0 ? Math.Max(largest, SquareCentimeters(light)) : largest);
    }

    /// <summary>The least inner height of a crate; null where the text says nothing.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public Length? HeightFor(Mass weight)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        return heights.Where(limit => Holds(limit, kilograms)).Max(limit => limit.Value) is { } centimeters ? Length.FromCentimeters(centimeters) : null;
    }

    /// <summary>The name, with the word unverified where it is.</summary>
    public override string ToString() => Name + (IsUnverified && !Name.Contains("unverified", StringComparison.Ordinal) ? ", unverified" : "");

    private static CrateStandard Shipped(string instrument) => Of([.. LimitBook.Shipped.Where(limit => limit.Instrument.Name == instrument)]);

    private static bool Holds(Limit limit, double kilograms) => limit.When.All(clause => clause.Subject == LimitSubject.BirdWeight && clause.Holds(kilograms));

    /// <summary>area = (cm²/kg) W by class, the strictest of those that hold; or a W^b.</summary>
    private double SquareCentimeters(double kilograms)
    {
        if (power is var (coefficient, exponent))
        {
            return coefficient * Math.Pow(kilograms, exponent);
        }

        return limits.Where(limit => Holds(limit, kilograms)).Max(limit => limit.Value) is { } perKilogram
            ? perKilogram * kilograms
            : throw Require.Refusal("weight", WeightText.Of(kilograms) + " is not allowed; " + Name + " says nothing about birds of this weight.");
    }
}
