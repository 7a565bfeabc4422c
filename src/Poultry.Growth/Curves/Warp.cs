using System.Runtime.Intrinsics;

namespace Poultry.Growth.Curves;

/// <summary>g(t) = (1 - exp(-k t))/k, the age that growth sees: as long as t while k is small, bounded by 1/k for k above 0.</summary>
internal readonly struct Warp(double k)
{
    /// <summary>Below this k t the differences of the closed form cancel. At the seam the series leaves off 1e-14 of the value and 2e-14 of the slope, the closed form as much; within a third of it nothing.</summary>
    private const double SeriesLimit = 0.02;

    private readonly double inverse = 1 / k;

    /// <summary>exp(-k t) at four ages.</summary>
    public Vector256<double> Decay(Vector256<double> t) => Vector256.Exp(-(k * t));

    /// <summary>The values and their derivatives by k at four ages, from their <see cref="Decay"/>.</summary>
    public void At(Vector256<double> t, Vector256<double> decay, out Vector256<double> value, out Vector256<double> byK)
    {
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> z = k * t;
        value = (one - decay) * inverse;
        byK = ((t * decay) - value) * inverse;
        Vector256<double> near = Vector256.LessThanOrEqual(Vector256.Abs(z), Vector256.Create(SeriesLimit));
        if (near == Vector256<double>.Zero)
        {
            return;
        }

        Vector256<double> series = Vector256.Create(1.0 / 120) - (z * (1.0 / 720));
        series = Vector256.Create(-1.0 / 24) + (z * series);
        series = Vector256.Create(1.0 / 6) + (z * series);
        series = Vector256.Create(-1.0 / 2) + (z * series);
        value = Vector256.ConditionalSelect(near, t * (one + (z * series)), value);
        Vector256<double> slope = Vector256.Create(-1.0 / 144) + (z * (1.0 / 840));
        slope = Vector256.Create(1.0 / 30) + (z * slope);
        slope = Vector256.Create(-1.0 / 8) + (z * slope);
        slope = Vector256.Create(1.0 / 3) + (z * slope);
        slope = Vector256.Create(-1.0 / 2) + (z * slope);
        byK = Vector256.ConditionalSelect(near, t * t * slope, byK);
    }
}
