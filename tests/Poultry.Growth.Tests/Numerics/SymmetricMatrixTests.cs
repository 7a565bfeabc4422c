using MathNet.Numerics.LinearAlgebra;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>Small symmetric systems beside MathNet.Numerics' dense LU (reference library).</summary>
public class SymmetricMatrixTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    public void Solves_what_MathNet_solves(int n)
    {
        (Matrix<double> matrix, Vector<double> right) = System(n);
        Vector<double> expected = matrix.Solve(right);

        double[] lower = [.. matrix.LowerTriangle().ToRowMajorArray()];
        double[] x = right.ToArray();
        SymmetricMatrix.Solve(lower, x, out double form).Should().BeTrue();

        form.Should().BeApproximately(right * expected, 1e-12 * form);
        for (int i = 0; i < n; i++)
        {
            x[i].Should().BeApproximately(expected[i], 1e-12 * expected.L2Norm());
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void Inverts_what_MathNet_inverts(int n)
    {
        Matrix<double> matrix = System(n).Matrix;
        double[] rows = matrix.ToRowMajorArray();
        SymmetricMatrix.Invert(rows, n, rows).Should().BeTrue("the inverse may take the room of the matrix");

        Matrix<double> inverse = matrix.Inverse();
        (Matrix<double>.Build.DenseOfRowMajor(n, n, rows) - inverse).FrobeniusNorm().Should().BeLessThan(1e-12 * inverse.FrobeniusNorm());
    }

    [Theory]
    [InlineData(new[] { 0.0 })]
    [InlineData(new[] { double.NaN })]
    [InlineData(new[] { double.PositiveInfinity })]
    [InlineData(new[] { 1.0, 2, 2, 4 })]
    [InlineData(new[] { 1.0, 2, 2, 1 })]
    public void What_is_not_positive_definite_has_no_solution(double[] matrix)
    {
        int n = (int)Math.Sqrt(matrix.Length);
        SymmetricMatrix.Invert(matrix, n, new double[matrix.Length]).Should().BeFalse();
        SymmetricMatrix.Solve(matrix, new double[n], out _).Should().BeFalse();
    }

    private static (Matrix<double> Matrix, Vector<double> Right) System(int n)
    {
        Matrix<double> root = Matrix<double>.Build.Dense(n + 2, n, (i, j) => (i == j ? 2 : 0) + Math.Sin((3 * i) + (5 * j) + 1));
        return (root.TransposeThisAndMultiply(root), Vector<double>.Build.Dense(n, i => Math.Cos(2 * i)));
    }
}
