using System.Runtime.Intrinsics;
using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.Curves;

/// <summary>The age that growth sees, against its own series to thirty terms on both sides of the seam.</summary>
public class WarpTests
{
    [Theory]
    [InlineData(0.0199, 2.5e-14), InlineData(-0.0199, 2.5e-14), InlineData(0.006, 5e-16), InlineData(-0.006, 5e-16), InlineData(1e-9, 5e-16)]
    [InlineData(0.0201, 3e-12), InlineData(-0.0201, 3e-12), InlineData(0.7, 1e-14), InlineData(-1.3, 1e-14)]
    public void It_has_its_digits_on_both_sides_of_the_seam(double z, double relative)
    {
        const double t = 25;
        (double value, double byK, double sign, double factorial) = (0, 0, 1, 1);
        for (int n = 0; n <= 30; n++)
        {
            factorial *= n + 1;
            value += t * sign * Math.Pow(z, n) / factorial;
            byK += n == 0 ? 0 : t * t * n * sign * Math.Pow(z, n - 1) / factorial;
            sign = -sign;
        }

        Warp warp = new(z / t);
        Vector256<double> age = Vector256.Create(t);
        warp.At(age, warp.Decay(age), out Vector256<double> got, out Vector256<double> gotByK);

        got[0].Should().BeApproximately(value, relative * Math.Abs(value));
        gotByK[0].Should().BeApproximately(byK, relative * Math.Abs(byK));
    }
}
