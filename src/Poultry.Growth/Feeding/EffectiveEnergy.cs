using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Emmans's effective energy: what a bird requires once heat increments are moved to the feed's side. Arithmetic of the requirement only.</summary>
/// <remarks>
/// It is no forecast of feed: the effective energy of a feed for birds is known to us from memory only, and is not here. Energy of feed in kcal of metabolizable
/// energy must not be divided into it.
/// </remarks>
public static class EffectiveEnergy
{
    /// <summary>Where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "effective-energy",
        "Effective energy requirement",
        "EE = MH + 50 PR + 56 LR; MH = 0.96 FHP",
        [
            new ModelSymbol("EE", "effective energy required", "kJ/d"),
            new ModelSymbol("MH", "maintenance heat", "kJ/d"),
            new ModelSymbol("FHP", "fasting heat", "kJ/d"),
            new ModelSymbol("PR", "protein retained", "g/d"),
            new ModelSymbol("LR", "fat retained, not from fat in the feed", "g/d"),
        ],
        [FeedingSources.Emmans1994],
        "Costs agree with those of Sakomura 2005 in kJ: protein 50 and 52.7, fat 56 (16.4 to deposit, 39.6 of combustion) and 56.6. With fasting heat of one study and a feed side from memory it was 13 % off printed tables at 9 weeks; that is why no feed is worked out from it here.",
        HowKnown.ReadInSource);

    /// <summary>Effective energy a day.</summary>
    /// <param name="fastingHeat">Heat of the fasting bird, 0 or more.</param>
    /// <param name="protein">Protein retained a day, 0 or more.</param>
    /// <param name="fat">Fat retained a day, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is below 0 or not finite.</exception>
    public static Power Required(Power fastingHeat, MassFlow protein, MassFlow fat)
    {
        double heat = MaintenanceKilojoules(Require.NotNegative(Kilojoules(fastingHeat), "kJ/d", nameof(fastingHeat)));
        double retained = (50 * Require.NotNegative(protein.GramsPerDay, "g/d", nameof(protein))) + (56 * Require.NotNegative(fat.GramsPerDay, "g/d", nameof(fat)));
        return Power.FromWatts((heat + retained) / KilojoulesPerDayPerWatt);
    }

    /// <summary>MH = 0.96 FHP.</summary>
    internal static double MaintenanceKilojoules(double fastingKilojoules) => 0.96 * fastingKilojoules;

    private const double KilojoulesPerDayPerWatt = 86.4;

    private static double Kilojoules(Power power) => (double)power.Watts * KilojoulesPerDayPerWatt;
}
