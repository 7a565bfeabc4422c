namespace Poultry.Growth.Numerics;

/// <summary>The parabola nearest to points, by least squares.</summary>
internal static class Parabola
{
    /// <summary>Constant, slope and curvature.</summary>
    public static double[] Fit(double[] x, double[] y) => MathNet.Numerics.Fit.Polynomial(x, y, 2);
}
