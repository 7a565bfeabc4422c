using System.Runtime.Intrinsics;
using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>Four at a time gives every number what it would get anywhere else.</summary>
public class LanesTests
{
    [Fact]
    public void An_exponential_depends_neither_on_its_place_nor_on_its_neighbours()
    {
        for (int i = 0; i < 400; i++)
        {
            double exponent = (40 * Math.Sin(1.7 * i)) - 5;
            double value = Vector256.Exp(Vector256.Create(exponent))[0];

            (value / Math.Exp(exponent)).Should().BeApproximately(1, 5e-16, "right to the last bits");
            for (int place = 0; place < 4; place++)
            {
                Vector256.Exp(Vector256.Create(0, 20.5, -30, exponent + 1).WithElement(place, exponent))[place].Should().Be(value);
            }
        }
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
