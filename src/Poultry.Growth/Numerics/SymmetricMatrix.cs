namespace Poultry.Growth.Numerics;

/// <summary>What is asked of small symmetric positive definite matrices, row by row, beside their factor (<see cref="Cholesky"/>).</summary>
internal static class SymmetricMatrix
{
    /// <summary>M⁻¹ by Cholesky's factor; false, and nothing of meaning, where M is not positive definite.</summary>
    /// <param name="matrix">M, n rows of n.</param>
    /// <param name="n">Rows, at most 16.</param>
    /// <param name="inverse">Receives the inverse; may be the same room as <paramref name="matrix"/>.</param>
    public static bool Invert(ReadOnlySpan<double> matrix, int n, Span<double> inverse)
    {
        Span<double> factor = stackalloc double[256];
        factor = factor[..(n * n)];
        matrix[..(n * n)].CopyTo(factor);
        if (!Cholesky.Factor(factor, n))
        {
            return false;
        }

        Span<double> column = stackalloc double[16];
        column = column[..n];
        for (int j = 0; j < n; j++)
        {
            column.Clear();
            column[j] = 1;
            Cholesky.SolveLower(factor, n, column);
            Cholesky.SolveUpper(factor, n, column);
            for (int i = 0; i < n; i++)
            {
                inverse[(i * n) + j] = column[i];
            }
        }

        return true;
    }

    /// <summary>x becomes M⁻¹ x by elimination, which takes no roots; false, and nothing of meaning, where M is not positive definite.</summary>
    /// <param name="matrix">M, of which the lower triangle is read and lost.</param>
    /// <param name="x">The right-hand side on entry, the solution on return.</param>
    /// <param name="form">x' M⁻¹ x of the right-hand side.</param>
    public static bool Solve(Span<double> matrix, Span<double> x, out double form)
    {
        int n = x.Length;
        form = 0;
        for (int k = 0; k < n; k++)
        {
            double pivot = matrix[(k * n) + k];
            if (!(pivot > 0 && double.IsFinite(pivot)))
            {
                return false;
            }

            double inverse = 1 / pivot;
            matrix[(k * n) + k] = inverse;
            form += x[k] * x[k] * inverse;
            for (int i = k + 1; i < n; i++)
            {
                double share = matrix[(i * n) + k] * inverse;
                x[i] -= share * x[k];
                for (int j = k + 1; j <= i; j++)
                {
                    matrix[(i * n) + j] -= share * matrix[(j * n) + k];
                }
            }
        }

        for (int k = n - 1; k >= 0; k--)
        {
            for (int i = k + 1; i < n; i++)
            {
                x[k] -= matrix[(i * n) + k] * x[i];
            }

            x[k] *= matrix[(k * n) + k];
        }

        return true;
    }

    /// <summary>x' M x.</summary>
    public static double Form(ReadOnlySpan<double> matrix, ReadOnlySpan<double> x)
    {
        int n = x.Length;
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                sum += x[i] * matrix[(i * n) + j] * x[j];
            }
        }

        return sum;
    }

    /// <summary>M x.</summary>
    public static void Multiply(ReadOnlySpan<double> matrix, ReadOnlySpan<double> x, Span<double> product)
    {
        int n = x.Length;
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            for (int j = 0; j < n; j++)
            {
                sum += matrix[(i * n) + j] * x[j];
            }

            product[i] = sum;
        }
    }
}
