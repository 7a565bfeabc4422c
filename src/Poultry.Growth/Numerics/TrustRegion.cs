namespace Poultry.Growth.Numerics;

/// <summary>
/// The step s that makes |r + J s| least while |D s| stays within a radius, D the largest column norms seen so far. It solves
/// (J'J + λ D²) s = -J'r, from R alone, with λ = 0 where that step lies within, and else the λ for which |D s| is the radius within
/// a tenth: J. J. Moré (1978), The Levenberg-Marquardt algorithm: implementation and theory, Lecture Notes in Mathematics 630, 105-116.
/// </summary>
internal ref struct TrustRegion
{
    // Every share tried, from 0.1 to 0.6, solves every problem of NIST from both starts.
    private const double NarrowingShare = 0.3;

    private const int MostDampings = 10;

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

    /// <summary>What the tangent plane promises the step to take off the sum of squares.</summary>
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

    private void FindDamping(in Linearisation plane)
    {
        // Newton's correction at λ = 0 is a lower bound; where a column is lost there is none.
        double lower = Correction(plane.Triangle, StepLength - radius);
        lower = double.IsFinite(lower) ? lower : 0;
        double squares = 0;
        for (int j = 0; j < scale.Length; j++)
        {
            double slope = plane.Slopes[j] / scale[j];
            squares += slope * slope;
        }

        double upper = Math.Sqrt(squares) / radius;
        for (int trial = 1; ; trial++)
        {
            // The last damping, or Newton's next, where it lies within the bounds.
            damping = damping > lower && damping < upper ? damping : Math.Max(0.001 * upper, Math.Sqrt(lower * upper));
            Damp(plane);
            UpperTriangle damped = new(dampedColumns, scale.Length, dampedDiagonal);
            damped.Solve(Step);
            StepLength = ScaledLength(Step);
            double excess = StepLength - radius;
            if (Math.Abs(excess) <= 0.1 * radius || trial == MostDampings)
            {
                return;
            }

            (lower, upper) = excess > 0 ? (Math.Max(lower, damping), upper) : (lower, Math.Min(upper, damping));
            damping += Correction(damped, excess);
        }
    }

    /// <summary>Newton's correction of λ for 1 / |D s| = 1 / radius: (|D s| - radius) / radius over the squares of S⁻ᵀ D² s / |D s|.</summary>
    private readonly double Correction(in UpperTriangle triangle, double excess)
    {
        for (int j = 0; j < row.Length; j++)
        {
            row[j] = scale[j] * (scale[j] * Step[j] / StepLength);
        }

        triangle.SolveTransposed(row);
        return excess / radius / Householder.Squares(row);
    }

    /// <summary>Rotates the rows √λ D into R, one after the other, and takes the right-hand side along.</summary>
    private readonly void Damp(in Linearisation plane)
    {
        int n = scale.Length;
        UpperTriangle triangle = plane.Triangle;
        triangle.Diagonal.CopyTo(dampedDiagonal);
        CopyNegated(plane.Projection);
        for (int j = 0; j < n; j++)
        {
            triangle.Above(j).CopyTo(dampedColumns[(j * n)..]);
        }

        double root = Math.Sqrt(damping);
        for (int k = 0; k < n; k++)
        {
            row.Clear();
            row[k] = root * scale[k];
            double right = 0;
            for (int j = k; j < n; j++)
            {
                double length = Math.Sqrt((dampedDiagonal[j] * dampedDiagonal[j]) + (row[j] * row[j]));
                (double cosine, double sine) = length > 0 ? (dampedDiagonal[j] / length, row[j] / length) : (1, 0);
                dampedDiagonal[j] = length;
                for (int i = j + 1; i < n; i++)
                {
                    double above = dampedColumns[(i * n) + j];
                    dampedColumns[(i * n) + j] = (cosine * above) + (sine * row[i]);
                    row[i] = (cosine * row[i]) - (sine * above);
                }

                double side = Step[j];
                Step[j] = (cosine * side) + (sine * right);
                right = (cosine * right) - (sine * side);
            }
        }
    }

    private readonly void CopyNegated(ReadOnlySpan<double> values)
    {
        for (int j = 0; j < values.Length; j++)
        {
            Step[j] = -values[j];
        }
    }
}
