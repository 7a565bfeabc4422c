using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>A figure of a keeping that limits can be held against.</summary>
public sealed class Measured
{
    private Measured(LimitSubject subject, double value) =>
        (Subject, Value) = (subject, MayBeNegative(subject) ? Require.Finite(value, LimitUnits.Of(subject)) : Require.NotNegative(value, LimitUnits.Of(subject)));

    /// <summary>What it is.</summary>
    public LimitSubject Subject { get; }

    /// <summary>In the unit that <see cref="LimitSubject"/> names.</summary>
    public double Value { get; }

    /// <summary>Birds in the house or unit.</summary>
    public static Measured Flock(int birds) => new(LimitSubject.FlockSize, Require.AtLeast(birds, 0));

    /// <summary>Mean live weight.</summary>
    public static Measured BirdWeight(Mass weight) => new(LimitSubject.BirdWeight, weight.Kilograms);

    /// <summary>Age of the birds.</summary>
    public static Measured BirdAge(Age age) => new(LimitSubject.BirdAge, age.Days);

    /// <summary>Age at slaughter.</summary>
    public static Measured SlaughterAge(Age age) => new(LimitSubject.SlaughterAge, age.Days);

    /// <summary>Live weight on the floor.</summary>
    public static Measured Density(StockingDensity density) => new(LimitSubject.StockingDensity, density.KilogramsPerSquareMeter);

    /// <summary>Mean of the highest live weights on the floor of three batches in a row, this one last.</summary>
    public static Measured MeanDensity(StockingDensity density) => new(LimitSubject.MeanStockingDensity, density.KilogramsPerSquareMeter);

    /// <summary>Birds on the floor.</summary>
    public static Measured BirdsPerArea(BirdDensity density) => new(LimitSubject.BirdsPerArea, density.BirdsPerSquareMeter);

    /// <summary>Floor of each bird.</summary>
    public static Measured FloorAreaPerBird(Area area) => new(LimitSubject.FloorAreaPerBird, area.SquareMeters);

    /// <summary>Outdoor run of each bird.</summary>
    public static Measured OutdoorAreaPerBird(Area area) => new(LimitSubject.OutdoorAreaPerBird, area.SquareMeters);

    /// <summary>Live weight on the outdoor run.</summary>
    public static Measured OutdoorDensity(StockingDensity density) => new(LimitSubject.OutdoorStockingDensity, density.KilogramsPerSquareMeter);

    /// <summary>Birds on the land.</summary>
    public static Measured BirdsOnLand(BirdDensity density) => new(LimitSubject.BirdsOnLand, density.BirdsPerHectare);

    /// <summary>Floor of one house.</summary>
    public static Measured HouseFloor(Area floor) => new(LimitSubject.HouseFloor, floor.SquareMeters);

    /// <summary>Floor of all houses of a site.</summary>
    public static Measured TotalHouseFloor(Area floor) => new(LimitSubject.TotalHouseFloor, floor.SquareMeters);

    /// <summary>Ammonia at the birds' heads.</summary>
    public static Measured Ammonia(VolumeConcentration content) => new(LimitSubject.Ammonia, content.PartsPerMillion);

    /// <summary>Carbon dioxide at the birds' heads.</summary>
    public static Measured CarbonDioxide(VolumeConcentration content) => new(LimitSubject.CarbonDioxide, content.PartsPerMillion);

    /// <summary>Temperatures in the shade outside, and inside where it is known.</summary>
    /// <param name="outside">In the shade.</param>
    /// <param name="inside">At the birds; null where unknown.</param>
    public static IReadOnlyList<Measured> Temperatures(Temperature outside, Temperature? inside) =>
    [
        new(LimitSubject.OutsideTemperature, outside.DegreesCelsius),
        .. inside is { } air ? [new(LimitSubject.InsideMinusOutside, air.DegreesCelsius - outside.DegreesCelsius)] : Array.Empty<Measured>(),
    ];

    /// <summary>Relative humidity inside, mean over 48 h.</summary>
    public static Measured Humidity(RelativeHumidity humidity) => new(LimitSubject.RelativeHumidity, humidity.Percent);

    /// <summary>Light at the birds' eyes.</summary>
    public static Measured Light(Illuminance light) => new(LimitSubject.LightIntensity, light.Lux);

    /// <summary>Light, darkness in total and the longest unbroken darkness of 24 h.</summary>
    /// <param name="light">Light in 24 h.</param>
    /// <param name="longestDark">The longest darkness without a break, not above 24 h less the light.</param>
    /// <exception cref="ArgumentOutOfRangeException">The times do not fit into a day.</exception>
    public static IReadOnlyList<Measured> Day(Duration light, Duration longestDark)
    {
        double dark = 24 - Require.Between(light.Hours, 0, 24, "h", nameof(light));
        return
        [
            new(LimitSubject.LightHours, light.Hours),
            new(LimitSubject.DarkHours, dark),
            new(LimitSubject.UnbrokenDarkHours, Require.Between(longestDark.Hours, 0, dark, "h", nameof(longestDark))),
        ];
    }

    /// <summary>What fans and openings can move, for the live weight in the house.</summary>
    public static Measured AirCapacity(VolumeFlow capacity, Mass liveWeight) =>
        new(LimitSubject.AirCapacity, capacity.CubicMetersPerHour / Require.Positive(liveWeight.Kilograms, "kg", nameof(liveWeight)));

    /// <summary>Openings to the run of a house.</summary>
    public static Measured PopHoles(Length length, Area houseFloor) =>
        new(LimitSubject.PopHoleLength, 100 * length.Meters / Require.Positive(houseFloor.SquareMeters, "m2", nameof(houseFloor)));

    /// <summary>Inner height of a crate.</summary>
    public static Measured CrateHeight(Length height) => new(LimitSubject.CrateHeight, height.Centimeters);

    /// <summary>Time on the road, and from the last water and feed on.</summary>
    public static IReadOnlyList<Measured> Journey(Duration road, Duration withoutWater, Duration withoutFeed) =>
    [
        new(LimitSubject.JourneyTime, road.Hours),
        new(LimitSubject.TimeWithoutWater, withoutWater.Hours),
        new(LimitSubject.TimeWithoutFeed, withoutFeed.Hours),
    ];

    /// <summary>Nitrogen of manure that reaches the land in a year.</summary>
    public static Measured NitrogenOnLand(AreaDensity yearly) => new(LimitSubject.NitrogenOnLand, yearly.KilogramsPerSquareMeter * 10_000);

    /// <summary>Birds slaughtered in a calendar year.</summary>
    public static Measured BirdsPerYear(int birds) => new(LimitSubject.BirdsPerYear, Require.AtLeast(birds, 0));

    /// <summary>A carcass in the chiller.</summary>
    /// <param name="weight">Its weight.</param>
    /// <param name="temperature">Its temperature in the end.</param>
    /// <param name="time">How long it took.</param>
    public static IReadOnlyList<Measured> Carcass(Mass weight, Temperature temperature, Duration time) =>
    [
        new(LimitSubject.CarcassWeight, weight.Kilograms), new(LimitSubject.CarcassTemperature, temperature.DegreesCelsius), new(LimitSubject.ChillingTime, time.Hours),
    ];

    /// <summary>As in <c>flock size 500 birds</c>, in every culture.</summary>
    public override string ToString() => LimitText.Words(Subject) + " " + LimitText.Figure(Subject, Value);

    private static bool MayBeNegative(LimitSubject subject) =>
        subject is LimitSubject.OutsideTemperature or LimitSubject.InsideMinusOutside or LimitSubject.CarcassTemperature;
}
