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
        ReadOnlySpan<double> below = reflection[k..];
        for (; matrix.Length > 0; matrix = matrix[reflection.Length..])
        {
            Span<double> column = matrix[k..reflection.Length];
            Lanes.Add(factor * Lanes.Dot(below, column), below, column);
        }
    }

    /// <summary>The sum of squares.</summary>
    public static double Squares(ReadOnlySpan<double> values) => Lanes.Dot(values, values);
}
