using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Numerics;

/// <summary>What the library asks of probability distributions.</summary>
internal static class Distributions
{
    /// <summary>Above it the expansion about the normal keeps more digits than the incomplete beta function, which loses them as the degrees grow.</summary>
    private const double ManyDegrees = 2e4;

    /// <summary>The value below which Student's t lies with the given probability.</summary>
    /// <param name="probability">From 1e-100 to 1 - 1e-15.</param>
    /// <param name="degreesOfFreedom">1 or more, whole or not; infinity is the normal.</param>
    /// <remarks>
    /// MathNet's own inverse looks between -800 and 800, and to 1e-12 in probability: with 1 degree of freedom it fails above 0.9996,
    /// and at 1e-6 it keeps seven digits. Its incomplete beta function is sound, so the inverse is sought from that.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double StudentQuantile(double probability, double degreesOfFreedom)
    {
        Require.Between(probability, 1e-100, 1 - 1e-15, "");
        Require.Between(degreesOfFreedom, 1, double.PositiveInfinity, "");
        if (probability == 0.5)
        {
            return 0;
        }

        if (degreesOfFreedom > ManyDegrees)
        {
            return StudentNearNormal(NormalQuantile(probability), degreesOfFreedom);
        }

        // t lies between the normal and the t of 1 degree of freedom; the margin of e covers their rounding near the middle.
        double tail = Math.Min(probability, 1 - probability);
        StudentTail miss = new(tail, degreesOfFreedom);
        double low = Math.Log(-NormalQuantile(tail)) - 1;
        double high = 1 - Math.Log(Math.Tan(Math.PI * tail));
        _ = RootFinding.Bracketed(ref miss, low, high, tolerance: 0, out double logarithm);
        return probability < 0.5 ? -Math.Exp(logarithm) : Math.Exp(logarithm);
    }

    /// <summary>The value below which the standard normal lies with the given probability, strictly between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1.</exception>
    public static double NormalQuantile(double probability)
    {
        Require.Share(probability);
        return Normal.InvCDF(0, 1, probability);
    }

    /// <summary>The probability that the standard normal lies below a value, which may be infinite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number.</exception>
    public static double NormalProbability(double value)
    {
        Require.Between(value, double.NegativeInfinity, double.PositiveInfinity, "");
        return Normal.CDF(0, 1, value);
    }

    /// <summary>The height of the standard normal's bell at a value, which may be infinite.</summary>
    public static double NormalDensity(double value) => Math.Exp(-value * value / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>The probability of at most so many successes.</summary>
    /// <param name="successes">0 or more.</param>
    /// <param name="trials">0 or more.</param>
    /// <param name="probability">Of one success, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double BinomialAtMost(int successes, int trials, double probability)
    {
        Require.AtLeast(successes, 0);
        Require.AtLeast(trials, 0);
        Require.Between(probability, 0, 1, "");
        return successes >= trials ? 1 : SpecialFunctions.BetaRegularized(trials - successes, successes + 1.0, 1 - probability);
    }

    /// <summary>The smallest number of successes that is not exceeded with a probability.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <param name="trials">0 or more.</param>
    /// <param name="success">Of one trial, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static int BinomialQuantile(double probability, int trials, double success)
    {
        Require.AtLeast(trials, 0);
        Require.Between(success, 0, 1, "");

        // From the normal that is like it the number is a few steps away.
        double guess = (trials * success) + (NormalQuantile(probability) * Math.Sqrt(trials * success * (1 - success)));
        int successes = (int)Math.Clamp(Math.Round(guess), 0, trials);
        while (successes > 0 && BinomialAtMost(successes - 1, trials, success) >= probability)
        {
            successes--;
        }

        while (BinomialAtMost(successes, trials, success) < probability)
        {
            successes++;
        }

        return successes;
    }

    /// <summary>The probability that chi-square lies above a value of 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, the degrees of freedom are not above 0, or one is not finite.</exception>
    public static double ChiSquareUpperTail(double value, double degreesOfFreedom)
    {
        Require.NotNegative(value, "");
        Require.Positive(degreesOfFreedom, "");
        return SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2, value / 2);
    }

    /// <summary>The probability that F lies above a value of 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, degrees of freedom are not above 0, or one is not finite.</exception>
    public static double FUpperTail(double value, double numeratorDegrees, double denominatorDegrees)
    {
        Require.NotNegative(value, "");
        Require.Positive(numeratorDegrees, "");
        Require.Positive(denominatorDegrees, "");
        return SpecialFunctions.BetaRegularized(
            denominatorDegrees / 2, numeratorDegrees / 2, denominatorDegrees / (denominatorDegrees + (numeratorDegrees * value)));
    }

    /// <summary>t = z + (z³ + z)/4n + (5z⁵ + 16z³ + 3z)/96n² + (3z⁷ + 19z⁵ + 17z³ - 15z)/384n³: Abramowitz and Stegun (1964), 26.7.5.</summary>
    private static double StudentNearNormal(double z, double n)
    {
        double square = z * z;
        double first = (square + 1) / 4;
        double second = ((((5 * square) + 16) * square) + 3) / 96;
        double third = ((((((3 * square) + 19) * square) + 17) * square) - 15) / 384;
        return z * (1 + ((first + ((second + (third / n)) / n)) / n));
    }

    /// <summary>How far the probability above exp(x) misses the tail: as a logarithm in the tail and as a difference from the middle near it, to keep the digits of both.</summary>
    private readonly struct StudentTail(double tail, double degreesOfFreedom) : IScalarFunction
    {
        public double At(double x)
        {
            double square = Math.Exp(2 * x);
            double sum = degreesOfFreedom + square;
            return tail < 0.25
                ? Math.Log(SpecialFunctions.BetaRegularized(degreesOfFreedom / 2, 0.5, degreesOfFreedom / sum) / (2 * tail))
                : (1 - (2 * tail)) - SpecialFunctions.BetaRegularized(0.5, degreesOfFreedom / 2, square / sum);
        }
    }
}
