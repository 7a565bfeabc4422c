using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The share of muscles with a lesion after so many cycles of wing flapping, in birds of full susceptibility.</summary>
public sealed class FlappingResponse
{
    /// <summary>Doses that gave lesions, and nothing at 5 cycles; the number of muscles in a group is not known, 40 is assumed for the doubt.</summary>
    private const double MusclesAGroup = 40, At10 = 0.07, At20 = 0.33;

    private const int Steps = 120;
    private const double LeastExponent = 0.3, LargestExponent = 9, LeastHalf = 15, LargestHalf = 200;

    private readonly double[] exponentBelow = new double[Steps];
    private readonly double[][] halfBelow = new double[Steps][];

    private FlappingResponse()
    {
        for (int i = 0; i < Steps; i++)
        {
            halfBelow[i] = new double[Steps];
            double sum = 0;
            for (int j = 0; j < Steps; j++)
            {
                sum += Math.Exp(LogLikelihood(ExponentAt(i), HalfAt(j)));
                halfBelow[i][j] = sum;
            }

            exponentBelow[i] = sum + (i == 0 ? 0 : exponentBelow[i - 1]);
        }
    }

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

    /// <summary>h 2.71, C50 26.0, and how the trial spreads about them.</summary>
    internal static FlappingResponse Published { get; } = new();

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
            (double h, double half) = Published.Draw(((i / Side) + 0.5) / Side, ((i % Side) + 0.5) / Side);
            shares[i] = Share(cycles, h, half);
        }

        Array.Sort(shares);
        MusclePrevalence Limit(double probability) => MusclePrevalence.Of(Probability.FromFraction(Sorted.Quantile(shares, probability)));
        return Interval<MusclePrevalence>.Of(Limit((1 - level) / 2), Limit((1 + level) / 2), level);
    }

    /// <summary>D(C) = 1 / (1 + (C50/C)^h)</summary>
    internal static double Share(double cycles, double h, double half) => cycles == 0 ? 0 : 1 / (1 + Math.Pow(half / cycles, h));

    /// <summary>h and C50 by two numbers between 0 and 1, so that even numbers give the likelihood's own spread.</summary>
    internal (double Exponent, double HalfCycles) Draw(double first, double second)
    {
        double i = Place(exponentBelow, first);
        double j = Place(halfBelow[Math.Clamp((int)i, 0, Steps - 1)], second);
        return (ExponentAt(i - 0.5), HalfAt(j - 0.5));
    }

    /// <summary>Where in the cells a share of the whole is reached, in cells.</summary>
    private static double Place(double[] sums, double share)
    {
        double wanted = share * sums[^1];
        int cell = Array.BinarySearch(sums, wanted);
        cell = Math.Min(cell < 0 ? ~cell : cell, sums.Length - 1);
        double before = cell == 0 ? 0 : sums[cell - 1];
        return cell + ((wanted - before) / (sums[cell] - before));
    }

    private static double ExponentAt(double cell) => LeastExponent + ((LargestExponent - LeastExponent) * (cell + 0.5) / Steps);

    private static double HalfAt(double cell) => LeastHalf * Math.Pow(LargestHalf / LeastHalf, (cell + 0.5) / Steps);

    /// <summary>Binomial, of 0 of n at 5 cycles, 7 % at 10 and 33 % at 20; flat in h and ln C50.</summary>
    private static double LogLikelihood(double h, double half)
    {
        double Of(double share, double cycles)
        {
            double p = Share(cycles, h, half);
            return (share == 0 ? 0 : share * Math.Log(p)) + ((1 - share) * Math.Log(1 - p));
        }

        return MusclesAGroup * (Of(0, 5) + Of(At10, 10) + Of(At20, 20));
    }
}
