using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What birds take from pasture: dry matter, and the much smaller share of their energy that it gives. The two are different numbers.</summary>
public sealed class PastureIntake
{
    private readonly double dryGramsPerDay;

    private PastureIntake(double dryGramsPerDay, Probability energyShare) => (this.dryGramsPerDay, EnergyShare) = (dryGramsPerDay, energyShare);

    /// <summary>Where the figures come from, and how far they part.</summary>
    public static ModelInfo Model { get; } = new(
        "pasture-intake",
        "Intake from pasture",
        "feed = ME (1 - e) / (diet (1 - w)); share of dry matter = g / (g + d feed)",
        [
            new ModelSymbol("ME", "energy eaten", "kcal/d"),
            new ModelSymbol("e", "share of energy from pasture", "-"),
            new ModelSymbol("diet", "metabolizable energy of the feed", "kcal/kg"),
            new ModelSymbol("w", "share of the feed that is spilt", "-"),
            new ModelSymbol("g", "dry matter of grass", "g/d"),
            new ModelSymbol("d", "dry matter of feed, 0.88 is usual", "-"),
        ],
        [
            new Citation("RiveraFerre2007", "Rivera-Ferre M.G., Lantinga E.A., Kwakkel R.P. 2007. NJAS 54:279-291", HowKnown.ReadInSource, "abstract: 10.7 g dry matter a bird a day, up to 3 % of energy and 7 % of protein, organic, 25 to 80 d"),
            new Citation("Pns2003", "Proc. Nutr. Soc. 2003, doi 10.1079/pns2002198", HowKnown.ReadInSource, "0 to 5 % of intake at most"),
            new Citation("AN237", "University of Florida Extension AN237", HowKnown.Secondary, "5 to 10 % possible; assume zero in formulation"),
            new Citation("Mattocks2002", "Mattocks J. 2002. Pasture-raised poultry nutrition", HowKnown.Secondary, "5 to 20 %, a producer's estimate"),
            new Citation("Ponte2008", "Ponte P.I.P. et al. 2008", HowKnown.ReadInSource, "abstract: on clover birds ate more concentrate, no better efficiency"),
        ],
        "Sources part from 0 to 20 % of intake, and in one trial pasture raised the use of feed. 10.7 g of dry matter beside 130 g of feed is 8.6 % of dry matter and about 3 % of energy. Nothing is saved unless you say so: budget with none, take 3 % at most. What ranging costs is as unsure: 10 to 15 % more maintenance by custom, 5 % less in hens that ranged much, no difference between 176 birds on pasture and in pens; it is a choice of its own, 0 unless said.",
        HowKnown.ReadInSource,
        [new ValidityRange("age", 25, 80, "d")]);

    /// <summary>Nothing: what is safe to plan with.</summary>
    public static PastureIntake None { get; } = new(0, default);

    /// <summary>10.7 g of dry matter a bird a day and 3 % of its energy, the most that was measured.</summary>
    public static PastureIntake RiveraFerre2007 { get; } = new(10.7, Probability.FromPercent(3));

    /// <summary>Dry matter a bird takes a day.</summary>
    public MassFlow DryMatter => MassFlow.FromGramsPerDay(dryGramsPerDay);

    /// <summary>The share of its energy that a bird takes from pasture.</summary>
    public Probability EnergyShare { get; }

    /// <summary>What is known of a farm's own pasture.</summary>
    /// <param name="dryMatter">A bird a day, 0 to 50 g/d: larger figures in print are of geese or of pens.</param>
    /// <param name="energyShare">Of its energy, 0 to 20 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static PastureIntake Of(MassFlow dryMatter, Probability energyShare)
    {
        Require.Between(energyShare.Percent, 0, 20, "%", nameof(energyShare));
        return new(Require.Between(dryMatter.GramsPerDay, 0, 50, "g/d", nameof(dryMatter)), energyShare);
    }

    /// <summary>The share of dry matter that comes from pasture.</summary>
    /// <param name="feed">Feed eaten a bird a day, as fed, above 0.</param>
    /// <param name="dryMatterOfFeed">0.88 is usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">The feed is not above 0.</exception>
    public Probability DryMatterShare(MassFlow feed, Probability dryMatterOfFeed) => Probability.FromFraction(
        dryGramsPerDay / (dryGramsPerDay + (dryMatterOfFeed.Fraction * Require.Positive(feed.GramsPerDay, "g/d", nameof(feed)))));

    /// <summary>Dry matter that a bird takes over a time.</summary>
    /// <param name="time">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Mass DryMatterOver(Duration time) => Mass.FromGrams(dryGramsPerDay * Require.NotNegative(time.Days, "d", nameof(time)));

    /// <summary>As in <c>10.7 g dry matter a day, 3 % of energy</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{dryGramsPerDay:0.#} g dry matter a day, {EnergyShare} of energy");
}
