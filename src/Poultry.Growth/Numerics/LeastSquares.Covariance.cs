using System.Runtime.InteropServices;

namespace Poultry.Growth.Numerics;

internal static partial class LeastSquares
{
    /// <summary>(J'J)⁻¹ at a point, row by row; times the residual variance it is the covariance of the parameters.</summary>
    /// <param name="problem">The residuals; at least as many as parameters.</param>
    /// <param name="parameters">The point, commonly one that <see cref="Solve"/> returned.</param>
    /// <param name="covariance">Room for the square of the number of parameters; of no meaning where the answer is false.</param>
    /// <param name="workspace">At least <see cref="WorkspaceLength"/> doubles of any content.</param>
    /// <param name="blamed">
    /// Where the answer is false, the parameter that the data do not determine: its column is zero or not finite, or less than <see cref="RankCut"/>
    /// of it is left outside the span of the others. -1 where the residuals themselves are not finite, and where the answer is true.
    /// </param>
    /// <remarks>
    /// The columns are scaled to length 1 and factored by QR, always the longest remainder next, so that neither units nor order matter
    /// and J'J, with its squared condition, is never formed.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A span does not fit the problem, or there are fewer residuals than parameters.</exception>
    public static bool Covariance<TProblem>(
        ref TProblem problem, ReadOnlySpan<double> parameters, Span<double> covariance, Span<double> workspace, out int blamed)
        where TProblem : struct, ILeastSquaresProblem, allows ref struct
    {
        RequireFit(ref problem, parameters.Length, workspace.Length);
        (int rows, int columns) = (problem.Residuals, problem.Parameters);
        ArgumentOutOfRangeException.ThrowIfNotEqual(covariance.Length, columns * columns);
        Span<double> residuals = Workspace.Take(ref workspace, rows);
        Span<double> jacobian = Workspace.Take(ref workspace, rows * columns);
        Span<double> lengths = Workspace.Take(ref workspace, columns);
        Span<double> diagonal = Workspace.Take(ref workspace, columns);
        Span<int> order = MemoryMarshal.Cast<double, int>(Workspace.Take(ref workspace, columns))[..columns];
        blamed = -1;
        if (!problem.Evaluate(parameters, residuals, jacobian))
        {
            return false;
        }

        blamed = ScaleColumns(jacobian, lengths, order);
        if (blamed < 0)
        {
            blamed = FactorPivoted(jacobian, diagonal, order);
        }

        if (blamed >= 0)
        {
            return false;
        }

        Span<double> column = residuals[..columns];
        UpperTriangle triangle = new(jacobian, rows, diagonal);
        covariance.Clear();
        for (int k = 0; k < columns; k++)
        {
            column.Clear();
            column[k] = 1;
            triangle.Solve(column);
            for (int a = 0; a <= k; a++)
            {
                for (int b = 0; b <= k; b++)
                {
                    covariance[(order[a] * columns) + order[b]] += column[a] / lengths[order[a]] * (column[b] / lengths[order[b]]);
                }
            }
        }

        return true;
    }

    /// <summary>Makes every column of length 1; returns the first that cannot be, or -1.</summary>
    private static int ScaleColumns(Span<double> jacobian, Span<double> lengths, Span<int> order)
    {
        int rows = jacobian.Length / order.Length;
        for (int j = 0; j < order.Length; j++)
        {
            Span<double> column = jacobian.Slice(j * rows, rows);
            order[j] = j;
            lengths[j] = Math.Sqrt(Householder.Squares(column));
            if (lengths[j] == 0 || !double.IsFinite(lengths[j]))
            {
                return j;
            }

            foreach (ref double element in column)
            {
                element /= lengths[j];
            }
        }

        return -1;
    }

    /// <summary>QR with column pivoting; returns the parameter whose remainder falls below the rank cut, or -1.</summary>
    private static int FactorPivoted(Span<double> jacobian, Span<double> diagonal, Span<int> order)
    {
        int rows = jacobian.Length / order.Length;
        for (int k = 0; k < order.Length; k++)
        {
            int longest = k;
            double most = 0;
            for (int j = k; j < order.Length; j++)
            {
                double remainder = Householder.Squares(jacobian.Slice((j * rows) + k, rows - k));
                (longest, most) = remainder > most ? (j, remainder) : (longest, most);
            }

            Span<double> column = jacobian.Slice(k * rows, rows);
            Span<double> other = jacobian.Slice(longest * rows, rows);
            for (int i = 0; i < rows; i++)
            {
                (column[i], other[i]) = (other[i], column[i]);
            }

            (order[k], order[longest]) = (order[longest], order[k]);
            diagonal[k] = Householder.Reflect(column, k);
            if (Math.Abs(diagonal[k]) <= RankCut)
            {
                return order[k];
            }

            Householder.Apply(column, diagonal[k], k, jacobian[((k + 1) * rows)..]);
        }

        return -1;
    }
}
