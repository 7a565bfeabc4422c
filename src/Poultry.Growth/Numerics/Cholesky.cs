namespace Poultry.Growth.Numerics;

/// <summary>Cholesky's factor L of a small symmetric matrix, L L' = M, row by row in place; only the lower triangle is read and written.</summary>
internal static class Cholesky
{
    /// <summary>A variance counts as explained by others when less than this share of it is left.</summary>
    private const double RankCut = 1e-12;

    /// <summary>Factors a matrix; false where it is not positive definite.</summary>
    public static bool Factor(Span<double> matrix, int n)
    {
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[(i * n) + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= matrix[(i * n) + k] * matrix[(j * n) + k];
                }

                if (i != j)
                {
                    matrix[(i * n) + j] = sum / matrix[(j * n) + j];
                }
                else if (sum > 0 && double.IsFinite(sum))
                {
                    matrix[(i * n) + i] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Factors a covariance in which some numbers may be fixed by others, such as the same age twice: what is left of them below rounding counts as 0.</summary>
    public static void FactorSemidefinite(Span<double> matrix, int n)
    {
        for (int j = 0; j < n; j++)
        {
            double whole = matrix[(j * n) + j];
            double pivot = whole;
            for (int k = 0; k < j; k++)
            {
                pivot -= matrix[(j * n) + k] * matrix[(j * n) + k];
            }

            double root = pivot > RankCut * whole ? Math.Sqrt(pivot) : 0;
            matrix[(j * n) + j] = root;
            for (int i = j + 1; i < n; i++)
            {
                double sum = matrix[(i * n) + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= matrix[(i * n) + k] * matrix[(j * n) + k];
                }

                matrix[(i * n) + j] = root > 0 ? sum / root : 0;
            }
        }
    }

    /// <summary>Solves L x = b in place.</summary>
    public static void SolveLower(ReadOnlySpan<double> factor, int n, Span<double> b)
    {
        for (int i = 0; i < n; i++)
        {
            double sum = b[i];
            for (int k = 0; k < i; k++)
            {
                sum -= factor[(i * n) + k] * b[k];
            }

            b[i] = sum / factor[(i * n) + i];
        }
    }

    /// <summary>Solves L' x = b in place.</summary>
    public static void SolveUpper(ReadOnlySpan<double> factor, int n, Span<double> b)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            double sum = b[i];
            for (int k = i + 1; k < n; k++)
            {
                sum -= factor[(k * n) + i] * b[k];
            }

            b[i] = sum / factor[(i * n) + i];
        }
    }

    /// <summary>ln |M|.</summary>
    public static double LogDeterminant(ReadOnlySpan<double> factor, int n)
    {
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            sum += Math.Log(factor[(i * n) + i]);
        }

        return 2 * sum;
    }
}
