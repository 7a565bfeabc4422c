namespace Poultry.Growth.Numerics;

/// <summary>When a least-squares search stops. The default value asks for a certificate of 1e-9 within 2000 evaluations.</summary>
internal readonly struct LeastSquaresOptions
{
    /// <summary>The certificate at which the search is content, above 0; the default is 1e-9.</summary>
    public double CertificateTarget { get => field == 0 ? 1e-9 : field; init; }

    /// <summary>How often the residuals may be computed, 1 or more; the default is 2000, and the hardest problem of NIST takes about 600.</summary>
    public int EvaluationLimit { get => field == 0 ? 2000 : field; init; }
}
