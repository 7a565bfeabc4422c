namespace Poultry.Growth.Housing;

/// <summary>The one unit in which each subject is judged.</summary>
public static class LimitUnits
{
    /// <summary>The unit as text, the same in every culture; empty where nothing is judged.</summary>
    /// <param name="subject">What is limited.</param>
    public static string Of(LimitSubject subject) => subject switch
    {
        LimitSubject.NotJudged => "",
        LimitSubject.StockingDensity or LimitSubject.MeanStockingDensity or LimitSubject.OutdoorStockingDensity => "kg/m2",
        LimitSubject.BirdsPerArea => "birds/m2",
        LimitSubject.FloorAreaPerBird or LimitSubject.OutdoorAreaPerBird => "m2/bird",
        LimitSubject.BirdsOnLand => "birds/ha",
        LimitSubject.FlockSize or LimitSubject.BirdsPerNipple or LimitSubject.BirdsPerCup => "birds",
        LimitSubject.BirdsPerYear => "birds/yr",
        LimitSubject.HouseFloor or LimitSubject.TotalHouseFloor => "m2",
        LimitSubject.BirdAge or LimitSubject.SlaughterAge => "d",
        LimitSubject.BirdWeight or LimitSubject.CarcassWeight => "kg",
        LimitSubject.Ammonia or LimitSubject.CarbonDioxide => "ppm",
        LimitSubject.OutsideTemperature or LimitSubject.CarcassTemperature => "C",
        LimitSubject.InsideMinusOutside => "K",
        LimitSubject.RelativeHumidity => "%",
        LimitSubject.LightIntensity => "lux",
        LimitSubject.AirCapacity => "m3/h/kg",
        LimitSubject.RoundDrinkerPerWeight or LimitSubject.TroughDrinkerPerWeight or LimitSubject.RoundFeederPerWeight or LimitSubject.TroughFeederPerWeight => "cm/kg",
        LimitSubject.RoundDrinkerPerBird or LimitSubject.TroughDrinkerPerBird or LimitSubject.RoundFeederPerBird or LimitSubject.TroughFeederPerBird => "cm/bird",
        LimitSubject.PopHoleLength => "m/100 m2",
        LimitSubject.CrateAreaPerWeight => "cm2/kg",
        LimitSubject.CrateAreaPerChick => "cm2/chick",
        LimitSubject.CrateHeight => "cm",
        LimitSubject.NitrogenOnLand => "kg/ha/yr",
        _ => "h",
    };

    /// <summary>Whether a figure of a subject may lie below 0: temperatures and differences of them alone.</summary>
    /// <param name="subject">What is limited.</param>
    public static bool MayBeNegative(LimitSubject subject) => Of(subject) is "C" or "K";
}
