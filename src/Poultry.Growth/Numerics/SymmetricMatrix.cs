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
