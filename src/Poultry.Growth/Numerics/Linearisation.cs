namespace Poultry.Growth.Numerics;

/// <summary>The residuals at a point and their tangent plane, r(p + s) = r + J s with J = QR: all that a step and its certificate need.</summary>
internal ref struct Linearisation
{
    private readonly int rows;

    // The Jacobian column by column with the residuals as its last column: what reflects the one reflects the other.
    private readonly Span<double> matrix;
    private readonly Span<double> diagonal;
    private readonly Span<double> norms;
    private double explained;

    public Linearisation(int rows, int columns, scoped ref Span<double> workspace)
    {
        this.rows = rows;
        matrix = Workspace.Take(ref workspace, rows * (columns + 1));
        diagonal = Workspace.Take(ref workspace, columns);
        norms = Workspace.Take(ref workspace, columns);
    }

    public double SumOfSquares { get; private set; }

    /// <summary>|Q'r| / |r|, or 1 where a column vanishes or is explained by those before it.</summary>
    public double Certificate { get; private set; }

    /// <summary>|Q'r|²: what the tangent plane promises to take off the sum of squares.</summary>
    public readonly double Explained => explained;

    /// <summary>R.</summary>
    public readonly UpperTriangle Triangle => new(matrix, rows, diagonal);

    /// <summary>Q'r: the residuals seen from within the tangent plane.</summary>
    public readonly ReadOnlySpan<double> Projection => matrix.Slice(rows * norms.Length, norms.Length);

    /// <summary>The lengths of the columns of J.</summary>
    public readonly ReadOnlySpan<double> Norms => norms;

    public static int Length(int rows, int columns) => (rows * (columns + 1)) + (2 * columns);

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
        Span<double> rest = matrix;
        bool lost = false;
        explained = 0;
        for (int k = 0; k < norms.Length; k++)
        {
            Span<double> column = rest[..rows];
            rest = rest[rows..];
            double corner = Householder.Reflect(column, k);
            Householder.Apply(column, corner, k, rest);
            double norm = Math.Sqrt(Householder.Squares(column[..k]) + (corner * corner));
            if (!double.IsFinite(norm))
            {
                return false;
            }

            diagonal[k] = corner;
            norms[k] = norm;
            lost |= Math.Abs(corner) <= LeastSquares.RankCut * norm;
            double seen = matrix[(rows * norms.Length) + k];
            explained += seen * seen;
        }

        Certificate = lost ? 1 : Math.Sqrt(explained / SumOfSquares);
        return true;
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
