namespace Poultry.Growth.Numerics;

/// <summary>How a least-squares search ended.</summary>
internal enum LeastSquaresStatus
{
    /// <summary>The evaluation limit was reached, or nothing improved any more, and the certificate is too large to claim a minimum.</summary>
    NotConverged,

    /// <summary>A certified minimum: the certificate is below <see cref="LeastSquares.CertificateLimit"/> and every parameter moves the residuals in its own way.</summary>
    Converged,

    /// <summary>The residuals are zero, or so small that the rounding of the parameters alone moves them by more than a certificate may leave.</summary>
    ExactFit,

    /// <summary>The residuals or their derivatives at the start are not finite.</summary>
    NotFinite,
}
