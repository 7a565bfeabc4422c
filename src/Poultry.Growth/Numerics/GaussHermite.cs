namespace Poultry.Growth.Numerics;

/// <summary>Nine points and weights that give the mean of a smooth function of a standard normal number, exact for polynomials to degree 17.</summary>
/// <remarks>Roots of the Hermite polynomial He9; Abramowitz and Stegun, table 25.10, in the scale of the standard normal (own arithmetic to 16 digits).</remarks>
internal static class GaussHermite
{
    /// <summary>The points, in standard deviations.</summary>
    public static ReadOnlySpan<double> Points =>
    [
        -4.512745863399783, -3.20542900285647, -2.07684797867783, -1.023255663789133, 0, 1.023255663789133, 2.07684797867783, 3.20542900285647,
        4.512745863399783,
    ];

    /// <summary>Their weights, which sum to 1.</summary>
    public static ReadOnlySpan<double> Weights =>
    [
        2.2345844007746583e-05, 0.0027891413212317675, 0.04991640676521788, 0.2440975028949394, 0.4063492063492064, 0.2440975028949394,
        0.04991640676521788, 0.0027891413212317675, 2.2345844007746583e-05,
    ];
}
