namespace Poultry.Growth.Numerics;

/// <summary>The residuals at a point and their tangent plane, r(p + s) = r + J s with J = QR: all that a step and its certificate need.</summary>
internal ref struct Linearisation
{
    private readonly int rows;

    // The Jacobian column by column with the residuals as its last column: each is freed of those before it.
    private readonly Span<double> matrix;

    // R above its diagonal, column by column, with Q'r as its last column.
    private readonly Span<double> triangle;
    private readonly Span<double> diagonal;
    private readonly Span<double> norms;
    private readonly Span<double> slopes;
    private double explained;

    public Linearisation(int rows, int columns, scoped ref Span<double> workspace)
    {
        this.rows = rows;
        matrix = Workspace.Take(ref workspace, rows * (columns + 1));
        triangle = Workspace.Take(ref workspace, columns * (columns + 1));
        diagonal = Workspace.Take(ref workspace, columns);
        norms = Workspace.Take(ref workspace, columns);
        slopes = Workspace.Take(ref workspace, columns);
    }

    public double SumOfSquares { get; private set; }

    /// <summary>|Q'r| / |r|, or 1 where a column vanishes or is explained by those before it.</summary>
    public double Certificate { get; private set; }

    /// <summary>|Q'r|²: what the tangent plane promises to take off the sum of squares.</summary>
    public readonly double Explained => explained;

    /// <summary>R.</summary>
    public readonly UpperTriangle Triangle => new(triangle, norms.Length, diagonal);

    /// <summary>Q'r: the residuals seen from within the tangent plane.</summary>
    public readonly ReadOnlySpan<double> Projection => triangle[(norms.Length * norms.Length)..];

    /// <summary>r, until it is factored: then what of it lies outside the tangent plane.</summary>
    public readonly ReadOnlySpan<double> Residuals => matrix[(rows * norms.Length)..];

    /// <summary>J'r.</summary>
    public readonly ReadOnlySpan<double> Slopes => slopes;

    /// <summary>The lengths of the columns of J.</summary>
    public readonly ReadOnlySpan<double> Norms => norms;

    public static int Length(int rows, int columns) => ((rows + columns) * (columns + 1)) + (3 * columns);

    /// <summary>Computes residuals and derivatives in one pass; false where they or the sum of squares are not finite.</summary>
    public bool Evaluate<TProblem>(ref TProblem problem, ReadOnlySpan<double> point)
        where TProblem : struct, ILeastSquaresProblem, allows ref struct
    {
        int end = rows * norms.Length;
        Span<double> residuals = matrix[end..];
        if (!problem.Evaluate(point, residuals, matrix[..end]))
        {
            return false;
        }

        SumOfSquares = Householder.Squares(residuals);
        return double.IsFinite(SumOfSquares);
    }

    /// <summary>Factors what <see cref="Evaluate"/> computed; false where a derivative is not finite.</summary>
    public bool Factor()
    {
        int columns = norms.Length;
        bool lost = false;
        for (int k = 0; k < columns; k++)
        {
            // Gram and Schmidt's method, modified: with the residuals as one more column as sound as reflections, and no row apart.
            ReadOnlySpan<double> column = matrix.Slice(k * rows, rows);
            double squares = Lanes.Dot(column, column);
            double corner = Math.Sqrt(squares);
            ReadOnlySpan<double> above = triangle.Slice(k * columns, k);
            double norm = Math.Sqrt(squares + Lanes.Dot(above, above));
            if (!double.IsFinite(norm))
            {
                return false;
            }

            diagonal[k] = corner;
            norms[k] = norm;
            lost |= corner <= LeastSquares.RankCut * norm;
            double inverse = squares > 0 ? 1 / squares : 0;
            for (int j = k + 1; j <= columns; j++)
            {
                Span<double> other = matrix.Slice(j * rows, rows);
                double share = inverse * Lanes.Dot(column, other);
                Lanes.Add(-share, column, other);
                triangle[(j * columns) + k] = share * corner;
            }
        }

        Projection.CopyTo(slopes);
        Triangle.TransposedMultiply(slopes);
        explained = Lanes.Dot(Projection, Projection);
        Certificate = lost ? 1 : Math.Sqrt(explained / SumOfSquares);
        return true;
    }

    /// <summary>J'x, when it is factored; not finite where a column is zero.</summary>
    public readonly void SlopesOf(ReadOnlySpan<double> x, Span<double> slopesOfX)
    {
        for (int k = 0; k < slopesOfX.Length; k++)
        {
            slopesOfX[k] = Lanes.Dot(matrix.Slice(k * rows, rows), x) / diagonal[k];
        }

        Triangle.TransposedMultiply(slopesOfX);
    }

    /// <summary>How far the rounding of the parameters alone moves the residuals.</summary>
    public readonly double Rounding(ReadOnlySpan<double> point)
    {
        double squares = 0;
        for (int j = 0; j < norms.Length; j++)
        {
            double size = norms[j] * point[j];
            squares += size * size;
        }

        return Workspace.UnitRounding * Math.Sqrt(squares);
    }
}
