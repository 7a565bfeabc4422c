using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Guides for chicks stand side by side; air is told from what it needs.</summary>
public class BroodingAndAirTests
{
    [Theory]
    [InlineData(0, 33.9, 35.0, 32.2, 35.0)]
    [InlineData(10, 31.1, 32.2, 29.4, 32.2)]
    [InlineData(45, 10, 21.1, 21.1, 21.1)]
    public void Temperatures_of_two_guides(double days, double low, double high, double otherLow, double otherHigh)
    {
        (Temperature Low, Temperature High) one = BroodingGuide.ColoradoState2018.At(Age.FromDays(days))!.Temperature!.Value;
        (Temperature Low, Temperature High) other = BroodingGuide.Missouri.At(Age.FromDays(days))!.Temperature!.Value;

        new[] { one.Low, one.High, other.Low, other.High }.Zip([low, high, otherLow, otherHigh], (found, expected) => Math.Abs(found.DegreesCelsius - expected))
            .Should().OnlyContain(difference => difference < 0.05);
    }

    [Fact]
    public void Weeks_are_counted_from_hatch_and_a_stage_ends_where_the_next_begins()
    {
        BroodingGuide.Clauer.At(Age.FromDays(13.99))!.FloorPerBird!.Value.Least.SquareFeet.Should().BeApproximately(0.5, 1e-12);
        BroodingGuide.Clauer.At(Age.FromDays(14))!.FloorPerBird!.Value.Least.SquareFeet.Should().BeApproximately(0.75, 1e-12);
        BroodingGuide.Clauer.At(Age.FromWeeks(20))!.FloorPerBird!.Value.Ample.SquareFeet.Should().BeApproximately(3, 1e-12);
        BroodingGuide.PastureLeaflet.At(Age.FromDays(5)).Should().BeNull("it speaks of the third week only");
    }

    [Fact]
    public void Carbon_dioxide_must_be_higher_inside_than_outside()
    {
        Action same = () => CarbonDioxideBalance.Ventilation(VolumeFlow.FromCubicMetersPerHour(3), VolumeConcentration.FromPartsPerMillion(400), VolumeConcentration.FromPartsPerMillion(400));

        same.Should().Throw<ArgumentOutOfRangeException>().WithMessage("400 ppm is not allowed; expected above 400 ppm*");
    }

    [Fact]
    public void A_day_has_24_hours()
    {
        Action dark = () => Measured.Day(Duration.FromHours(18), Duration.FromHours(8));

        Measured.Day(Duration.FromHours(16), Duration.FromHours(8)).Select(measured => measured.Value).Should().Equal(16, 8, 8);
        dark.Should().Throw<ArgumentOutOfRangeException>().WithMessage("8 h is not allowed; expected 0 to 6 h*");
    }
}
