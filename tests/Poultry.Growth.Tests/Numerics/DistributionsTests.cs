using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>
/// Against R 4.2, the call beside each value. R prints fifteen digits; the incomplete beta and gamma functions underneath keep twelve, and
/// twelve are asked for.
/// </summary>
public class DistributionsTests
{
    [Theory]
    [InlineData(0.5, 3, 0)] // qt(0.5, 3)
    [InlineData(0.95, 1, 6.31375151467504)] // qt(0.95, 1)
    [InlineData(0.975, 1, 12.7062047361747)] // qt(0.975, 1)
    [InlineData(0.9999, 1, 3183.0987571185)] // qt(0.9999, 1)
    [InlineData(1e-06, 1, -318309.886182743)] // qt(1e-06, 1)
    [InlineData(0.95, 2, 2.91998558035372)] // qt(0.95, 2)
    [InlineData(0.975, 3, 3.18244630528371)] // qt(0.975, 3)
    [InlineData(0.95, 6, 1.9431802805153)] // qt(0.95, 6)
    [InlineData(0.995, 11, 3.10580651553928)] // qt(0.995, 11)
    [InlineData(0.9995, 30, 3.64595863504206)] // qt(0.9995, 30)
    [InlineData(0.05, 8, -1.8595480375309)] // qt(0.05, 8)
    [InlineData(0.6, 5, 0.267180865704145)] // qt(0.6, 5)
    [InlineData(1e-06, 6, -17.8303145006555)] // qt(1e-06, 6)
    [InlineData(1e-20, 4, -131607.401282585)] // qt(1e-20, 4)
    [InlineData(0.975, 120, 1.97993040508242)] // qt(0.975, 120)
    [InlineData(0.975, 1000, 1.96233908082641)] // qt(0.975, 1000)
    [InlineData(0.975, 2.5, 3.57465484200369)] // qt(0.975, 2.5)
    [InlineData(0.25, 7, -0.711141778081787)] // qt(0.25, 7)
    [InlineData(0.75, 7, 0.711141778081787)] // qt(0.75, 7)
    public void Student_quantile(double probability, double degreesOfFreedom, double expected) =>
        Distributions.StudentQuantile(probability, degreesOfFreedom).Should().BeApproximately(expected, 1e-12 * Math.Abs(expected));

    [Theory]
    [InlineData(1e-300, -37.0470962993612)] // qnorm(1e-300)
    [InlineData(1e-20, -9.26234008979841)] // qnorm(1e-20)
    [InlineData(1e-06, -4.7534243088229)] // qnorm(1e-06)
    [InlineData(0.025, -1.95996398454005)] // qnorm(0.025)
    [InlineData(0.3, -0.524400512708041)] // qnorm(0.3)
    [InlineData(0.5, 0)] // qnorm(0.5)
    [InlineData(0.9, 1.2815515655446)] // qnorm(0.9)
    [InlineData(0.95, 1.64485362695147)] // qnorm(0.95)
    [InlineData(0.975, 1.95996398454005)] // qnorm(0.975)
    [InlineData(0.999999, 4.75342430881709)] // qnorm(0.999999)
    public void Normal_quantile(double probability, double expected) =>
        Distributions.NormalQuantile(probability).Should().BeApproximately(expected, 1e-12 * Math.Abs(expected));

    [Theory]
    [InlineData(-10, 7.61985302416053e-24)] // pnorm(-10)
    [InlineData(-5, 2.86651571879194e-07)] // pnorm(-5)
    [InlineData(-1.96, 0.0249978951482204)] // pnorm(-1.96)
    [InlineData(-0.1, 0.460172162722971)] // pnorm(-0.1)
    [InlineData(0, 0.5)] // pnorm(0)
    [InlineData(0.5, 0.691462461274013)] // pnorm(0.5)
    [InlineData(1, 0.841344746068543)] // pnorm(1)
    [InlineData(2.5, 0.993790334674224)] // pnorm(2.5)
    [InlineData(6, 0.999999999013412)] // pnorm(6)
    public void Normal_probability(double value, double expected) =>
        Distributions.NormalProbability(value).Should().BeApproximately(expected, 1e-12 * expected);

    [Theory]
    [InlineData(0, 3, 1)] // pchisq(0, 3, lower.tail = FALSE)
    [InlineData(0.001, 1, 0.97477287936996)] // pchisq(0.001, 1, lower.tail = FALSE)
    [InlineData(3.841458820694124, 1, 0.05)] // pchisq(3.84145882069412, 1, lower.tail = FALSE)
    [InlineData(0.5, 2, 0.778800783071405)] // pchisq(0.5, 2, lower.tail = FALSE)
    [InlineData(10, 2, 0.00673794699908547)] // pchisq(10, 2, lower.tail = FALSE)
    [InlineData(7.8, 3, 0.0503310978598534)] // pchisq(7.8, 3, lower.tail = FALSE)
    [InlineData(200, 3, 4.21854110719204e-43)] // pchisq(200, 3, lower.tail = FALSE)
    [InlineData(1000, 5, 6.0100776879208e-214)] // pchisq(1000, 5, lower.tail = FALSE)
    [InlineData(10, 10, 0.440493285065212)] // pchisq(10, 10, lower.tail = FALSE)
    [InlineData(120, 100, 0.0844066810936918)] // pchisq(120, 100, lower.tail = FALSE)
    [InlineData(4.2, 2.5, 0.177847212756407)] // pchisq(4.2, 2.5, lower.tail = FALSE)
    public void Chi_square_upper_tail(double value, double degreesOfFreedom, double expected) =>
        Distributions.ChiSquareUpperTail(value, degreesOfFreedom).Should().BeApproximately(expected, 1e-12 * expected);

    [Theory]
    [InlineData(0, 2, 5, 1)] // pf(0, 2, 5, lower.tail = FALSE)
    [InlineData(0.5, 1, 6, 0.506021422888184)] // pf(0.5, 1, 6, lower.tail = FALSE)
    [InlineData(4, 1, 6, 0.092426311531675)] // pf(4, 1, 6, lower.tail = FALSE)
    [InlineData(1, 3, 5, 0.464854789993635)] // pf(1, 3, 5, lower.tail = FALSE)
    [InlineData(30, 3, 5, 0.00127004155368554)] // pf(30, 3, 5, lower.tail = FALSE)
    [InlineData(3.06, 2, 149, 0.0498455267065062)] // pf(3.06, 2, 149, lower.tail = FALSE)
    [InlineData(1000, 2, 149, 4.47470122239053e-87)] // pf(1000, 2, 149, lower.tail = FALSE)
    [InlineData(4, 10, 1, 0.372106394257027)] // pf(4, 10, 1, lower.tail = FALSE)
    [InlineData(0.01, 1, 1000, 0.920364369023604)] // pf(0.01, 1, 1000, lower.tail = FALSE)
    [InlineData(4, 50, 60, 2.62893831703958e-07)] // pf(4, 50, 60, lower.tail = FALSE)
    [InlineData(2.2, 1.5, 7.5, 0.179559537626533)] // pf(2.2, 1.5, 7.5, lower.tail = FALSE)
    public void F_upper_tail(double value, double numerator, double denominator, double expected) =>
        Distributions.FUpperTail(value, numerator, denominator).Should().BeApproximately(expected, 1e-12 * expected);

    [Theory]
    [InlineData(0.5 + 1e-10, 1)]
    [InlineData(0.5 - 1e-10, 1)]
    [InlineData(1e-100, 1)]
    [InlineData(1 - 1e-15, 1)]
    public void Student_with_one_degree_is_Cauchy(double probability, double degreesOfFreedom)
    {
        // tan(pi (p - 1/2)), which keeps its digits near the middle, or -1 / tan(pi p), which does near the ends.
        double expected = Math.Abs(probability - 0.5) < 0.25 ? Math.Tan(Math.PI * (probability - 0.5))
            : probability < 0.5 ? -1 / Math.Tan(Math.PI * probability)
            : 1 / Math.Tan(Math.PI * (1 - probability));

        Distributions.StudentQuantile(probability, degreesOfFreedom).Should().BeApproximately(expected, 1e-12 * Math.Abs(expected));
    }

    /// <summary>Eleven digits here: beyond a thousand degrees the incomplete beta function loses some, and beyond 20,000 an expansion takes over.</summary>
    [Theory]
    [InlineData(0.975, 1e4, 1.96020123989063)] // qt(0.975, 1e4)
    [InlineData(0.6, 1e4, 0.253353843445727)] // qt(0.6, 1e4)
    [InlineData(1e-20, 1e4, -9.2824741532543)] // qt(1e-20, 1e4)
    [InlineData(0.975, 1.00001e5, 1.95998770729738)] // qt(0.975, 1.00001e5)
    [InlineData(0.6, 1.00001e5, 0.25334777715044)] // qt(0.6, 1.00001e5)
    [InlineData(1e-20, 1.00001e5, -9.26435015617507)] // qt(1e-20, 1.00001e5)
    [InlineData(0.975, 2147483646, 1.95996398564473)] // qt(0.975, 2147483646)
    [InlineData(1e-20, 2147483646, -9.2623401833832)] // qt(1e-20, 2147483646)
    [InlineData(0.975, double.PositiveInfinity, 1.95996398454005)] // qt(0.975, Inf)
    [InlineData(0.6, double.PositiveInfinity, 0.2533471031358)] // qt(0.6, Inf)
    public void Student_quantile_of_very_many_degrees(double probability, double degreesOfFreedom, double expected) =>
        Distributions.StudentQuantile(probability, degreesOfFreedom).Should().BeApproximately(expected, 1e-11 * Math.Abs(expected));

    [Fact]
    public void Student_quantile_is_the_same_from_both_sides_of_the_expansion()
    {
        foreach (double probability in (double[])[1e-10, 0.05, 0.49, 0.9, 0.9999])
        {
            double below = Distributions.StudentQuantile(probability, 2e4);
            Distributions.StudentQuantile(probability, 2e4 * (1 + 1e-14)).Should().BeApproximately(below, 1e-11 * Math.Abs(below));
        }
    }

    [Fact]
    public void Arguments_out_of_range_are_refused_by_name_value_and_range()
    {
        Refused(() => Distributions.StudentQuantile(1, 3), "1 is not allowed; expected 1E-100 to 0.999999999999999*probability*");
        Refused(() => Distributions.StudentQuantile(0.9, 0.5), "0.5 is not allowed; expected 1 to*degreesOfFreedom*");
        Refused(() => Distributions.StudentQuantile(0.9, double.NaN), "NaN is not allowed*degreesOfFreedom*");
        Refused(() => Distributions.StudentQuantile(double.NaN, 3), "NaN is not allowed*probability*");
        Refused(() => Distributions.NormalQuantile(0), "0 is not allowed; expected between 0 and 1*probability*");
        Refused(() => Distributions.NormalQuantile(1), "1 is not allowed*probability*");
        Refused(() => Distributions.NormalProbability(double.NaN), "NaN is not allowed*value*");
        Refused(() => Distributions.ChiSquareUpperTail(-1, 2), "-1 is not allowed; expected 0 or more*value*");
        Refused(() => Distributions.ChiSquareUpperTail(1, 0), "0 is not allowed; expected above 0*degreesOfFreedom*");
        Refused(() => Distributions.ChiSquareUpperTail(double.PositiveInfinity, 2), "* is not allowed; expected 0 or more*value*");
        Refused(() => Distributions.FUpperTail(-1, 1, 2), "-1 is not allowed*value*");
        Refused(() => Distributions.FUpperTail(1, 0, 2), "0 is not allowed*numeratorDegrees*");
        Refused(() => Distributions.FUpperTail(1, 1, -2), "-2 is not allowed*denominatorDegrees*");
    }

    private static void Refused(Func<double> asking, string message) =>
        asking.Should().Throw<ArgumentOutOfRangeException>().WithMessage(message);
}
