using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>How many birds to weigh so that their mean is as near to the flock's as wanted.</summary>
/// <remarks>
/// The birds must be a random sample, which those that let themselves be caught are not; and the CV asked for is that of the flock, which a
/// first weigh-in estimates.
/// </remarks>
public static class BirdsToWeigh
{
    /// <summary>Equation and source.</summary>
    public static ModelInfo Model { get; } = new(
        "birds-to-weigh",
        "Birds to weigh",
        "smallest n with t(n-1) CV sqrt(1/n - 1/N) <= E; that is n = n0 / (1 + n0/N) with n0 = (t CV / E)^2",
        [
            new ModelSymbol("n", "birds to weigh", "-"),
            new ModelSymbol("N", "birds in the flock; without it 1/N is 0", "-"),
            new ModelSymbol("CV", "coefficient of variation between birds", "-"),
            new ModelSymbol("E", "precision: half the width of the interval of the mean, as a fraction of the mean", "-"),
            new ModelSymbol("t(n-1)", "Student's t of n - 1 degrees of freedom, both tails together 1 - level", "-"),
        ],
        [new Citation("Student1908", "Student 1908, The probable error of a mean, Biometrika 6:1-25", HowKnown.Memory)],
        "Exact for normal weights; equal to R and scipy in 30 cases. The usual n = (1.96 CV/E)^2 is 1 to 4 birds short.",
        HowKnown.Derived);

    /// <summary>The smallest number of birds whose mean has the precision wanted.</summary>
    /// <param name="coefficientOfVariation">Between birds, as a fraction: 0.10 is 10 %. Above 0.</param>
    /// <param name="precision">Half the width of the interval, as a fraction of the mean: 0.02 is within 2 %. Above 0.</param>
    /// <param name="level">The chance that the interval holds the mean of the flock, as a fraction between 0 and 1.</param>
    /// <param name="flock">How many birds there are, 1 or more; null for a flock so large that it does not matter.</param>
    /// <returns>2 or more, but never more than the flock.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range, or more birds would be needed than can be counted.</exception>
    public static int For(double coefficientOfVariation, double precision, double level = 0.95, int? flock = null)
    {
        double ratio = Require.Positive(coefficientOfVariation, "") / Require.Positive(precision, "");
        Require.Share(level);
        int most = flock is { } birds ? Require.AtLeast(birds, 1, nameof(flock)) : int.MaxValue;
        bool Enough(int n) =>
            n == flock || Distributions.StudentQuantile((1 + level) / 2, n - 1) * ratio * Math.Sqrt((1.0 / n) - (flock is { } all ? 1.0 / all : 0)) <= 1;

        if (!Enough(most))
        {
            throw new ArgumentOutOfRangeException(
                nameof(precision),
                string.Create(CultureInfo.InvariantCulture, $"{precision} would take more than {most} birds; expected a wider precision."));
        }

        // More birds are never less precise: t and 1/n both fall with n.
        int enough = most, tooFew = 1;
        while (enough - tooFew > 1)
        {
            int half = tooFew + ((enough - tooFew) / 2);
            (enough, tooFew) = Enough(half) ? (half, tooFew) : (enough, half);
        }

        return enough;
    }
}
