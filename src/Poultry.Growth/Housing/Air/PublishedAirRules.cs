using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Two published rules on air that hold for their own houses or chicks only: to compare with, not to set fans by.</summary>
public static class PublishedAirRules
{
    /// <summary>Ventilation of certain litter houses read off their carbon dioxide.</summary>
    public static ModelInfo LitterHouseModel { get; } = new(
        "litter-house-ventilation",
        "Ventilation of certain litter houses by their carbon dioxide",
        "V = 4456 d^-0.786",
        [new("V", "ventilation of the whole house", "m3/s"), new("d", "content inside less outside", "ppm")],
        [new Citation("XinLitterHouses", "Xin et al., ventilation of litter houses by carbon dioxide balance", HowKnown.ReadInSource, "abstract: field fit; birds alone corrected by 1.077 for litter")],
        "A fit to those houses and their flocks; it holds for no other.",
        HowKnown.ReadInSource);

    /// <summary>Air of a chick for its oxygen.</summary>
    public static ModelInfo ChickModel { get; } = new(
        "chick-air",
        "Air of a chick for its oxygen",
        "V = 0.00083 n",
        [new("V", "outside air", "ft3/min"), new("n", "chicks", "birds")],
        [new Citation("GeorgiaChickAir", "University of Georgia Extension, on air for chicks", HowKnown.Secondary, "0.00083 ft3/min a chick")],
        "For oxygen only: moisture sets the rate, not oxygen.",
        HowKnown.Secondary);

    /// <summary>Ventilation of those houses, the whole house.</summary>
    /// <param name="rise">Content inside less outside, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public static VolumeFlow LitterHouse(VolumeConcentration rise) =>
        VolumeFlow.FromCubicMetersPerSecond(4456 * Math.Pow(Require.Positive(rise.PartsPerMillion, "ppm", nameof(rise)), -0.786));

    /// <summary>Air of chicks for their oxygen.</summary>
    /// <param name="chicks">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static VolumeFlow Chicks(int chicks) => VolumeFlow.FromCubicFeetPerMinute(0.00083 * Require.AtLeast(chicks, 0));
}
