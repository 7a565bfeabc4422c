using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

public class RandomStreamTests
{
    /// <summary>A million normal numbers: mean within 4 standard errors of 0, variance of 1, fourth moment of 3.</summary>
    [Fact]
    public void Normal_numbers_have_the_moments_of_the_normal()
    {
        const int Count = 1_000_000;
        RandomStream stream = new(1, 2, 3);
        (double first, double second, double fourth) = (0, 0, 0);
        for (int i = 0; i < Count; i++)
        {
            double z = stream.NextNormal();
            first += z / Count;
            second += z * z / Count;
            fourth += z * z * z * z / Count;
        }

        first.Should().BeInRange(-0.004, 0.004);
        second.Should().BeApproximately(1, 4 * Math.Sqrt(2.0 / Count));
        fourth.Should().BeApproximately(3, 4 * Math.Sqrt(96.0 / Count));
    }

    /// <summary>First numbers of neighbouring draws, seeds and purposes: uncorrelated within 4 standard errors.</summary>
    [Theory]
    [InlineData(1, 0, 0), InlineData(0, 1, 0), InlineData(0, 0, 1)]
    public void Neighbouring_streams_have_nothing_to_do_with_each_other(int seedStep, int drawStep, int purposeStep)
    {
        const int Count = 100_000;
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double here = new RandomStream(i, i, 1).NextUniform() - 0.5;
            double there = new RandomStream(i + seedStep, i + drawStep, 1 + purposeStep).NextUniform() - 0.5;
            sum += 12 * here * there / Count;
        }

        sum.Should().BeInRange(-4 / Math.Sqrt(Count), 4 / Math.Sqrt(Count));
    }

    /// <summary>Moments of the standard normal are 1, 1, 3, 15, 105, ... (2n - 1)!!; nine points give them up to degree 17.</summary>
    [Fact]
    public void Nine_points_give_the_moments_of_the_normal()
    {
        double expected = 1;
        for (int degree = 0; degree <= 16; degree += 2)
        {
            double sum = 0;
            for (int i = 0; i < GaussHermite.Points.Length; i++)
            {
                sum += GaussHermite.Weights[i] * Math.Pow(GaussHermite.Points[i], degree);
            }

            sum.Should().BeApproximately(expected, 1e-12 * expected);
            expected *= degree + 1;
        }
    }
}
