using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>A normal prior on three coordinates of a curve: its parameters themselves, or three of its weights.</summary>
internal sealed class NodePrior
{
    /// <summary>Ages of the three weights, d: x = (ln W35, ln W35/W14, ln W56/W35).</summary>
    public const double FirstDays = 14;
    public const double MiddleDays = 35;
    public const double LastDays = 56;

    /// <summary>Never a sharper prior on weights than this, whatever the farm's own is: families of curves differ so much.</summary>
    private static ReadOnlySpan<double> LeastDeviations => [0.30, 0.50, 0.15];

    /// <summary>
    /// The first of them where a wider prior stands behind, as behind the farm's own batches: they tell how heavy its birds are, and not by which curve. Chosen between 0.08 and 0.30
    /// on simulated farms (docs/studies/own-farm.md): less narrows no answer much further and follows another strain late.
    /// </summary>
    private const double LeastOwnLevel = 0.18;

    /// <summary>So many times wider than what the prior of the Gompertz curve says about the same weights.</summary>
    private static ReadOnlySpan<double> Widening => [1.1, 1.4, 1.25];

    /// <summary>Between early and late growth.</summary>
    private const double Correlation = 0.25;

    private readonly double[] centre;
    private readonly double[] factor;

    private NodePrior(bool isOnWeights, double[] centre, double[] covariance)
    {
        (IsOnWeights, this.centre, factor) = (isOnWeights, centre, covariance);
        Cholesky.Factor(factor, 3);
        LogDeterminant = Cholesky.LogDeterminant(factor, 3);
    }

    /// <summary>Whether the coordinates are the three weights; else ln A, ln k, t*.</summary>
    public bool IsOnWeights { get; }

    /// <summary>Middle of the coordinates.</summary>
    public ReadOnlySpan<double> Centre => centre;

    /// <summary>ln |S|.</summary>
    public double LogDeterminant { get; }

    public static NodePrior OnParameters(GrowthPrior prior) => new(false, prior.Mean.ToArray(), prior.Covariance.ToArray());

    /// <summary>The loose prior on weights about the central curve of a Gompertz prior.</summary>
    public static NodePrior OnWeights(GrowthPrior prior)
    {
        Span<double> centre = stackalloc double[3];
        Weights(prior.Mean, centre);
        Span<double> deviations = stackalloc double[3];
        Deviations(prior, deviations);
        for (int i = 0; i < 3; i++)
        {
            double least = i == 0 && prior.Fallback is not null ? LeastOwnLevel : LeastDeviations[i];
            deviations[i] = Math.Max(least, Widening[i] * deviations[i]);
        }

        double shared = Correlation * deviations[1] * deviations[2];
        return new NodePrior(
            true,
            centre.ToArray(),
            [
                deviations[0] * deviations[0], 0, 0,
                0, deviations[1] * deviations[1], shared,
                0, shared, deviations[2] * deviations[2],
            ]);
    }

    /// <summary>Turns a distance from the centre into independent standard coordinates, in place.</summary>
    public void Whiten(Span<double> distance) => Cholesky.SolveLower(factor, 3, distance);

    /// <summary>The logarithm of how much of the prior on weights lies among the curves of a shape that have a mature weight.</summary>
    public double LogGrownShare(double shape)
    {
        Span<double> slopes = stackalloc double[3];
        double distance = new RichardsThroughWeights(shape, centre).DistanceToEndless(slopes);
        double square = 0;
        for (int j = 0; j < 3; j++)
        {
            double along = 0;
            for (int i = j; i < 3; i++)
            {
                along += factor[(3 * i) + j] * slopes[i];
            }

            square += along * along;
        }

        return Math.Log(Distributions.NormalProbability(distance / Math.Sqrt(square)));
    }

    /// <summary>Standard deviations of the three weights under a Gompertz prior, by quadrature over its three parameters.</summary>
    private static void Deviations(GrowthPrior prior, Span<double> deviations)
    {
        Span<double> root = stackalloc double[9];
        prior.Covariance.CopyTo(root);
        Cholesky.Factor(root, 3);
        Span<double> theta = stackalloc double[3];
        Span<double> x = stackalloc double[3];
        Span<double> mean = stackalloc double[3];
        Span<double> square = stackalloc double[3];
        mean.Clear();
        square.Clear();
        ReadOnlySpan<double> points = GaussHermite.Points;
        ReadOnlySpan<double> weights = GaussHermite.Weights;
        int n = points.Length;
        for (int i = 0; i < n * n * n; i++)
        {
            (int a, int b, int c) = (i / (n * n), i / n % n, i % n);
            theta[0] = prior.Mean[0] + (root[0] * points[a]);
            theta[1] = prior.Mean[1] + (root[3] * points[a]) + (root[4] * points[b]);
            theta[2] = prior.Mean[2] + (root[6] * points[a]) + (root[7] * points[b]) + (root[8] * points[c]);
            Weights(theta, x);
            double weight = weights[a] * weights[b] * weights[c];
            for (int j = 0; j < 3; j++)
            {
                mean[j] += weight * x[j];
                square[j] += weight * x[j] * x[j];
            }
        }

        for (int j = 0; j < 3; j++)
        {
            deviations[j] = Math.Sqrt(square[j] - (mean[j] * mean[j]));
        }
    }

    private static void Weights(ReadOnlySpan<double> theta, Span<double> x)
    {
        double k = Math.Exp(theta[1]);
        double first = Math.Exp(-k * (FirstDays - theta[2]));
        double middle = Math.Exp(-k * (MiddleDays - theta[2]));
        double last = Math.Exp(-k * (LastDays - theta[2]));
        (x[0], x[1], x[2]) = (theta[0] - middle, first - middle, middle - last);
    }
}
