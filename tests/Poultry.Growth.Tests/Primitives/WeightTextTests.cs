using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Primitives;

/// <summary>A weight in a sentence stands in both units, in digits that mean something.</summary>
public class WeightTextTests
{
    [Theory]
    [InlineData(0.0009, "0.9 g (0.03 oz)")]
    [InlineData(0.148, "148 g (5.22 oz)")]
    [InlineData(0.9999, "999.9 g (35.27 oz)")]
    [InlineData(1, "1 kg (2.2 lb)")]
    [InlineData(2.043, "2.043 kg (4.5 lb)")]
    [InlineData(0.45359237 * 5, "2.268 kg (5 lb)")]
    [InlineData(9999, "9999 kg (22044.02 lb)")]
    [InlineData(12_500, "12500 kg (27558 lb)")]
    [InlineData(99_999, "99999 kg (220460 lb)")]
    [InlineData(1e5, "1E+05 kg (2.2E+05 lb)")]
    [InlineData(-0.124, "-124 g (-4.37 oz)")]
    [InlineData(-2.5, "-2.5 kg (-5.51 lb)")]
    [InlineData(3.2e15, "3.2E+15 kg (7.1E+15 lb)")]
    public void Small_weights_are_in_grams_those_of_birds_in_kilograms_and_absurd_ones_in_powers_of_ten(double kilograms, string text) =>
        WeightText.Of(kilograms).Should().Be(text);

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ru-RU")]
    public void It_reads_the_same_in_every_culture(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);

            new[] { 0.1754, 2.043, 3.2e15 }.Select(WeightText.Of).Should().Equal("175.4 g (6.19 oz)", "2.043 kg (4.5 lb)", "3.2E+15 kg (7.1E+15 lb)");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
