using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Areas, lengths, temperatures and densities in the units of tables and charts.</summary>
internal sealed class HousingUnits
{
    private readonly bool us;

    private HousingUnits(bool us) => this.us = us;

    public string Density => us ? "lb/ft2" : "kg/m2";

    public string Floor => us ? "ft2" : "m2";

    public string Ground => us ? "ac" : "ha";

    public string Edge => us ? "in" : "cm";

    public string Degree => us ? "F" : "C";

    public string AirFlow => us ? "ft3/min" : "m3/h";

    public string Load => us ? "lb/ac" : "kg/ha";

    public static HousingUnits Of(Units units) => new(units == Units.Us);

    public double Of(StockingDensity density) => us ? density.PoundsPerSquareFoot : density.KilogramsPerSquareMeter;

    public double Of(Area area) => us ? area.SquareFeet : area.SquareMeters;

    public double Of(Length length) => us ? length.Inches : length.Centimeters;

    public double Of(Temperature temperature) => us ? temperature.DegreesFahrenheit : temperature.DegreesCelsius;

    public double Of(VolumeFlow flow) => us ? flow.CubicFeetPerMinute : flow.CubicMetersPerHour;

    /// <summary>A load on a field.</summary>
    public double Of(AreaDensity load) => us ? load.KilogramsPerSquareMeter * 10_000 / 1.12085116 : load.KilogramsPerSquareMeter * 10_000;

    /// <summary>A limit in these units: the figure of the text where it is none of space.</summary>
    public string Of(Limit limit)
    {
        string sign = limit.Comparison switch { LimitComparison.Below => "< ", LimitComparison.AtMost => "<= ", LimitComparison.AtLeast => ">= ", LimitComparison.Above => "> ", _ => "" };
        return sign + Figure(limit.Subject, limit.Value, limit.Printed);
    }

    /// <summary>A figure of a subject of space in these units.</summary>
    public string Figure(LimitSubject subject, double? value, string other) => (subject, value) switch
    {
        (LimitSubject.StockingDensity or LimitSubject.MeanStockingDensity or LimitSubject.OutdoorStockingDensity, { } density) =>
            Numbers.Fixed(Of(StockingDensity.FromKilogramsPerSquareMeter(density)), us ? 2 : 1) + " " + Density,
        (LimitSubject.FloorAreaPerBird or LimitSubject.OutdoorAreaPerBird, { } area) => Numbers.Fixed(Of(Area.FromSquareMeters(area)), us ? 2 : 3) + " " + Floor + "/bird",
        (LimitSubject.BirdsPerArea, { } birds) => Numbers.Fixed(us ? birds * 0.09290304 : birds, us ? 2 : 1) + " birds/" + Floor,
        _ => other,
    };
}
