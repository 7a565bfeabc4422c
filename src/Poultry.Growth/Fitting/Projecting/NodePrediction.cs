using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What the nodes say about ln W at other ages: one normal a node.</summary>
internal static class NodePrediction
{
    /// <summary>
    /// Weight, mean and deviation of every node at an age: m = f + k0 C⁻¹ r, s² = g H⁻¹ g' + σ² - k0 C⁻¹ k0', g = df - k0 C⁻¹ J. A node whose curve has no weight
    /// at this age, or one beyond all numbers, counts 0, and the others share its weight.
    /// </summary>
    /// <param name="fits">The nodes.</param>
    /// <param name="days">The age in days.</param>
    /// <param name="extraVariance">Variance of what is predicted beside the curve.</param>
    /// <param name="mixture">Receives the normals: room for as many as there are nodes.</param>
    public static void At(NodeFits fits, double days, double extraVariance, NormalMixture mixture)
    {
        Span<double> slope = stackalloc double[3];
        int m = fits.Data.Count;
        Span<double> room = 2 * m <= Workspace.StackRoom ? stackalloc double[2 * m] : new double[2 * m];
        Span<double> correlation = room[..m];
        Span<double> known = room[m..];
        Correlations(fits, days, correlation);
        (double small, double large) = (double.NaN, double.NaN);
        double total = 0;
        for (int q = 0; q < fits.Count; q++)
        {
            mixture.Weights[q] = 0;
            if (fits.Weight(q) == 0 || !Line(fits, q, days, correlation, out double mean, slope) || !double.IsFinite(mean + Squares(slope)))
            {
                continue;
            }

            ref double free = ref fits.Plan.Nodes[q].HasLargeDiscrepancy ? ref large : ref small;
            if (double.IsNaN(free))
            {
                correlation.CopyTo(known);
                free = FreeDiscrepancy(fits, q, known);
            }

            double variance = Squares(slope) + free + extraVariance;
            (mixture.Weights[q], mixture.Means[q], mixture.Deviations[q]) = (fits.Weight(q), mean, Math.Sqrt(variance));
            total += fits.Weight(q);
        }

        if (!(total > 0))
        {
            throw Require.Refusal("age", string.Create(
                CultureInfo.InvariantCulture, $"{days:0.##} d is not allowed: no curve that the weigh-ins leave has a weight there; expected weights of growing birds in their units."));
        }

        foreach (ref double weight in mixture.Weights)
        {
            weight /= total;
        }
    }

    /// <summary>Correlation of the discrepancy at an age with that at every weigh-in.</summary>
    public static void Correlations(NodeFits fits, double days, Span<double> correlation)
    {
        for (int i = 0; i < correlation.Length; i++)
        {
            correlation[i] = Matern.Correlation(days - fits.Data.Days[i], ProjectionKernel.DiscrepancyDays);
        }
    }

    /// <summary>A node's mean of ln W at an age, and its slopes by three independent standard coordinates of the parameters; false where its curve has no weight.</summary>
    public static bool Line(NodeFits fits, int q, double days, ReadOnlySpan<double> correlation, out double mean, Span<double> slope)
    {
        NodePlan.Node node = fits.Plan.Nodes[q];
        int m = correlation.Length;
        bool sound = node.Law(fits.Coordinates(q)).At(days, out mean, out slope[1], out slope[2]);
        slope[0] = 1;
        double square = node.Discrepancy * node.Discrepancy;
        ReadOnlySpan<double> discrepancy = fits.Discrepancy(q);
        ReadOnlySpan<double> level = fits.Level(node.HasLargeDiscrepancy);
        for (int i = 0; i < m; i++)
        {
            double k = square * correlation[i];
            mean += k * discrepancy[i];
            // The block holds C⁻¹ J of curve less weigh-in, whose J is that of the curve.
            slope[0] -= k * level[i];
            slope[1] -= k * discrepancy[m + i];
            slope[2] -= k * discrepancy[(2 * m) + i];
        }

        Cholesky.SolveLower(fits.Curvature(q), 3, slope);
        return sound;
    }

    /// <summary>Variance of the discrepancy that the weigh-ins leave; turns the correlations into k0 L'⁻¹, in place.</summary>
    public static double FreeDiscrepancy(NodeFits fits, int q, Span<double> correlation)
    {
        double square = fits.Plan.Nodes[q].Discrepancy * fits.Plan.Nodes[q].Discrepancy;
        foreach (ref double element in correlation)
        {
            element *= square;
        }

        Cholesky.SolveLower(fits.Noise(q), correlation.Length, correlation);
        return square - Squares(correlation);
    }

    /// <summary>Covariance of ln W at two ages in one node, both with a weight there.</summary>
    public static double Covariance(NodeFits fits, int q, double firstDays, double secondDays)
    {
        Span<double> slopes = stackalloc double[6];
        Span<double> first = slopes[..3];
        Span<double> second = slopes[3..];
        int m = fits.Data.Count;
        Span<double> room = 2 * m <= Workspace.StackRoom ? stackalloc double[2 * m] : new double[2 * m];
        Span<double> toFirst = room[..m];
        Span<double> toSecond = room[m..];
        Correlations(fits, firstDays, toFirst);
        Correlations(fits, secondDays, toSecond);
        Line(fits, q, firstDays, toFirst, out _, first);
        Line(fits, q, secondDays, toSecond, out _, second);
        FreeDiscrepancy(fits, q, toFirst);
        FreeDiscrepancy(fits, q, toSecond);
        double square = fits.Plan.Nodes[q].Discrepancy * fits.Plan.Nodes[q].Discrepancy;
        double shared = square * Matern.Correlation(firstDays - secondDays, ProjectionKernel.DiscrepancyDays);
        return Dot(first, second) + shared - Dot(toFirst, toSecond);
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static double Squares(ReadOnlySpan<double> values) => Householder.Squares(values);
}
