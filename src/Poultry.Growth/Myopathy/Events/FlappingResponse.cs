using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The share of muscles with a lesion after so many cycles of wing flapping, in birds of full susceptibility.</summary>
public static class FlappingResponse
{
    /// <summary>Equation, source and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-flapping",
        "Lesions by cycles of wing flapping",
        "D(C) = 1 / (1 + (C50/C)^h), D(0) = 0; p_musc = g S D",
        [
            new("D(C)", "share of muscles with a lesion at full susceptibility", "-"),
            new("C", "cycles: one is a bout of 4 to 6 flaps", "-"),
            new("C50", "26.0 (20.8 to 47): cycles that harm half of the muscles, about 130 flaps", "-"),
            new("h", "2.71 (1.5 to 5.0)", "-"),
            new("p_musc", "share of muscles with a lesion", "-"),
            new("g", "1 for meat birds, 0 for layer types", "-"),
            new("S", "susceptibility by age and sex, see lesion-susceptibility", "-"),
        ],
        [LesionSources.Lien2012, LesionSources.Siller1979, LesionSources.Wight1979, LesionSources.OwnArithmetic],
        "Two doses with lesions (7 % at 10 cycles, 33 % at 20) fix the two figures, so nothing is left to test them; the number of birds in a group is not known, and the ranges assume 40 muscles.",
        HowKnown.Derived,
        [new ValidityRange("cycles", 0, 20, "cycles"), new ValidityRange("age", 45, 45, "d")]);

    internal static double Exponent => 2.71;

    internal static double HalfCycles => 26.0;

    /// <summary>The share of muscles with a lesion.</summary>
    /// <param name="cycles">Cycles of flapping in one event, 0 or more; one is a bout of about five flaps.</param>
    /// <returns>Above 20 cycles an extrapolation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public static MusclePrevalence At(double cycles) =>
        MusclePrevalence.Of(Probability.FromFraction(Share(Require.NotNegative(cycles, "cycles"), Exponent, HalfCycles)));

    /// <summary>The range in which that share lies, by the flat-prior likelihood of the trial at an assumed 40 muscles a group.</summary>
    /// <param name="cycles">Cycles of flapping, 0 or more.</param>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static Interval<MusclePrevalence> RangeAt(double cycles, double level)
    {
        Require.NotNegative(cycles, "cycles");
        Require.Share(level);
        const int Side = 64;
        double[] shares = new double[Side * Side];
        for (int i = 0; i < shares.Length; i++)
        {
            (double h, double half) = FlappingLikelihood.OfTrial.Draw(((i / Side) + 0.5) / Side, ((i % Side) + 0.5) / Side);
            shares[i] = Share(cycles, h, half);
        }

        Array.Sort(shares);
        MusclePrevalence Limit(double probability) => MusclePrevalence.Of(Probability.FromFraction(Sorted.Quantile(shares, probability)));
        return Interval<MusclePrevalence>.Of(Limit((1 - level) / 2), Limit((1 + level) / 2), level);
    }

    /// <summary>D(C) = 1 / (1 + (C50/C)^h)</summary>
    internal static double Share(double cycles, double h, double half) => cycles == 0 ? 0 : 1 / (1 + Math.Pow(half / cycles, h));
}
