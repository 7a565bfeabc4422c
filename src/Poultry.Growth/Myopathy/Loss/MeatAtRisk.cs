using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>What is cut away of an affected bird that is deboned: its affected tenders, and fillet about them.</summary>
public sealed class MeatAtRisk
{
    private const double TenderShare = 0.02;
    private const double UsualSides = 1.5;

    private MeatAtRisk(double tenderKilograms, double filletKilograms) =>
        PerAffectedBird = Mass.FromKilograms(UsualSides * (tenderKilograms + filletKilograms));

    /// <summary>Equation, source and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-loss",
        "Meat lost of an affected bird",
        "kg = LW 0.02 n_s (1 + f)",
        [
            new("kg", "tender and fillet cut away of a bird that is deboned", "kg"),
            new("LW", "live weight; LW 0.02 is one tender, a pair 4 % (3.8 to 4.2)", "kg"),
            new("n_s", "affected sides of an affected bird, 1.5 (1 to 2)", "-"),
            new("f", "fillet trimmed, in tenders: 1 (0 to 1)", "-"),
        ],
        [LesionSources.Yalcin2018, LesionSources.OwnArithmetic, LesionSources.OwnAssumption],
        "Not measured as a whole: the share of a tender is arithmetic from yields, the trim an account and an assumption. Published totals of whole countries differ threefold, so no money figure is carried.",
        HowKnown.Assumption);

    /// <summary>Of an affected bird, with 1.5 of its sides affected.</summary>
    public Mass PerAffectedBird { get; }

    /// <summary>By live weight: a tender is 2 % of it.</summary>
    /// <param name="liveWeight">Above 0.</param>
    /// <param name="filletTrimShare">Fillet trimmed on an affected side, as a share of the tender, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static MeatAtRisk OfLiveWeight(Mass liveWeight, double filletTrimShare = 1)
    {
        double tender = TenderShare * Require.Positive(liveWeight.Kilograms, "kg", nameof(liveWeight));
        return new(tender, tender * Require.Between(filletTrimShare, 0, 1, ""));
    }

    /// <summary>By the tenders of the farm's own birds, as its cuts say.</summary>
    /// <param name="tendersOfOneBird">Both tenders of a bird, above 0.</param>
    /// <param name="filletTrimmedOnOneSide">Fillet cut away on an affected side, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static MeatAtRisk OfCuts(Mass tendersOfOneBird, Mass filletTrimmedOnOneSide) => new(
        Require.Positive(tendersOfOneBird.Kilograms, "kg", nameof(tendersOfOneBird)) / 2, Require.NotNegative(filletTrimmedOnOneSide.Kilograms, "kg", nameof(filletTrimmedOnOneSide)));

    /// <summary>As in <c>150 g (5.29 oz) of an affected bird</c>, in every culture.</summary>
    public override string ToString() => WeightText.Of(PerAffectedBird.Kilograms) + " of an affected bird";
}
