using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>A figure of a keeping that limits can be held against.</summary>
/// <remarks>A figure outside the range that stands with its argument, or not finite, throws an <see cref="ArgumentOutOfRangeException"/> that names the argument; temperatures may be below 0.</remarks>
public sealed class Measured
{
    private Measured(LimitSubject subject, double value, string name) =>
        (Subject, Value) = (subject, LimitUnits.MayBeNegative(subject) ? Require.Finite(value, LimitUnits.Of(subject), name) : Require.NotNegative(value, LimitUnits.Of(subject), name));

    /// <summary>What it is.</summary>
    public LimitSubject Subject { get; }

    /// <summary>In the unit that <see cref="LimitSubject"/> names.</summary>
    public double Value { get; }

    /// <summary>Birds in the house or unit.</summary>
    /// <param name="birds">0 or more.</param>
    public static Measured Flock(int birds) => new(LimitSubject.FlockSize, birds, nameof(birds));

    /// <summary>Mean live weight.</summary>
    /// <param name="weight">0 kg or more.</param>
    public static Measured BirdWeight(Mass weight) => new(LimitSubject.BirdWeight, weight.Kilograms, nameof(weight));

    /// <summary>Age of the birds.</summary>
    /// <param name="age">Any.</param>
    public static Measured BirdAge(Age age) => new(LimitSubject.BirdAge, age.Days, nameof(age));

    /// <summary>Age at slaughter.</summary>
    /// <param name="age">Any.</param>
    public static Measured SlaughterAge(Age age) => new(LimitSubject.SlaughterAge, age.Days, nameof(age));

    /// <summary>Live weight on the floor.</summary>
    /// <param name="density">0 kg/m² or more.</param>
    public static Measured Density(StockingDensity density) => new(LimitSubject.StockingDensity, density.KilogramsPerSquareMeter, nameof(density));

    /// <summary>Mean of the highest live weights on the floor of three batches in a row, this one last.</summary>
    /// <param name="density">0 kg/m² or more.</param>
    public static Measured MeanDensity(StockingDensity density) => new(LimitSubject.MeanStockingDensity, density.KilogramsPerSquareMeter, nameof(density));

    /// <summary>Birds on the floor.</summary>
    /// <param name="density">0 birds/m² or more.</param>
    public static Measured BirdsPerArea(BirdDensity density) => new(LimitSubject.BirdsPerArea, density.BirdsPerSquareMeter, nameof(density));

    /// <summary>Floor of each bird.</summary>
    /// <param name="area">0 m² or more.</param>
    public static Measured FloorAreaPerBird(Area area) => new(LimitSubject.FloorAreaPerBird, area.SquareMeters, nameof(area));

    /// <summary>Outdoor run of each bird.</summary>
    /// <param name="area">0 m² or more.</param>
    public static Measured OutdoorAreaPerBird(Area area) => new(LimitSubject.OutdoorAreaPerBird, area.SquareMeters, nameof(area));

    /// <summary>Live weight on the outdoor run.</summary>
    /// <param name="density">0 kg/m² or more.</param>
    public static Measured OutdoorDensity(StockingDensity density) => new(LimitSubject.OutdoorStockingDensity, density.KilogramsPerSquareMeter, nameof(density));

    /// <summary>Birds on the land.</summary>
    /// <param name="density">0 birds/ha or more.</param>
    public static Measured BirdsOnLand(BirdDensity density) => new(LimitSubject.BirdsOnLand, density.BirdsPerHectare, nameof(density));

    /// <summary>Floor of one house.</summary>
    /// <param name="floor">0 m² or more.</param>
    public static Measured HouseFloor(Area floor) => new(LimitSubject.HouseFloor, floor.SquareMeters, nameof(floor));

    /// <summary>Floor of all houses of a site.</summary>
    /// <param name="floor">0 m² or more.</param>
    public static Measured TotalHouseFloor(Area floor) => new(LimitSubject.TotalHouseFloor, floor.SquareMeters, nameof(floor));

    /// <summary>Ammonia at the birds' heads.</summary>
    /// <param name="content">0 ppm or more.</param>
    public static Measured Ammonia(VolumeConcentration content) => new(LimitSubject.Ammonia, content.PartsPerMillion, nameof(content));

    /// <summary>Carbon dioxide at the birds' heads.</summary>
    /// <param name="content">0 ppm or more.</param>
    public static Measured CarbonDioxide(VolumeConcentration content) => new(LimitSubject.CarbonDioxide, content.PartsPerMillion, nameof(content));

    /// <summary>Temperatures in the shade outside, and inside where it is known.</summary>
    /// <param name="outside">In the shade, any.</param>
    /// <param name="inside">At the birds, any; null where unknown.</param>
    public static IReadOnlyList<Measured> Temperatures(Temperature outside, Temperature? inside) =>
    [
        new(LimitSubject.OutsideTemperature, outside.DegreesCelsius, nameof(outside)),
        .. inside is { } air ? [new(LimitSubject.InsideMinusOutside, air.DegreesCelsius - outside.DegreesCelsius, nameof(inside))] : Array.Empty<Measured>(),
    ];

    /// <summary>Relative humidity inside, mean over 48 h.</summary>
    /// <param name="humidity">0 to 100 %.</param>
    public static Measured Humidity(RelativeHumidity humidity) => new(LimitSubject.RelativeHumidity, Require.Between(humidity.Percent, 0, 100, "%", nameof(humidity)), nameof(humidity));

    /// <summary>Light at the birds' eyes.</summary>
    /// <param name="light">0 lux or more.</param>
    public static Measured Light(Illuminance light) => new(LimitSubject.LightIntensity, light.Lux, nameof(light));

    /// <summary>Light, darkness in total and the longest unbroken darkness of 24 h.</summary>
    /// <param name="light">Light in 24 h.</param>
    /// <param name="longestDark">The longest darkness without a break, not above 24 h less the light.</param>
    /// <exception cref="ArgumentOutOfRangeException">The times do not fit into a day.</exception>
    public static IReadOnlyList<Measured> Day(Duration light, Duration longestDark)
    {
        double dark = 24 - Require.Between(light.Hours, 0, 24, "h", nameof(light));
        return
        [
            new(LimitSubject.LightHours, light.Hours, nameof(light)),
            new(LimitSubject.DarkHours, dark, nameof(light)),
            new(LimitSubject.UnbrokenDarkHours, Require.Between(longestDark.Hours, 0, dark, "h", nameof(longestDark)), nameof(longestDark)),
        ];
    }

    /// <summary>What fans and openings can move, for the live weight in the house.</summary>
    /// <param name="capacity">0 m³/h or more.</param>
    /// <param name="liveWeight">Of all birds in the house, above 0 kg.</param>
    public static Measured AirCapacity(VolumeFlow capacity, Mass liveWeight) =>
        new(LimitSubject.AirCapacity, capacity.CubicMetersPerHour / Require.Positive(liveWeight.Kilograms, "kg", nameof(liveWeight)), nameof(capacity));

    /// <summary>Openings to the run of a house.</summary>
    /// <param name="length">Of all openings together, 0 m or more.</param>
    /// <param name="houseFloor">Above 0 m².</param>
    public static Measured PopHoles(Length length, Area houseFloor) =>
        new(LimitSubject.PopHoleLength, 100 * length.Meters / Require.Positive(houseFloor.SquareMeters, "m2", nameof(houseFloor)), nameof(length));

    /// <summary>Inner height of a crate.</summary>
    /// <param name="height">0 cm or more.</param>
    public static Measured CrateHeight(Length height) => new(LimitSubject.CrateHeight, height.Centimeters, nameof(height));

    /// <summary>Time on the road, and from the last water and feed on.</summary>
    /// <param name="road">0 h or more.</param>
    /// <param name="withoutWater">0 h or more.</param>
    /// <param name="withoutFeed">0 h or more.</param>
    public static IReadOnlyList<Measured> Journey(Duration road, Duration withoutWater, Duration withoutFeed) =>
    [
        new(LimitSubject.JourneyTime, road.Hours, nameof(road)),
        new(LimitSubject.TimeWithoutWater, withoutWater.Hours, nameof(withoutWater)),
        new(LimitSubject.TimeWithoutFeed, withoutFeed.Hours, nameof(withoutFeed)),
    ];

    /// <summary>Nitrogen of manure that reaches the land in a year.</summary>
    /// <param name="yearly">0 kg/ha or more.</param>
    public static Measured NitrogenOnLand(AreaDensity yearly) => new(LimitSubject.NitrogenOnLand, yearly.KilogramsPerSquareMeter * 10_000, nameof(yearly));

    /// <summary>Birds slaughtered in a calendar year.</summary>
    /// <param name="birds">0 or more.</param>
    public static Measured BirdsPerYear(int birds) => new(LimitSubject.BirdsPerYear, birds, nameof(birds));

    /// <summary>A carcass in the chiller.</summary>
    /// <param name="weight">Its weight, 0 kg or more.</param>
    /// <param name="temperature">Its temperature in the end, any.</param>
    /// <param name="time">How long it took, 0 h or more.</param>
    public static IReadOnlyList<Measured> Carcass(Mass weight, Temperature temperature, Duration time) =>
    [
        new(LimitSubject.CarcassWeight, weight.Kilograms, nameof(weight)),
        new(LimitSubject.CarcassTemperature, temperature.DegreesCelsius, nameof(temperature)),
        new(LimitSubject.ChillingTime, time.Hours, nameof(time)),
    ];

    /// <summary>As in <c>flock size 500 birds</c>, in every culture.</summary>
    public override string ToString() => LimitText.Words(Subject) + " " + LimitText.Figure(Subject, Value);
}
