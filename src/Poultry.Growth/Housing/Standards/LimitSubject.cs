namespace Poultry.Growth.Housing;

/// <summary>What a limit limits, each in one unit: what the library can hold against a keeping.</summary>
public enum LimitSubject
{
    /// <summary>Something the library knows no figure for: the limit is shown and not judged.</summary>
    NotJudged,

    /// <summary>Live weight on the floor, at any time, in kg/m².</summary>
    StockingDensity,

    /// <summary>Mean of this batch's highest live weight on the floor and that of the two before, in kg/m².</summary>
    MeanStockingDensity,

    /// <summary>Birds on the floor, in birds/m².</summary>
    BirdsPerArea,

    /// <summary>Floor of each bird, in m².</summary>
    FloorAreaPerBird,

    /// <summary>Outdoor run of each bird, in m².</summary>
    OutdoorAreaPerBird,

    /// <summary>Live weight on the outdoor run, in kg/m².</summary>
    OutdoorStockingDensity,

    /// <summary>Birds on the land, in birds/ha.</summary>
    BirdsOnLand,

    /// <summary>Birds in one house or unit.</summary>
    FlockSize,

    /// <summary>Floor of one house, in m².</summary>
    HouseFloor,

    /// <summary>Floor of all houses of a site, in m².</summary>
    TotalHouseFloor,

    /// <summary>Age of the birds, in d.</summary>
    BirdAge,

    /// <summary>Mean live weight of a bird, in kg.</summary>
    BirdWeight,

    /// <summary>Age at slaughter, in d.</summary>
    SlaughterAge,

    /// <summary>Ammonia at the height of the birds' heads, in ppm.</summary>
    Ammonia,

    /// <summary>Carbon dioxide at the height of the birds' heads, in ppm.</summary>
    CarbonDioxide,

    /// <summary>Outside temperature in the shade, in °C.</summary>
    OutsideTemperature,

    /// <summary>Inside temperature less outside temperature, in K.</summary>
    InsideMinusOutside,

    /// <summary>Relative humidity inside, mean over 48 h, in %.</summary>
    RelativeHumidity,

    /// <summary>Light at the height of the birds' eyes, in lux.</summary>
    LightIntensity,

    /// <summary>Hours of light a day.</summary>
    LightHours,

    /// <summary>Hours of darkness a day, in total.</summary>
    DarkHours,

    /// <summary>Longest unbroken darkness a day, in h.</summary>
    UnbrokenDarkHours,

    /// <summary>What fans and openings can move an hour, in m³/h for each kg of live weight in the house.</summary>
    AirCapacity,

    /// <summary>Rim of round drinkers, in cm for each kg of live weight.</summary>
    RoundDrinkerPerWeight,

    /// <summary>Edge of drinking troughs, in cm for each kg of live weight.</summary>
    TroughDrinkerPerWeight,

    /// <summary>Rim of round feeders, in cm for each kg of live weight.</summary>
    RoundFeederPerWeight,

    /// <summary>Edge of feed troughs, in cm for each kg of live weight.</summary>
    TroughFeederPerWeight,

    /// <summary>Rim of round drinkers, in cm a bird.</summary>
    RoundDrinkerPerBird,

    /// <summary>Edge of drinking troughs, in cm a bird.</summary>
    TroughDrinkerPerBird,

    /// <summary>Rim of round feeders, in cm a bird.</summary>
    RoundFeederPerBird,

    /// <summary>Edge of feed troughs, in cm a bird.</summary>
    TroughFeederPerBird,

    /// <summary>Birds to one drinking nipple.</summary>
    BirdsPerNipple,

    /// <summary>Birds to one open cup.</summary>
    BirdsPerCup,

    /// <summary>Openings to the run, in m for 100 m² of house floor.</summary>
    PopHoleLength,

    /// <summary>Floor of a transport crate, in cm² for each kg of live weight.</summary>
    CrateAreaPerWeight,

    /// <summary>Floor of a transport crate, in cm² a chick.</summary>
    CrateAreaPerChick,

    /// <summary>Inner height of a transport crate, in cm.</summary>
    CrateHeight,

    /// <summary>Time on the road, in h.</summary>
    JourneyTime,

    /// <summary>Time without water, in h.</summary>
    TimeWithoutWater,

    /// <summary>Time without feed, in h.</summary>
    TimeWithoutFeed,

    /// <summary>Nitrogen of manure on the land, in kg/ha a year.</summary>
    NitrogenOnLand,

    /// <summary>Birds slaughtered a year.</summary>
    BirdsPerYear,

    /// <summary>Time until a carcass is cold, in h.</summary>
    ChillingTime,

    /// <summary>Temperature of a carcass, in °C.</summary>
    CarcassTemperature,

    /// <summary>Weight of a carcass, in kg.</summary>
    CarcassWeight,
}
