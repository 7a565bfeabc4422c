using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>
/// Whole growth curves that a batch may be following, drawn from a projection: what plans are tried on. One draw is one kind of curve, one set of its
/// parameters and one path of its discrepancy, so that its weights at several ages belong together.
/// </summary>
/// <remarks>
/// A draw is a function of (seed, number): the same on every thread and in any order. Kind and parameters do not depend on the ages asked for; the path of the discrepancy does.
/// Slopes are taken at each kind's optimum, as in the stated intervals: over many draws the weights at an age have the projection's own distribution.
/// </remarks>
public sealed class CurveDraws
{
    private const int KindPurpose = 1;
    private const int ParameterPurpose = 2;
    private const int DiscrepancyPurpose = 3;

    private readonly long seed;
    private readonly double[] days;
    private readonly double[] factors;
    private readonly int[] nodes;
    private readonly double[] cumulated;
    private readonly double[] lines;

    internal CurveDraws(NodeFits fits, FlockSpread spread, long seed, ReadOnlySpan<Age> ages)
    {
        this.seed = seed;
        days = new double[ages.Length];
        factors = new double[ages.Length];
        for (int i = 0; i < ages.Length; i++)
        {
            days[i] = ages[i].Days;
            factors[i] = spread.Factor(spread.Sex, days[i]);
        }

        nodes = [.. Enumerable.Range(0, fits.Count).Where(q => fits.Weight(q) > 0 && HasWeights(fits, q))];
        cumulated = new double[nodes.Length];
        lines = new double[nodes.Length * Stride];
        double sum = 0;
        for (int i = 0; i < nodes.Length; i++)
        {
            sum += fits.Weight(nodes[i]);
            cumulated[i] = sum;
            Prepare(fits, nodes[i], lines.AsSpan(i * Stride, Stride));
        }
    }

    /// <summary>The ages of the weights, in the order given.</summary>
    public IReadOnlyList<Age> Ages => [.. days.Select(Age.FromDays)];

    /// <summary>For each age the mean and three slopes, then the factor of the discrepancy's covariance.</summary>
    private int Stride => days.Length * (4 + days.Length);

    /// <summary>The flock's mean weight at each age in one draw.</summary>
    /// <param name="draw">The number of the draw, 0 or more.</param>
    /// <param name="kilograms">Receives the weights in kg; as long as <see cref="Ages"/>.</param>
    /// <exception cref="ArgumentException">The span has another length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public void Draw(int draw, Span<double> kilograms)
    {
        Require.AtLeast(draw, 0);
        Require.SameLength(days.Length, kilograms.Length, nameof(kilograms));
        double kind = new RandomStream(seed, draw, KindPurpose).NextUniform() * cumulated[^1];
        int node = 0;
        while (cumulated[node] < kind)
        {
            node++;
        }

        int n = days.Length;
        ReadOnlySpan<double> line = lines.AsSpan(node * Stride, Stride);
        ReadOnlySpan<double> root = line[(4 * n)..];
        RandomStream parameters = new(seed, draw, ParameterPurpose);
        (double a, double b, double c) = (parameters.NextNormal(), parameters.NextNormal(), parameters.NextNormal());
        RandomStream path = new(seed, draw, DiscrepancyPurpose);
        for (int i = 0; i < n; i++)
        {
            kilograms[i] = line[4 * i] + (line[(4 * i) + 1] * a) + (line[(4 * i) + 2] * b) + (line[(4 * i) + 3] * c);
        }

        for (int j = 0; j < n; j++)
        {
            double z = path.NextNormal();
            for (int i = j; i < n; i++)
            {
                kilograms[i] += root[(i * n) + j] * z;
            }
        }

        for (int i = 0; i < n; i++)
        {
            kilograms[i] = factors[i] * Math.Exp(kilograms[i]);
        }
    }

    /// <summary>As in <c>curves drawn at 3 ages, seed 1</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"curves drawn at {CountText.Of(days.Length, "age")}, seed {seed}");

    private bool HasWeights(NodeFits fits, int q)
    {
        NodeLaw law = fits.Plan.Nodes[q].Law(fits.Coordinates(q));
        return Array.TrueForAll(days, age => law.At(age, out _, out _, out _));
    }

    private void Prepare(NodeFits fits, int q, Span<double> line)
    {
        int n = days.Length;
        int m = fits.Data.Count;
        double square = fits.Plan.Nodes[q].Discrepancy * fits.Plan.Nodes[q].Discrepancy;
        double[] known = new double[n * m];
        Span<double> root = line[(4 * n)..];
        for (int i = 0; i < n; i++)
        {
            Span<double> correlation = known.AsSpan(i * m, m);
            NodePrediction.Correlations(fits, days[i], correlation);
            NodePrediction.Line(fits, q, days[i], correlation, out line[4 * i], line.Slice((4 * i) + 1, 3));
            NodePrediction.FreeDiscrepancy(fits, q, correlation);
            for (int j = 0; j <= i; j++)
            {
                double shared = square * Matern.Correlation(days[i] - days[j], ProjectionKernel.DiscrepancyDays);
                for (int k = 0; k < m; k++)
                {
                    shared -= correlation[k] * known[(j * m) + k];
                }

                root[(i * n) + j] = shared;
            }
        }

        Cholesky.FactorSemidefinite(root, n);
    }
}
