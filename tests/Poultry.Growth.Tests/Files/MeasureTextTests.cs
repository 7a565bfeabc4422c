using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>Temperatures, times, places, feed, money and air as text.</summary>
public class MeasureTextTests
{
    private delegate bool Reader<T>(ReadOnlySpan<char> text, out T value, out string? problem);

    [Theory]
    [InlineData("21C", 21)]
    [InlineData("70 F", 190.0 / 9)]
    [InlineData("-4.5c", -4.5)]
    [InlineData("32F", 0)]
    public void A_temperature_may_lie_below_zero(string text, double celsius) => Read<Temperature>(QuantityText.TryTemperature, text).DegreesCelsius.Should().BeApproximately(celsius, 1e-9);

    [Theory]
    [InlineData("12m2", 12)]
    [InlineData("550 cm2", 0.055)]
    [InlineData("120ft2", 11.1483648)]
    [InlineData("1ac", 4046.8564224)]
    [InlineData("0.4ha", 4000)]
    public void An_area(string text, double squareMeters) => Read<Area>(QuantityText.TryArea, text).SquareMeters.Should().BeApproximately(squareMeters, 1e-9);

    [Fact]
    public void Every_other_measure_takes_both_worlds_of_units()
    {
        Read<Length>(QuantityText.TryLength, "3ft").Meters.Should().BeApproximately(0.9144, 1e-12);
        Read<Length>(QuantityText.TryLength, "97cm").Meters.Should().BeApproximately(0.97, 1e-12);
        Read<StockingDensity>(QuantityText.TryFloorLoad, "6.5lb/ft2").KilogramsPerSquareMeter.Should().BeApproximately(31.73578, 1e-5);
        Read<StockingDensity>(QuantityText.TryFloorLoad, "33kg/m2").KilogramsPerSquareMeter.Should().Be(33);
        Read<AreaDensity>(QuantityText.TryFieldLoad, "170kg/ha").KilogramsPerSquareMeter.Should().BeApproximately(0.017, 1e-15);
        Read<AreaDensity>(QuantityText.TryFieldLoad, "151.67lb/ac").KilogramsPerSquareMeter.Should().BeApproximately(0.017, 1e-6);
        Read<SpecificEnergy>(QuantityText.TryFeedEnergy, "3100kcal/kg").MegajoulesPerKilogram.Should().BeApproximately(12.9704, 1e-12);
        Read<SpecificEnergy>(QuantityText.TryFeedEnergy, "13 MJ/kg").MegajoulesPerKilogram.Should().BeApproximately(13, 1e-12);
        Read<MassFlow>(QuantityText.TryDailyWeight, "55g/d").GramsPerDay.Should().BeApproximately(55, 1e-9);
        Read<MassFlow>(QuantityText.TryDailyWeight, "2oz/d").GramsPerDay.Should().BeApproximately(56.69904625, 1e-9);
        Read<UnitPrice>(QuantityText.TryUnitPrice, "4.30/lb").AmountPerKilogram.Should().BeApproximately(9.479877, 1e-6);
        Read<UnitPrice>(QuantityText.TryUnitPrice, "9.50/kg").AmountPerKilogram.Should().Be(9.5);
        Read<Speed>(QuantityText.TryAirSpeed, "100ft/min").MetersPerSecond.Should().BeApproximately(0.508, 1e-12);
        Read<Speed>(QuantityText.TryAirSpeed, "0.5m/s").MetersPerSecond.Should().Be(0.5);
        Read<Duration>(QuantityText.TryDuration, "90min").Hours.Should().BeApproximately(1.5, 1e-12);
        Read<VolumeConcentration>(QuantityText.TryGasContent, "3000ppm").PartsPerMillion.Should().BeApproximately(3000, 1e-9);
        Read<Money>(QuantityText.TryMoney, "9.50").Amount.Should().Be(9.5);
    }

    [Fact]
    public void What_is_none_is_refused_with_what_was_expected()
    {
        Refused<Area>(QuantityText.TryArea, "12m").Should().Be("\"12m\" has an unknown unit; expected an area with cm2, m2, ft2, ha or ac, as in 12m2");
        Refused<Area>(QuantityText.TryArea, "12").Should().Be("\"12\" has no unit; expected an area with cm2, m2, ft2, ha or ac, as in 12m2");
        Refused<Length>(QuantityText.TryLength, "12m2").Should().Be("\"12m2\" goes on after its unit; expected a length with mm, cm, m, in or ft, as in 97cm");
        Refused<Temperature>(QuantityText.TryTemperature, "21,5C").Should().Be("\"21,5C\" has a decimal comma; write \"21.5C\"");
        Refused<SpecificEnergy>(QuantityText.TryFeedEnergy, "3100kcal").Should().Contain("has an unknown unit; expected the energy of a feed with kcal/kg, kcal/lb or MJ/kg");
        Refused<UnitPrice>(QuantityText.TryUnitPrice, "9.50").Should().Be("\"9.50\" has no unit; expected a price by weight with /kg or /lb, as in 9.50/kg");
        Refused<UnitPrice>(QuantityText.TryUnitPrice, "-1/kg").Should().Contain("is below 0");
        Refused<Money>(QuantityText.TryMoney, "$9").Should().Contain("is not a number; expected an amount of money");
        Refused<Money>(QuantityText.TryMoney, "-9").Should().Contain("is below 0");
        Refused<Money>(QuantityText.TryMoney, "").Should().Contain("is empty");
    }

    private static T Read<T>(Reader<T> reader, string text)
    {
        reader(text, out T value, out string? problem).Should().BeTrue(problem);
        return value;
    }

    private static string Refused<T>(Reader<T> reader, string text)
    {
        reader(text, out _, out string? problem).Should().BeFalse();
        return problem!;
    }
}
