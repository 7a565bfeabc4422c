namespace Poultry.Growth.Numerics;

/// <summary>Householder reflections, in place: a column keeps R above its diagonal and its reflection from the diagonal down; the diagonal of R stands apart.</summary>
internal static class Householder
{
    /// <summary>Turns a column into the reflection that clears it below row <paramref name="k"/>, and returns its diagonal element of R.</summary>
    public static double Reflect(Span<double> column, int k)
    {
        double norm = Math.Sqrt(Squares(column[k..]));
        double diagonal = column[k] > 0 ? -norm : norm;
        column[k] -= diagonal;
        return diagonal;
    }

    /// <summary>Applies a reflection to every column of a matrix of the same height. A column that was zero reflects nothing.</summary>
    public static void Apply(ReadOnlySpan<double> reflection, double diagonal, int k, Span<double> matrix)
    {
        double divisor = diagonal * reflection[k];
        if (divisor == 0)
        {
            return;
        }

        double factor = 1 / divisor;
        for (; matrix.Length > 0; matrix = matrix[reflection.Length..])
        {
            double product = 0;
            for (int i = k; i < reflection.Length; i++)
            {
                product += reflection[i] * matrix[i];
            }

            product *= factor;
            for (int i = k; i < reflection.Length; i++)
            {
                matrix[i] += product * reflection[i];
            }
        }
    }

    /// <summary>The sum of squares, in index order.</summary>
    public static double Squares(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value * value;
        }

        return sum;
    }
}
