using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>
/// The worth of a weigh-in for the choice of the day: E max over days of E(M | weigh-in) less max E(M), the conditional means by regression of the draws' margins on
/// what the weigh-in would have shown (a square and a line in its logarithm).
/// </summary>
internal static class WeighInWorthOfChoice
{
    public static double Of(BatchPlan plan, HarvestDraws[] draws, Age age, int birds, long seed)
    {
        int count = draws[0].Margin.Length;
        double[] seen = Seen(plan, age, birds, seed, count);
        double[][] expected = [.. draws.Select(day => Regressed(day.Margin, seen))];
        double chosen = 0;
        for (int i = 0; i < count; i++)
        {
            chosen += expected.Max(day => day[i]);
        }

        return Math.Max(0, (chosen / count) - draws.Max(day => Sample.Mean(day.Margin)));
    }

    /// <summary>What the weigh-in would show in every draw, as standardised logarithms.</summary>
    private static double[] Seen(BatchPlan plan, Age age, int birds, long seed, int count)
    {
        // The draws' curves again, at one age: kind and parameters of a draw do not depend on the ages asked for.
        Fitting.CurveDraws curves = plan.Growth.Draws(seed, age);
        double variation = plan.Growth.WeightsAt(age, Mass.FromKilograms(1)).CoefficientOfVariation;
        double error = Math.Sqrt((variation * variation / birds) + (plan.Growth.WeighInError * plan.Growth.WeighInError));
        double[] seen = new double[count];
        Span<double> kilograms = stackalloc double[1];
        for (int i = 0; i < count; i++)
        {
            curves.Draw(i, kilograms);
            seen[i] = Math.Log(kilograms[0]) + (error * new DrawnInputs(seed, i).WeighIn);
        }

        double mean = Sample.Mean(seen), deviation = Math.Sqrt(seen.Sum(value => (value - mean) * (value - mean)) / count);
        return Array.ConvertAll(seen, value => (value - mean) / deviation);
    }

    /// <summary>The least-squares parabola of y on x, at every x.</summary>
    private static double[] Regressed(double[] y, double[] x)
    {
        double[] line = Numerics.Parabola.Fit(x, y);
        return [.. x.Select(value => line[0] + (line[1] * value) + (line[2] * value * value))];
    }
}
