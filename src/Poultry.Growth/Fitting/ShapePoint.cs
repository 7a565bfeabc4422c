using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>Where the search for a shape ended.</summary>
internal readonly struct ShapePoint
{
    public ShapePoint(in LeastSquaresResult result, double logScale) =>
        (Status, SumOfSquares, Certificate, Evaluations, LogScale) =
            (result.Status, result.SumOfSquares, result.Certificate, result.Evaluations, logScale);

    private ShapePoint(double sumOfSquares) =>
        (Status, SumOfSquares, Certificate, LogScale) = (LeastSquaresStatus.NotFinite, sumOfSquares, 1, double.NaN);

    /// <summary>No point at all.</summary>
    public static ShapePoint None { get; } = new(double.PositiveInfinity);

    public LeastSquaresStatus Status { get; }

    public double SumOfSquares { get; }

    public double Certificate { get; }

    /// <summary>How often the residuals were computed.</summary>
    public int Evaluations { get; }

    public double LogScale { get; }

    public bool IsOptimum => Status is LeastSquaresStatus.Converged or LeastSquaresStatus.ExactFit;

    /// <summary>A lower sum of squares wins, certified or not: a runaway with a lower sum says that the certified point is not the least. Equal sums: the certified one.</summary>
    public bool IsBetterThan(in ShapePoint other) =>
        SumOfSquares < other.SumOfSquares * (1 - 1e-9) || (SumOfSquares <= other.SumOfSquares * (1 + 1e-9) && IsOptimum && !other.IsOptimum);
}
