namespace Poultry.Growth.Numerics;

/// <summary>What a least-squares search found; the parameters themselves are in the span that held the start.</summary>
internal readonly struct LeastSquaresResult
{
    /// <summary>How the search ended.</summary>
    public LeastSquaresStatus Status { get; init; }

    /// <summary>The sum of squared residuals at the parameters returned.</summary>
    public double SumOfSquares { get; init; }

    /// <summary>
    /// The share of the residual vector that the tangent plane could still explain, |Q'r| / |r| with J = QR (the relative offset of Bates and Watts).
    /// No single |J_j'r| / (|J_j| |r|) exceeds it, and no parameter is further from the minimum of the tangent plane than
    /// this number times the square root of the degrees of freedom times its standard error. 1 where a column of J is lost.
    /// </summary>
    public double Certificate { get; init; }

    /// <summary>How many points became the best seen.</summary>
    public int Iterations { get; init; }

    /// <summary>How often the residuals were computed, with or without derivatives.</summary>
    public int Evaluations { get; init; }
}
