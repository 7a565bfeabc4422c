using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>Four at a time gives every number what it would get anywhere else.</summary>
public class LanesTests
{
    private static readonly double[] Exponents = [.. Enumerable.Range(0, 400).Select(i => (40 * Math.Sin(1.7 * i)) - 5)];

    [Fact]
    public void An_exponential_depends_neither_on_its_place_nor_on_its_neighbours()
    {
        double[] all = [.. Exponents];
        Lanes.Exp(all);

        for (int length = 1; length <= 7; length++)
        {
            for (int from = 0; from + length <= Exponents.Length; from++)
            {
                double[] some = Exponents[from..(from + length)];
                Lanes.Exp(some);
                some.Should().Equal(all[from..(from + length)]);
            }
        }
    }

    [Fact]
    public void An_exponential_is_right_to_the_last_bits()
    {
        double[] all = [.. Exponents];
        Lanes.Exp(all);

        all.Zip(Exponents, (value, exponent) => Math.Abs((value / Math.Exp(exponent)) - 1)).Max().Should().BeLessThan(5e-16);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(11)]
    public void Products_are_summed_and_multiples_added_over_the_whole_column(int length)
    {
        double[] a = [.. Enumerable.Range(1, length).Select(i => (double)i)];
        double[] b = [.. Enumerable.Range(1, length).Select(i => (double)(i * i))];

        Lanes.Dot(a, b).Should().Be(a.Zip(b, (x, y) => x * y).Sum());
        Lanes.Add(0.5, a, b);
        b.Should().Equal(a.Select(x => (x * x) + (0.5 * x)));
        Lanes.Padded(length).Should().BeGreaterThanOrEqualTo(length).And.BeLessThan(length + 4).And.Match(padded => padded % 4 == 0);
    }

    [Theory]
    [InlineData("gompertz")]
    [InlineData("richards")]
    [InlineData("von-bertalanffy")]
    public void A_curve_at_one_age_is_to_the_last_bit_the_curve_at_many(string family)
    {
        CurveShape shape = CurveFamilies.All.Single(known => known.Model.Id == family).Shape;
        double[] ages = [.. Enumerable.Range(0, 90).Select(day => day + 0.5)];
        double[] q = [0.04, 0.02, 0.3];
        (double[] logs, double[] slopes) = (new double[ages.Length], new double[ages.Length * shape.Count]);
        shape.Evaluate(q, 56, ages, logs, slopes);

        for (int i = 0; i < ages.Length; i++)
        {
            (double[] log, double[] slope) = (new double[1], new double[shape.Count]);
            shape.Evaluate(q, 56, [ages[i]], log, slope);
            log[0].Should().Be(logs[i]);
            slope.Should().Equal(Enumerable.Range(0, shape.Count).Select(j => slopes[(j * ages.Length) + i]));
        }
    }
}
