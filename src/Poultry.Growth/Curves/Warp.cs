namespace Poultry.Growth.Curves;

/// <summary>g(t) = (1 - exp(-k t))/k, the age that growth sees: as long as t while k is small, bounded by 1/k for k above 0.</summary>
internal readonly struct Warp(double k)
{
    /// <summary>Below this k t the differences of the closed form cancel; the series is exact to the last bit there.</summary>
    private const double SeriesLimit = 0.02;

    private readonly double inverse = 1 / k;

    /// <summary>The value and its derivative by k.</summary>
    public void At(double t, out double value, out double byK)
    {
        double z = k * t;
        if (Math.Abs(z) > SeriesLimit)
        {
            double x = Math.Exp(-z);
            value = (1 - x) * inverse;
            byK = ((t * x) - value) * inverse;
            return;
        }

        double series = (1.0 / 120) - (z / 720);
        series = (-1.0 / 24) + (z * series);
        series = (1.0 / 6) + (z * series);
        series = (-1.0 / 2) + (z * series);
        value = t * (1 + (z * series));
        double slope = (-1.0 / 144) + (z / 840);
        slope = (1.0 / 30) + (z * slope);
        slope = (-1.0 / 8) + (z * slope);
        slope = (1.0 / 3) + (z * slope);
        slope = (-1.0 / 2) + (z * slope);
        byK = t * t * slope;
    }
}
