using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>
/// The water a carcass takes up in the chiller and drips afterwards. Both are parts of one and the same weight, that before chilling. No figure
/// comes with the library, since none was to be had: it is asked from the user or the plant where a hot weight must become a chilled or packed one.
/// </summary>
public sealed class ChillWater
{
    private ChillWater(double uptake, double drip) => (Uptake, Drip) = (uptake, drip);

    /// <summary>Equation and source.</summary>
    public static ModelInfo Model { get; } = new(
        "chill-water",
        "Water taken up in chilling",
        "W = W0 (1 + u - v); retained: u/(1 + u) of the weight after, u of the weight before",
        [
            new ModelSymbol("W", "weight after chilling and holding", "kg"),
            new ModelSymbol("W0", "weight before chilling", "kg"),
            new ModelSymbol("u", "uptake as a part of W0; negative in an air chiller that dries", "-"),
            new ModelSymbol("v", "drip as a part of W0", "-"),
        ],
        [new Citation("ChillArithmetic", "Definition; own arithmetic: 1700 g before and 1768 g after are 4.00 % of the one and 3.85 % of the other", HowKnown.Derived)],
        "Exact. Which of the two percentages a label needs is the inspection agency's to say.",
        HowKnown.Derived);

    /// <summary>Water in the chilled carcass that was not there before, as a percentage of the chilled weight; negative where it dried.</summary>
    public double PercentRetainedOfChilled => 100 * Uptake / (1 + Uptake);

    /// <summary>The same water as a percentage of the weight before chilling.</summary>
    public double PercentRetainedOfHot => 100 * Uptake;

    internal double Uptake { get; }

    internal double Drip { get; }

    /// <summary>What is left of the uptake when the packs are weighed.</summary>
    internal double NetUptake => Uptake - Drip;

    /// <summary>Uptake and drip as percentages of the weight before chilling.</summary>
    /// <param name="uptakePercent">-10 to 20 %; negative in an air chiller that dries.</param>
    /// <param name="dripPercent">Lost again until the packs are weighed, 0 to 20 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is out of its range.</exception>
    public static ChillWater Of(double uptakePercent, double dripPercent = 0) =>
        new(Require.Between(uptakePercent, -10, 20, "%") / 100, Require.Between(dripPercent, 0, 20, "%") / 100);

    /// <summary>Uptake from two weights of the same carcasses.</summary>
    /// <param name="before">Hot, above 0.</param>
    /// <param name="after">Out of the chiller, above 0: 10 % lighter to 20 % heavier.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight makes no sense, or the uptake lies outside -10 to 20 %.</exception>
    public static ChillWater Weighed(Mass before, Mass after) =>
        Of(100 * ((Require.Positive(after.Kilograms, "kg", nameof(after)) / Require.Positive(before.Kilograms, "kg", nameof(before))) - 1));

    /// <summary>The same carcasses after chilling: weight x (1 + u).</summary>
    /// <param name="hot">Before chilling: no other carcass takes up chill water.</param>
    public CarcassWeight<BasisOf<Chilled, TNeck, TGiblets, TFeet>> Chilled<TNeck, TGiblets, TFeet>(CarcassWeight<BasisOf<Hot, TNeck, TGiblets, TFeet>> hot)
        where TNeck : IInclusion
        where TGiblets : IInclusion
        where TFeet : IInclusion => new(AfterChilling(hot.Weight.Kilograms, Uptake));

    /// <summary>The same carcasses in their packs: weight x (1 + u - v), uptake and drip both of the weight before chilling.</summary>
    /// <inheritdoc cref="Chilled"/>
    public CarcassWeight<BasisOf<Packed, TNeck, TGiblets, TFeet>> Packed<TNeck, TGiblets, TFeet>(CarcassWeight<BasisOf<Hot, TNeck, TGiblets, TFeet>> hot)
        where TNeck : IInclusion
        where TGiblets : IInclusion
        where TFeet : IInclusion => new(AfterChilling(hot.Weight.Kilograms, NetUptake));

    /// <summary>As in <c>4 % taken up, 1 % dripped, of the weight before chilling</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * Uptake:0.##} % taken up, {100 * Drip:0.##} % dripped, of the weight before chilling");

    /// <summary>W = W0 (1 + u).</summary>
    internal static double AfterChilling(double hotKilograms, double uptake) => hotKilograms * (1 + uptake);
}
