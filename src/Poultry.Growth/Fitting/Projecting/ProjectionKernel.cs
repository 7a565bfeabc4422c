using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>Fits every node and weighs them by their evidence (Laplace's approximation). Allocates nothing.</summary>
internal static class ProjectionKernel
{
    /// <summary>Over so many days the discrepancy fades.</summary>
    public const double DiscrepancyDays = 10;

    /// <summary>Residuals of variance 1 this small are none: without weigh-ins three residuals and three parameters leave no certificate to ask for.</summary>
    private const double ExactSquares = 1e-16;

    private static LeastSquaresOptions Options => new() { CertificateTarget = 1e-7 };

    public static int WorkspaceLength(int entries) => LeastSquares.WorkspaceLength(entries + 3, 3) + (4 * (entries + 3));

    public static void Fit(NodeFits fits, Span<double> workspace)
    {
        Noise(fits, NodePlan.SmallDiscrepancy, large: false);
        Noise(fits, NodePlan.LargeDiscrepancy, large: true);
        ReadOnlySpan<NodePlan.Node> nodes = fits.Plan.Nodes;
        double best = double.NegativeInfinity;
        for (int q = 0; q < nodes.Length; q++)
        {
            double log = Search(fits, q, workspace);
            fits.Weight(q) = log;
            fits.Failed += double.IsNegativeInfinity(log) ? 1 : 0;
            best = Math.Max(best, log);
        }

        double total = 0;
        for (int q = 0; q < nodes.Length; q++)
        {
            fits.Weight(q) = Math.Exp(fits.Weight(q) - best);
            total += fits.Weight(q);
        }

        for (int q = 0; q < nodes.Length; q++)
        {
            fits.Weight(q) /= total;
        }
    }

    /// <summary>C, the covariance of the weigh-ins about the curve: their own errors, and the shared discrepancy; factored.</summary>
    private static void Noise(NodeFits fits, double discrepancy, bool large)
    {
        ProjectionData data = fits.Data;
        Span<double> noise = fits.Noise(large);
        for (int i = 0; i < data.Count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                noise[(i * data.Count) + j] = discrepancy * discrepancy * Matern.Correlation(data.Days[i] - data.Days[j], DiscrepancyDays);
            }

            noise[(i * data.Count) + i] += data.Variances[i];
        }

        Cholesky.Factor(noise, data.Count);
        Span<double> level = fits.Level(large);
        level.Fill(1);
        Cholesky.SolveLower(noise, data.Count, level);
        Cholesky.SolveUpper(noise, data.Count, level);
    }

    /// <summary>A node's evidence, from its neighbour's optimum or, where the search is lost from there, from the middle of its prior.</summary>
    private static double Search(NodeFits fits, int q, Span<double> workspace)
    {
        int neighbour = fits.Plan.Nodes[q].StartsFrom;
        double log = FitFrom(fits, q, neighbour, workspace);
        return double.IsNegativeInfinity(log) && neighbour >= 0 ? FitFrom(fits, q, -1, workspace) : log;
    }

    /// <summary>A node's evidence from a start: the optimum of another node, or the middle of its prior (-1).</summary>
    private static double FitFrom(NodeFits fits, int q, int from, Span<double> workspace)
    {
        NodePlan.Node node = fits.Plan.Nodes[q];
        Span<double> start = fits.Coordinates(q);
        (from >= 0 ? fits.Coordinates(from) : node.Prior.Centre).CopyTo(start);
        if (node.Shape < 0 && !HasWeights(node.Law(start), fits.Data.Days))
        {
            start[2] = RichardsThroughWeights.Steady(node.Shape, start[1]);
        }

        return FitOne(fits, q, new NodeProblem(node.Shape, node.Prior, fits.Data, fits.Noise(q)), workspace);
    }

    private static bool HasWeights(NodeLaw law, ReadOnlySpan<double> days)
    {
        foreach (double day in days)
        {
            if (!law.At(day, out _, out _, out _))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The logarithm of a node's evidence; minus infinity where it has no certified optimum.</summary>
    private static double FitOne(NodeFits fits, int q, NodeProblem problem, Span<double> workspace)
    {
        NodePlan.Node node = fits.Plan.Nodes[q];
        int m = fits.Data.Count;
        int rows = m + 3;
        Span<double> coordinates = fits.Coordinates(q);
        LeastSquaresResult result = LeastSquares.Solve(ref problem, coordinates, workspace, Options);
        Span<double> residuals = workspace[..rows];
        Span<double> jacobian = workspace.Slice(rows, 3 * rows);
        bool found = result.Status is LeastSquaresStatus.Converged or LeastSquaresStatus.ExactFit || result.SumOfSquares < ExactSquares;
        if (!found || !problem.Evaluate(coordinates, residuals, jacobian))
        {
            return double.NegativeInfinity;
        }

        Span<double> curvature = fits.Curvature(q);
        for (int a = 0; a < 3; a++)
        {
            for (int b = 0; b <= a; b++)
            {
                curvature[(3 * a) + b] = Dot(jacobian.Slice(a * rows, rows), jacobian.Slice(b * rows, rows));
            }
        }

        if (!Cholesky.Factor(curvature, 3))
        {
            return double.NegativeInfinity;
        }

        // Residuals are curve less weigh-in: r of the recipe has the other sign.
        Span<double> discrepancy = fits.Discrepancy(q);
        residuals[..m].CopyTo(discrepancy);
        for (int i = 0; i < m; i++)
        {
            discrepancy[i] = -discrepancy[i];
        }

        jacobian.Slice(rows, m).CopyTo(discrepancy[m..]);
        jacobian.Slice(2 * rows, m).CopyTo(discrepancy[(2 * m)..]);
        for (int j = 0; j < 3; j++)
        {
            Cholesky.SolveUpper(fits.Noise(q), m, discrepancy.Slice(j * m, m));
        }

        fits.PriorDistance(q) = Dot(residuals[m..], residuals[m..]);
        double logs = Cholesky.LogDeterminant(fits.Noise(q), m) + node.Prior.LogDeterminant + Cholesky.LogDeterminant(curvature, 3);
        return Math.Log(node.Share) - ((Dot(residuals, residuals) + logs) / 2) + LogGrownShare(node, coordinates, curvature);
    }

    /// <summary>Every bird stops growing: the logarithm of how much of a node's normal law lies among curves with a mature weight, against how much did beforehand.</summary>
    private static double LogGrownShare(NodePlan.Node node, ReadOnlySpan<double> coordinates, ReadOnlySpan<double> curvature)
    {
        if (!node.Prior.IsOnWeights)
        {
            return 0;
        }

        Span<double> slopes = stackalloc double[3];
        double distance = new RichardsThroughWeights(node.Shape, coordinates).DistanceToEndless(slopes);
        Cholesky.SolveLower(curvature, 3, slopes);
        return Math.Log(Distributions.NormalProbability(distance / Math.Sqrt(Dot(slopes, slopes)))) - node.LogGrownShare;
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
}
