using MathNet.Numerics.Interpolation;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>Our monotone cubic against the piecewise cubic (PCHIP) of MathNet.Numerics, an independent implementation.</summary>
public class MonotoneCubicTests
{
    private static readonly double[] X = [0, 7, 14, 15, 30, 35, 42, 70];
    private static readonly double[] Y = [0.042, 0.183, 0.463, 0.463, 1.403, 1.973, 2.55, 4.41];

    [Fact]
    public void It_agrees_with_an_independent_implementation()
    {
        MonotoneCubic ours = new(X, Y);
        CubicSpline theirs = CubicSpline.InterpolatePchipSorted(X, Y);
        for (double at = 0.25; at < 70; at += 0.5)
        {
            ours.Value(at).Should().BeApproximately(theirs.Interpolate(at), 1e-13, $"at {at}");
            ours.Slope(at).Should().BeApproximately(theirs.Differentiate(at), 1e-13, $"at {at}");
        }
    }

    [Fact]
    public void It_never_falls_and_stays_between_its_points()
    {
        MonotoneCubic curve = new(X, Y);
        for (double at = 0; at <= 70; at += 0.125)
        {
            int before = Math.Min(Array.FindLastIndex(X, x => x <= at), X.Length - 2);
            curve.Value(at).Should().BeInRange(Y[before], Y[before + 1]);
            curve.Slope(at).Should().BeGreaterThanOrEqualTo(-1e-16);
        }
    }

    [Fact]
    public void Outside_its_points_it_is_no_number()
    {
        MonotoneCubic curve = new(X, Y);
        foreach (double at in new[] { -0.001, 70.001, double.NaN })
        {
            curve.Value(at).Should().Be(double.NaN);
            curve.Slope(at).Should().Be(double.NaN);
        }
    }
}
