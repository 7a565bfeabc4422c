using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>
/// Nitrogen that French law counts for spreading, of one bird produced: what is left after losses in house and store. It is no load on pasture, and nothing here turns it into one.
/// </summary>
public sealed class SpreadableNitrogen
{
    private readonly double gramsPerBird;

    private SpreadableNitrogen(string production, double gramsPerBird) => (Production, this.gramsPerBird) = (production, gramsPerBird);

    /// <summary>Source.</summary>
    public static ModelInfo Model { get; } = new(
        "spreadable-nitrogen-france",
        "Spreadable nitrogen of a bird produced, France",
        "birds/ha/yr = floor(limit/N)",
        [new("limit", "nitrogen ceiling", "kg/ha/yr"), new("N", "spreadable nitrogen of a bird produced", "kg")],
        [new Citation("Arrete2011", "France, arrete du 19 decembre 2011", HowKnown.ReadInSource, "Annex II-C; later versions may differ")],
        "A legal figure, not a measurement. Nitrogen lost on the run is not deducted. " + LimitVerdict.NotLegalAdvice,
        HowKnown.ReadInSource);

    /// <summary>Every kind of production in the text.</summary>
    public static IReadOnlyList<SpreadableNitrogen> All { get; } = Array.AsReadOnly<SpreadableNitrogen>(
    [
        new("coquelet", 13), new("standard, light or export", 22), new("standard", 30), new("standard, heavy", 41),
        new("organic, mobile house", 55), new("label, mobile house", 56), new("label, fixed house", 57), new("organic, fixed house", 62),
    ]);

    /// <summary>The kind of production.</summary>
    public string Production { get; }

    /// <summary>Of one bird produced, after losses in house and store.</summary>
    public Mass PerBird => Mass.FromGrams(gramsPerBird);

    /// <summary>The most birds a year whose manure may be spread on a hectare, rounded down. The rule on outdoor area is another test; either may bind.</summary>
    /// <param name="yearlyLimit">As in 170 kg/ha, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public int BirdsPerHectareAndYear(AreaDensity yearlyLimit) => NitrogenBalance.BirdsPerHectareAndYear(yearlyLimit, PerBird);

    /// <summary>As in <c>standard: 30 g (1.06 oz) of nitrogen a bird</c>, in every culture.</summary>
    public override string ToString() => Production + ": " + WeightText.Of(gramsPerBird / 1000) + " of nitrogen a bird";
}
