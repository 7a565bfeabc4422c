namespace Poultry.Growth.Numerics;

/// <summary>An upper triangular matrix whose columns lie <c>stride</c> apart, with its diagonal kept elsewhere: R of a QR factored in place.</summary>
internal readonly ref struct UpperTriangle(ReadOnlySpan<double> columns, int stride, ReadOnlySpan<double> diagonal)
{
    private readonly ReadOnlySpan<double> columns = columns;
    private readonly int stride = stride;

    public ReadOnlySpan<double> Diagonal { get; } = diagonal;

    /// <summary>The elements of a column above the diagonal.</summary>
    public ReadOnlySpan<double> Above(int column) => columns.Slice(column * stride, column);

    /// <summary>x becomes R⁻¹ x. A zero on the diagonal gives infinities.</summary>
    public void Solve(Span<double> x)
    {
        for (int j = Diagonal.Length - 1; j >= 0; j--)
        {
            ReadOnlySpan<double> above = Above(j);
            double known = x[j] / Diagonal[j];
            x[j] = known;
            for (int i = 0; i < above.Length; i++)
            {
                x[i] -= above[i] * known;
            }
        }
    }

    /// <summary>x becomes R⁻ᵀ x. A zero on the diagonal gives infinities.</summary>
    public void SolveTransposed(Span<double> x)
    {
        for (int j = 0; j < Diagonal.Length; j++)
        {
            ReadOnlySpan<double> above = Above(j);
            double rest = x[j];
            for (int i = 0; i < above.Length; i++)
            {
                rest -= above[i] * x[i];
            }

            x[j] = rest / Diagonal[j];
        }
    }

    /// <summary>x becomes Rᵀ x.</summary>
    public void TransposedMultiply(Span<double> x)
    {
        for (int j = Diagonal.Length - 1; j >= 0; j--)
        {
            ReadOnlySpan<double> above = Above(j);
            double sum = Diagonal[j] * x[j];
            for (int i = 0; i < above.Length; i++)
            {
                sum += above[i] * x[i];
            }

            x[j] = sum;
        }
    }

    /// <summary>The lower triangle of M + RᵀR, row by row.</summary>
    public void AddSquare(ReadOnlySpan<double> matrix, Span<double> sum)
    {
        int n = Diagonal.Length;
        for (int i = 0; i < n; i++)
        {
            ReadOnlySpan<double> column = Above(i);
            for (int j = 0; j <= i; j++)
            {
                ReadOnlySpan<double> other = Above(j);
                double product = j < i ? column[j] * Diagonal[j] : Diagonal[i] * Diagonal[i];
                for (int k = 0; k < other.Length; k++)
                {
                    product += column[k] * other[k];
                }

                sum[(i * n) + j] = matrix[(i * n) + j] + product;
            }
        }
    }

    /// <summary>|R x|².</summary>
    public double SquaresOfProduct(ReadOnlySpan<double> x)
    {
        double squares = 0;
        for (int i = 0; i < Diagonal.Length; i++)
        {
            double sum = Diagonal[i] * x[i];
            for (int j = i + 1; j < Diagonal.Length; j++)
            {
                sum += columns[(j * stride) + i] * x[j];
            }

            squares += sum * sum;
        }

        return squares;
    }
}
