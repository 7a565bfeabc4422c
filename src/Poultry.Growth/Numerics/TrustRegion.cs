namespace Poultry.Growth.Numerics;

/// <summary>
/// The step s that makes |r + J s| least while |D s| stays within a radius, D the largest column norms seen so far. It solves
/// (J'J + λ D²) s = -J'r, from R alone, with λ = 0 where that step lies within, and else the λ for which |D s| is the radius within
/// a tenth: J. J. Moré (1978), The Levenberg-Marquardt algorithm: implementation and theory, Lecture Notes in Mathematics 630, 105-116.
/// Near the minimum the residuals' own bending counts too (<see cref="ResidualCurvature"/>), and a step that leads beyond the radius is cut short there.
/// </summary>
internal ref partial struct TrustRegion
{
    // Every share tried, from 0.1 to 0.6, solves every problem of NIST from both starts.
    private const double NarrowingShare = 0.3;

    // From 0.01 to 0.1 is all the same; from 0.3 on some curves that run away are followed further.
    private const double Near = 0.05;

    private readonly Span<double> scale;
    private readonly Span<double> dampedColumns;
    private readonly Span<double> dampedDiagonal;
    private readonly Span<double> row;
    private double radius;
    private double damping;

    public TrustRegion(int columns, scoped ref Span<double> workspace)
    {
        Step = Workspace.Take(ref workspace, columns);
        scale = Workspace.Take(ref workspace, columns);
        dampedColumns = Workspace.Take(ref workspace, columns * columns);
        dampedDiagonal = Workspace.Take(ref workspace, columns);
        row = Workspace.Take(ref workspace, columns);
    }

    /// <summary>The step found.</summary>
    public Span<double> Step { get; }

    /// <summary>|D s|.</summary>
    public double StepLength { get; private set; }

    /// <summary>What the step promises to take off the sum of squares.</summary>
    public double Promise { get; private set; }

    public static int Length(int columns) => (columns * columns) + (4 * columns);

    /// <summary>The first radius lets the parameters move by their own size.</summary>
    public void Start(in Linearisation plane, ReadOnlySpan<double> parameters)
    {
        scale.Clear();
        Rescale(plane);
        damping = 0;
        radius = ScaledLength(parameters);
        if (radius == 0)
        {
            radius = Math.Sqrt(plane.SumOfSquares);
        }
    }

    /// <summary>A column that has ever been long keeps its parameter on a short lead.</summary>
    public readonly void Rescale(in Linearisation plane)
    {
        ReadOnlySpan<double> norms = plane.Norms;
        for (int j = 0; j < scale.Length; j++)
        {
            double norm = Math.Max(scale[j], norms[j]);
            scale[j] = norm > 0 ? norm : 1;
        }
    }

    /// <summary>|D v|.</summary>
    public readonly double ScaledLength(ReadOnlySpan<double> vector)
    {
        double squares = 0;
        for (int j = 0; j < scale.Length; j++)
        {
            double scaled = scale[j] * vector[j];
            squares += scaled * scaled;
        }

        return Math.Sqrt(squares);
    }

    /// <summary>Finds the step within the radius. Near the minimum it goes towards that of the bent plane.</summary>
    public void FindStep(in Linearisation plane, in ResidualCurvature curvature)
    {
        UpperTriangle triangle = plane.Triangle;
        if (plane.Certificate < Near && curvature.FindStep(plane, Step, out double promise))
        {
            (Promise, StepLength, damping) = (promise, ScaledLength(Step), 0);
            if (StepLength > radius)
            {
                Shorten(radius / StepLength);
            }

            return;
        }

        CopyNegated(plane.Projection);
        triangle.Solve(Step);
        StepLength = ScaledLength(Step);
        if (StepLength <= 1.1 * radius)
        {
            damping = 0;
            Promise = plane.Explained;
            return;
        }

        FindDamping(plane);
        Promise = triangle.SquaresOfProduct(Step) + (2 * damping * StepLength * StepLength);
    }

    /// <summary>Widens or narrows the region by how much of the promise an accepted step kept.</summary>
    public void Adapt(double reduction)
    {
        if (reduction < 0.25 * Promise)
        {
            Narrow();
        }
        else if (damping == 0 || reduction >= 0.75 * Promise)
        {
            radius = 2 * StepLength;
            damping *= 0.5;
        }
    }

    /// <summary>Narrows the region below the last step.</summary>
    public void Narrow()
    {
        radius = NarrowingShare * Math.Min(radius, StepLength);
        damping /= NarrowingShare;
    }

    /// <summary>Goes only a share of the way to the minimum.</summary>
    private void Shorten(double share)
    {
        for (int j = 0; j < Step.Length; j++)
        {
            Step[j] *= share;
        }

        StepLength *= share;
        Promise *= share * (2 - share);
    }

    private readonly void CopyNegated(ReadOnlySpan<double> values)
    {
        for (int j = 0; j < values.Length; j++)
        {
            Step[j] = -values[j];
        }
    }
}
