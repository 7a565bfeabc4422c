using UnitsNet;

namespace Poultry.Growth.Calculators.Printing;

/// <summary>The units of tables and charts.</summary>
internal sealed class Units
{
    private readonly Func<Mass, double> measure;

    private Units(string weight, Func<Mass, double> measure) => (Weight, this.measure) = (weight, measure);

    public static Units Metric { get; } = new("kg", weight => weight.Kilograms);

    public static Units Us { get; } = new("lb", weight => weight.Pounds);

    private bool IsMetric => this == Metric;

    /// <summary>Symbol of the unit of weight.</summary>
    public string Weight { get; }

    public double Of(Mass weight) => measure(weight);

    /// <summary>A weight without its symbol; a dash where there is none.</summary>
    public string Text(Mass? weight, int decimals) => weight is { } known ? Numbers.Fixed(Of(known), decimals) : "-";

    /// <summary>Symbol of the unit of what a bird eats or drinks a day.</summary>
    public string DailyWeight => IsMetric ? "g" : "lb";

    /// <summary>What a bird eats or drinks a day without its symbol.</summary>
    public string DailyText(Mass? weight) => weight is { } known ? IsMetric ? Numbers.Whole(known.Grams) : Numbers.Fixed(known.Pounds, 3) : "-";

    /// <summary>Symbol of the unit of volumes.</summary>
    public string Volume => IsMetric ? "L" : "gal";

    public double OfLitres(double litres) => IsMetric ? litres : UnitsNet.Volume.FromLiters(litres).UsGallons;

    /// <summary>A temperature with its symbol.</summary>
    public string Text(Temperature temperature, int decimals) => IsMetric
        ? Numbers.Fixed(temperature.DegreesCelsius, decimals) + " °C"
        : Numbers.Fixed(temperature.DegreesFahrenheit, decimals) + " °F";

    /// <summary>A figure in kg in this unit.</summary>
    public double OfKilograms(double kilograms) => measure(Mass.FromKilograms(kilograms));
}
