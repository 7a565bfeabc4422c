using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>How lesions fall on the two sides of a bird: what turns a share of muscles into a share of birds and back.</summary>
/// <remarks>Sources contradict one another on how often both sides are hit, and none gives a percentage: the default is an assumption.</remarks>
public sealed class LesionSides
{
    /// <summary>Below it p_bird is k p_musc to nine digits, and 1 less that has lost them.</summary>
    private const double Few = 1e-9;

    private readonly double exponent;

    private LesionSides(double exponent) => this.exponent = exponent;

    /// <summary>Equation, source and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-sides",
        "Lesions of muscles and of birds",
        "p_bird = 1 - (1 - p_musc)^k; n_s = 2 p_musc / p_bird; with bilateral share B of affected birds, small p: p_bird = p_musc 2/(1 + B)",
        [
            new("p_bird", "share of birds with a lesion on one side or both", "-"),
            new("p_musc", "share of muscles with a lesion", "-"),
            new("k", "1: always both sides at once, 2: the sides are independent; 4/3 by default", "-"),
            new("n_s", "affected sides of an affected bird", "-"),
            new("B", "share of affected birds that are affected on both sides", "-"),
        ],
        [LesionSources.Lien2012, LesionSources.Kijowski2012, LesionSources.OwnAssumption],
        "Cannot be said: no source gives the share of birds with both sides affected. Between the extremes of k the share of birds is 25 % lower or 50 % higher than at 4/3.",
        HowKnown.Assumption,
        [new ValidityRange("k", 1, 2, "(pure number)")]);

    /// <summary>k = 4/3: at low rates half of the affected birds are affected on both sides. An assumption.</summary>
    public static LesionSides Usual { get; } = new(4.0 / 3);

    /// <summary>k = 1: both sides always together.</summary>
    public static LesionSides AlwaysBoth { get; } = new(1);

    /// <summary>k = 2: the sides are independent.</summary>
    public static LesionSides Independent { get; } = new(2);

    /// <summary>Sides by the share of affected birds that are affected on both sides, at low rates: k = 2 / (1 + B).</summary>
    /// <param name="bilateral">B, 0 to 1.</param>
    public static LesionSides OfBilateralShare(Probability bilateral) => new(2 / (1 + bilateral.Fraction));

    /// <summary>The share of birds that goes with a share of muscles.</summary>
    /// <param name="muscles">0 to 100 % of muscles.</param>
    public BirdPrevalence Birds(MusclePrevalence muscles) => BirdPrevalence.Of(Probability.FromFraction(OfBirds(muscles.Share.Fraction, exponent)));

    /// <summary>The share of muscles that goes with a share of birds.</summary>
    /// <param name="birds">0 to 100 % of birds.</param>
    public MusclePrevalence Muscles(BirdPrevalence birds) =>
        MusclePrevalence.Of(Probability.FromFraction(1 - Math.Pow(1 - birds.Share.Fraction, 1 / exponent)));

    /// <summary>How many of its two tenders an affected bird has affected on average: 1 to 2, at no lesions the limit 2/k.</summary>
    /// <param name="muscles">0 to 100 % of muscles.</param>
    public double SidesPerBird(MusclePrevalence muscles)
    {
        double share = muscles.Share.Fraction;
        return share < Few ? 2 / exponent : 2 * share / OfBirds(share, exponent);
    }

    /// <summary>As in <c>k 1.33, between 1 (both sides together) and 2 (each side by itself)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"k {exponent:0.##}, between 1 (both sides together) and 2 (each side by itself)");

    /// <summary>p_bird = 1 - (1 - p_musc)^k</summary>
    internal static double OfBirds(double muscles, double k) => 1 - Math.Pow(1 - muscles, k);
}
