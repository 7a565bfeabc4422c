namespace Poultry.Growth.Numerics;

/// <summary>
/// How the residuals themselves bend, S = sum r_i ∇²r_i: the part of the curvature of the sum of squares that the tangent plane leaves out, and for which
/// Gauss and Newton's steps only creep towards the minimum. It is learnt from how the slopes change on the way, without second derivatives.
/// </summary>
/// <remarks>
/// S s = (J there - J here)' r there for a step s from here to there: J. E. Dennis, D. M. Gay, R. E. Welsch (1981), An adaptive nonlinear least-squares algorithm,
/// ACM Transactions on Mathematical Software 7, 348-368. What is known is changed by the one matrix of rank one that is symmetric and makes this hold.
/// </remarks>
internal readonly ref struct ResidualCurvature
{
    /// <summary>A step nearly at right angles to what it taught would change S by more than it knows.</summary>
    private const double LeastShare = 1e-8;

    private readonly Span<double> matrix;
    private readonly Span<double> sum;
    private readonly Span<double> news;

    public ResidualCurvature(int columns, scoped ref Span<double> workspace)
    {
        matrix = Workspace.Take(ref workspace, columns * columns);
        sum = Workspace.Take(ref workspace, columns * columns);
        news = Workspace.Take(ref workspace, columns);
        Forget();
    }

    public static int Length(int columns) => columns * ((2 * columns) + 1);

    /// <summary>Nothing is known again.</summary>
    public void Forget() => matrix.Clear();

    /// <summary>What <see cref="Learn"/> needs of the residuals there before they are factored.</summary>
    public void Note(in Linearisation here, in Linearisation there) => here.SlopesOf(there.Residuals, news);

    /// <summary>Learns from a step that <see cref="Note"/> saw.</summary>
    public void Learn(in Linearisation there, ReadOnlySpan<double> step)
    {
        int n = news.Length;
        double along = 0;
        double size = 0;
        for (int i = 0; i < n; i++)
        {
            double expected = news[i];
            for (int j = 0; j < n; j++)
            {
                expected += matrix[(i * n) + j] * step[j];
            }

            news[i] = there.Slopes[i] - expected;
            double part = news[i] * step[i];
            along += part;
            size += Math.Abs(part);
        }

        // Also false for what is not a number: a lost column.
        if (!(Math.Abs(along) > LeastShare * size))
        {
            return;
        }

        double inverse = 1 / along;
        for (int i = 0; i < n; i++)
        {
            double share = inverse * news[i];
            for (int j = 0; j < n; j++)
            {
                matrix[(i * n) + j] += share * news[j];
            }
        }
    }

    /// <summary>The step to the minimum, (J'J + S) s = -J'r, and what it promises to take off the sum of squares; false where there is no minimum.</summary>
    public bool FindStep(in Linearisation plane, Span<double> step, out double promise)
    {
        plane.Triangle.AddSquare(matrix, sum);
        for (int j = 0; j < step.Length; j++)
        {
            step[j] = -plane.Slopes[j];
        }

        return SymmetricMatrix.Solve(sum, step, out promise);
    }
}
