using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Poultry.Growth.Numerics;

/// <summary>
/// Columns of numbers taken four at a time, on every machine. Where exponentials are taken the last four are padded, for <see cref="Vector256.Exp(Vector256{double})"/> differs from
/// <see cref="Math.Exp"/> in the last bit now and then: a number's result depends neither on its place in the column nor on how many stand beside it. All else is plain
/// arithmetic, the same alone or by four.
/// </summary>
internal static class Lanes
{
    private const int Count = 4;

    /// <summary>The length of a column whose last four are whole.</summary>
    public static int Padded(int length) => (length + Count - 1) / Count * Count;

    /// <summary>The whole fours of a column.</summary>
    public static Span<Vector256<double>> Of(Span<double> column) => MemoryMarshal.Cast<double, Vector256<double>>(column);

    /// <summary>The whole fours of a column.</summary>
    public static ReadOnlySpan<Vector256<double>> Of(ReadOnlySpan<double> column) => MemoryMarshal.Cast<double, Vector256<double>>(column);

    /// <summary>The sum of products.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector256<double>> fours = Of(a);
        ReadOnlySpan<Vector256<double>> others = Of(b)[..fours.Length];
        Vector256<double> sums = default;
        for (int i = 0; i < fours.Length; i++)
        {
            sums += fours[i] * others[i];
        }

        double sum = Vector256.Sum(sums);
        for (int i = fours.Length * Count; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>Adds a multiple of a column to another.</summary>
    public static void Add(double factor, ReadOnlySpan<double> column, Span<double> to)
    {
        Span<Vector256<double>> fours = Of(to);
        ReadOnlySpan<Vector256<double>> others = Of(column)[..fours.Length];
        for (int i = 0; i < fours.Length; i++)
        {
            fours[i] += factor * others[i];
        }

        for (int i = fours.Length * Count; i < to.Length; i++)
        {
            to[i] += factor * column[i];
        }
    }

    /// <summary>The sum of a column of whole fours.</summary>
    public static double Sum(ReadOnlySpan<double> column)
    {
        Vector256<double> sums = default;
        foreach (Vector256<double> four in Of(column))
        {
            sums += four;
        }

        return Vector256.Sum(sums);
    }
}
