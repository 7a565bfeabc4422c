using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How much protein and fat a growing bird holds at a live weight: what its feed was turned into.</summary>
/// <remarks>Live weights of 10 g to 12 kg; outside them the methods refuse. Immutable, safe to share.</remarks>
public abstract class BodyComposition
{
    internal const double LeastGrams = 10;
    internal const double MostGrams = 12_000;

    private protected BodyComposition()
    {
    }

    /// <summary>What it is and where it comes from.</summary>
    public abstract ModelInfo Model { get; }

    /// <summary>One composition for both sexes, measured from 56 to 4184 g: protein 154 to 182, fat 53 to 101 g/kg of live weight.</summary>
    public static BodyComposition Caldas2019 { get; } = new PowerComposition();

    /// <summary>Body protein at a live weight.</summary>
    /// <param name="weight">Live weight, 10 g to 12 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is outside these.</exception>
    public Mass ProteinAt(Mass weight) => Mass.FromGrams(At(weight).Protein);

    /// <summary>Body fat at a live weight.</summary>
    /// <param name="weight">Live weight, 10 g to 12 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is outside these.</exception>
    public Mass FatAt(Mass weight) => Mass.FromGrams(At(weight).Fat);

    /// <summary>By sex: protein grows toward its mature mass, water, ash and fat follow it by power laws from hatch to maturity (Cobb 700).</summary>
    /// <param name="sex">Male or female: a flock of both is the mean of two birds, not a bird.</param>
    /// <param name="hatchWeight">Live weight at hatch, 20 to 80 g; 42 g is usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sex is mixed, or the weight out of range.</exception>
    public static BodyComposition Cobb700(Sex sex, Mass hatchWeight)
    {
        double grams = Require.Between(hatchWeight.Grams, 20, 80, "g", nameof(hatchWeight));
        return sex switch
        {
            Sex.Male => new SplitComposition(SplitComposition.MaleInfo, grams, SplitComposition.Males),
            Sex.Female => new SplitComposition(SplitComposition.FemaleInfo, grams, SplitComposition.Females),
            _ => throw new ArgumentOutOfRangeException(nameof(sex), "Mixed is not allowed; expected Male or Female."),
        };
    }

    /// <summary>Protein and fat in g at a live weight in g.</summary>
    internal abstract (double Protein, double Fat) At(double grams);

    private (double Protein, double Fat) At(Mass weight) => At(Require.Between(weight.Grams, LeastGrams, MostGrams, "g", nameof(weight)));
}
