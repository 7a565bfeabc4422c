namespace Poultry.Growth.Numerics;

/// <summary>The correlation of a stationary process that is smooth once: (1 + r) exp(-r), r = sqrt(3) |s - t| / length (Matérn, 3/2).</summary>
internal static class Matern
{
    private const double Root3 = 1.7320508075688772;

    /// <summary>The correlation at a distance.</summary>
    /// <param name="distance">Of either sign.</param>
    /// <param name="length">Over which it fades, in the unit of the distance, above 0.</param>
    public static double Correlation(double distance, double length)
    {
        double r = Root3 * Math.Abs(distance) / length;
        return (1 + r) * Math.Exp(-r);
    }
}
