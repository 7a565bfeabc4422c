using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Housing;

/// <summary>A figure of a keeping that makes no sense is refused by the name under which it was given.</summary>
public class MeasuredTests
{
    public static TheoryData<Action, string> Senseless { get; } = new()
    {
        { () => Measured.Flock(-1), "birds" },
        { () => Measured.BirdWeight(Mass.FromKilograms(-1)), "weight" },
        { () => Measured.FloorAreaPerBird(Area.FromSquareMeters(-1)), "area" },
        { () => Measured.Ammonia(VolumeConcentration.FromPartsPerMillion(-1)), "content" },
        { () => Measured.Humidity(RelativeHumidity.FromPercent(101)), "humidity" },
        { () => Measured.AirCapacity(VolumeFlow.FromCubicMetersPerHour(-1), Mass.FromKilograms(1)), "capacity" },
        { () => Measured.AirCapacity(VolumeFlow.FromCubicMetersPerHour(1), Mass.Zero), "liveWeight" },
        { () => Measured.Day(Duration.FromHours(18), Duration.FromHours(7)), "longestDark" },
        { () => Measured.Journey(Duration.FromHours(1), Duration.FromHours(-1), Duration.FromHours(1)), "withoutWater" },
    };

    [Theory]
    [MemberData(nameof(Senseless), DisableDiscoveryEnumeration = true)]
    public void A_figure_that_makes_no_sense_is_refused_by_name(Action measure, string argument) =>
        measure.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(argument);

    [Fact]
    public void Frost_is_a_temperature() =>
        Measured.Temperatures(Temperature.FromDegreesCelsius(-12), Temperature.FromDegreesCelsius(18)).Select(figure => figure.Value).Should().Equal(-12, 30);
}
