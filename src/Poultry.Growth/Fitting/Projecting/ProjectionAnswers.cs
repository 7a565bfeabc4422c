using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>The questions that a projection answers, in kg, days and fractions.</summary>
internal static class ProjectionAnswers
{
    /// <summary>So long a weight is waited for; no bird of a batch is kept longer.</summary>
    private const double LongestDays = 400;

    /// <summary>Steps in which the age of a chance is looked for, and the precision to which it is found.</summary>
    private const double SearchStepDays = 7;
    private const double AgeTolerance = 1e-6;

    /// <summary>Outcomes of a weigh-in that has not been made, each as likely as the others.</summary>
    private const int Outcomes = 15;

    /// <summary>Lower bound, median and upper bound of a mean on the curve's factor, kg.</summary>
    public static (double Low, double Median, double High) Mean(NodeFits fits, double days, double extraVariance, double factor, double level)
    {
        NormalMixture mixture = NormalMixture.In(stackalloc double[3 * fits.Count]);
        NodePrediction.At(fits, days, extraVariance, mixture);
        return Bounds(mixture, level, factor);
    }

    /// <summary>Lower bound, median and upper bound of the weight of one bird, kg. No bird weighs less than nothing, however wide a spread was weighed.</summary>
    public static (double Low, double Median, double High) Bird(NodeFits fits, FlockSpread spread, double days, double level)
    {
        NormalMixture birds = Birds(fits, spread, days);
        (double low, double high) = ((1 - level) / 2, (1 + level) / 2);
        return (Math.Max(0, birds.Quantile(low)), Math.Max(0, birds.Quantile(0.5)), birds.Quantile(high));
    }

    /// <summary>Expected shares of the birds below each of some rising weights.</summary>
    public static void SharesBelow(NodeFits fits, FlockSpread spread, double days, ReadOnlySpan<double> kilograms, Span<double> shares)
    {
        NormalMixture birds = Birds(fits, spread, days);
        for (int i = 0; i < kilograms.Length; i++)
        {
            shares[i] = Math.Min(1, birds.Below(kilograms[i]));
        }
    }

    /// <summary>The chance that the curve projected lies above a weight.</summary>
    public static double ChanceAbove(NodeFits fits, double days, double kilograms)
    {
        NormalMixture mixture = NormalMixture.In(stackalloc double[3 * fits.Count]);
        NodePrediction.At(fits, days, 0, mixture);
        return Math.Max(0, 1 - mixture.Below(Math.Log(kilograms)));
    }

    /// <summary>The first age at which the chance that the curve lies above a threshold, in kg by age in days, reaches a level; null where it does not.</summary>
    public static double? AgeOfChance(NodeFits fits, Func<double, double> threshold, double chance)
    {
        ChanceMiss miss = new(fits, threshold, chance);
        double before = 0;
        if (miss.At(before) >= 0)
        {
            return 0;
        }

        for (double days = SearchStepDays; days <= LongestDays; days += SearchStepDays)
        {
            if (miss.At(days) >= 0)
            {
                return RootFinding.Bracketed(ref miss, before, days, AgeTolerance, out double root) ? root : days;
            }

            before = days;
        }

        return null;
    }

    /// <summary>
    /// The mean width of the interval of ln W at a target age after one more weigh-in, over what that weigh-in may show. In each node the weigh-in and the
    /// target are two normal numbers together: seeing one narrows the other and weighs the node anew. Nothing is fitted again.
    /// </summary>
    /// <returns>Widths now and then as parts of the median of now.</returns>
    public static (double Now, double Then) Worth(NodeFits fits, double days, double variance, double targetDays, double level)
    {
        int n = fits.Count;
        NormalMixture seen = NormalMixture.In(stackalloc double[3 * n]);
        NormalMixture target = NormalMixture.In(stackalloc double[3 * n]);
        NormalMixture after = NormalMixture.In(stackalloc double[3 * n]);
        NodePrediction.At(fits, days, variance, seen);
        NodePrediction.At(fits, targetDays, 0, target);
        Span<double> shared = stackalloc double[n];
        for (int q = 0; q < n; q++)
        {
            shared[q] = seen.Weights[q] > 0 && target.Weights[q] > 0 ? NodePrediction.Covariance(fits, q, days, targetDays) : 0;
        }

        (double low, double median, double high) = Bounds(target, level, 1);
        double then = 0;
        for (int outcome = 0; outcome < Outcomes; outcome++)
        {
            double log = seen.Quantile((outcome + 0.5) / Outcomes);
            double most = double.NegativeInfinity;
            for (int q = 0; q < n; q++)
            {
                after.Weights[q] = double.NegativeInfinity;
                if (seen.Weights[q] > 0 && target.Weights[q] > 0)
                {
                    double off = (log - seen.Means[q]) / seen.Deviations[q];
                    double slope = shared[q] / seen.Deviations[q];
                    after.Means[q] = target.Means[q] + (slope * off);
                    after.Deviations[q] = Math.Sqrt((target.Deviations[q] * target.Deviations[q]) - (slope * slope));
                    after.Weights[q] = Math.Log(seen.Weights[q] / seen.Deviations[q]) - (off * off / 2);
                    most = Math.Max(most, after.Weights[q]);
                }
            }

            double total = 0;
            foreach (ref double weight in after.Weights)
            {
                weight = Math.Exp(weight - most);
                total += weight;
            }

            foreach (ref double weight in after.Weights)
            {
                weight /= total;
            }

            (double from, _, double to) = Bounds(after, level, 1);
            then += (to - from) / Outcomes;
        }

        return ((high - low) / median, then / median);
    }

    /// <summary>From weights that jump up and down by powers of ten curves may come that run beyond all numbers.</summary>
    public static double Held(double kilograms, double days) => double.IsFinite(kilograms) ? kilograms
        : throw Require.Refusal("age", string.Create(
            CultureInfo.InvariantCulture, $"{days:0.##} d is not allowed: the curves that the weigh-ins leave are beyond all weights there; expected weights of growing birds in their units."));

    private static (double Low, double Median, double High) Bounds(in NormalMixture mixture, double level, double factor) => (
        factor * Math.Exp(mixture.Quantile((1 - level) / 2)),
        factor * Math.Exp(mixture.Quantile(0.5)),
        factor * Math.Exp(mixture.Quantile((1 + level) / 2)));

    /// <summary>
    /// The weights of single birds as one mixture in kg: nodes, weights that the curve may have in each, sexes. Nine points are enough where the curve is known better than a
    /// bird about it; where it is not, as before the first weigh-in, so many as lie no further apart than birds of one curve do: between nine there would be gaps.
    /// </summary>
    private static NormalMixture Birds(NodeFits fits, FlockSpread spread, double days)
    {
        NormalMixture curve = NormalMixture.In(stackalloc double[3 * fits.Count]);
        NodePrediction.At(fits, days, 0, curve);
        int count = 0;
        for (int q = 0; q < fits.Count; q++)
        {
            count += curve.Weights[q] > 0 ? CurvePoints.Count(curve.Deviations[q], spread.Variation) : 0;
        }

        NormalMixture birds = NormalMixture.In(new double[3 * count * spread.Parts]);
        int i = 0;
        for (int q = 0; q < fits.Count; q++)
        {
            if (curve.Weights[q] == 0)
            {
                continue;
            }

            CurvePoints points = new(curve.Deviations[q], spread.Variation);
            for (int g = 0; g < points.Length; g++)
            {
                (double z, double weight) = points[g];
                double kilograms = Held(Math.Exp(curve.Means[q] + (z * curve.Deviations[q])), days);
                for (int part = 0; part < spread.Parts; part++)
                {
                    (double share, double factor) = spread.Part(part, days);
                    birds.Weights[i] = share * curve.Weights[q] * weight;
                    birds.Means[i] = factor * kilograms;
                    birds.Deviations[i] = spread.Variation * factor * kilograms;
                    i++;
                }
            }
        }

        return birds;
    }

    private readonly struct ChanceMiss(NodeFits fits, Func<double, double> threshold, double chance) : IScalarFunction
    {
        public double At(double x) => ChanceAbove(fits, x, threshold(x)) - chance;
    }
}
