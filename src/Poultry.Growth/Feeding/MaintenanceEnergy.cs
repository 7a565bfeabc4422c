using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Energy that a fed bird needs to stay as it is, as published: a coefficient, by temperature or not, times a power of live weight.</summary>
/// <remarks>
/// Coefficient and exponent belong together: sources use exponents from 0.56 to 1, and one with another's coefficient is wrong. Sources differ by a third at
/// the same weight; totals of maintenance and gain agree better than either part.
/// </remarks>
public sealed class MaintenanceEnergy
{
    /// <summary>Outside the measured temperatures the curves go on with the slopes of <see cref="FastingHeat"/>: a parabola through three temperatures bends up too fast.</summary>
    private const double LowCelsius = 13, HighCelsius = 32, ColdSlope = 2.65, HeatSlope = 4.41;

    private readonly double constant, slope, bend, exponent;

    private MaintenanceEnergy(ModelInfo model, double constant, double slope, double bend, double exponent)
    {
        Model = model;
        (this.constant, this.slope, this.bend, this.exponent) = (constant, slope, bend, exponent);
    }

    /// <summary>Sakomura et al. 2005, 13 to 32 °C.</summary>
    public static MaintenanceEnergy Sakomura2005 { get; } = new(
        Info(
            "maintenance-sakomura-2005",
            "Maintenance by temperature, 2005",
            "MEm = W^0.75 (307.87 - 15.63 T + 0.3105 T^2), 13 to 32 °C; beyond W^0.75 (157.15 + 2.65 (13 - T)) and W^0.75 (125.66 + 4.41 (T - 32))",
            byTemperature: true,
            FeedingSources.Sakomura2005,
            "r2 0.93; within 1.5 % of the three measured temperatures. Differs by 3 % from the equation of 2006 by the same laboratory. How need parts into maintenance and gain is disputed: Hurwitz et al. 1980 have 245 to 270 kcal/d for 1 kg at 12 °C where this has 165, and 1.87 kcal a gram of gain where others have 3.7 to 4.5; sums agree better than parts, so never take a part from one source and a part from another. Beyond 13 and 32 °C it is our extension.",
            [new ValidityRange("temperature", LowCelsius, HighCelsius, "°C")]),
        307.87,
        -15.63,
        0.3105,
        0.75);

    /// <summary>Longo et al. 2006, 13 to 32 °C.</summary>
    public static MaintenanceEnergy Longo2006 { get; } = new(
        Info(
            "maintenance-longo-2006",
            "Maintenance by temperature, 2006",
            "MEm = W^0.75 (300.14 - 14.61 T + 0.2876 T^2), 13 to 32 °C; beyond W^0.75 (158.81 + 2.65 (13 - T)) and W^0.75 (127.12 + 4.41 (T - 32))",
            byTemperature: true,
            FeedingSources.Longo2006,
            "r2 0.90; within 1.5 % of the three measured temperatures. Differs by 3 % from the equation of 2005 by the same laboratory. Beyond 13 and 32 °C it is our extension.",
            [new ValidityRange("temperature", LowCelsius, HighCelsius, "°C")]),
        300.14,
        -14.61,
        0.2876,
        0.75);

    /// <summary>Liu et al. 2017, calorimetry: 594 kJ/kg^0.75.</summary>
    public static MaintenanceEnergy Liu2017 { get; } = new(
        Info(
            "maintenance-liu-2017",
            "Maintenance, 2017",
            "MEm = 141.97 W^0.75",
            byTemperature: false,
            FeedingSources.Liu2017,
            "594 kJ/kg^0.75 by calorimetry, 618 by slaughter in the same paper; 26 % above Sakomura at 23 °C. No temperature in it."),
        594 / 4.184,
        0,
        0,
        0.75);

    /// <summary>Fraga et al. 2004, the diet of highest energy: 131.12 kcal/kg^0.75.</summary>
    public static MaintenanceEnergy Fraga2004 { get; } = new(
        Info(
            "maintenance-fraga-2004",
            "Maintenance, 2004",
            "MEm = 131.12 W^0.75",
            byTemperature: false,
            FeedingSources.Fraga2004,
            "131.12, 140.96 and 131.78 on diets of high, middle and low energy; 16 to 25 % above Sakomura at 23 °C. No temperature in it."),
        131.12,
        0,
        0,
        0.75);

    /// <summary>Darmani Kuhi et al. 2003, in the middle of its range: 505 kJ a kg of live weight.</summary>
    public static MaintenanceEnergy DarmaniKuhi2003 { get; } = new(
        Info(
            "maintenance-darmani-kuhi-2003",
            "Maintenance by live weight itself, 2003",
            "MEm = 120.7 W",
            byTemperature: false,
            FeedingSources.DarmaniKuhi2003,
            "The paper gives 437 to 573 kJ a kg of live weight (not of a power of it); 505 is the middle. No temperature in it."),
        505 / 4.184,
        0,
        0,
        1);

    /// <summary>What it is and where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The temperature of least need; null where the source has no temperature.</summary>
    public Temperature? LeastAt => bend > 0 ? Temperature.FromDegreesCelsius(-slope / (2 * bend)) : null;

    /// <summary>Energy for maintenance.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <param name="temperature">Of the air, finite; without meaning where the source has none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or the temperature is not finite.</exception>
    public Power At(Mass weight, Temperature temperature) => Calories.PerDay(KilocaloriesPerDay(
        Require.Positive(weight.Kilograms, "kg", nameof(weight)), Require.Finite(temperature.DegreesCelsius, "°C", nameof(temperature))));

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    internal double KilocaloriesPerDay(double kilograms, double celsius) => Math.Pow(kilograms, exponent) * Coefficient(celsius);

    private double Coefficient(double celsius) => bend == 0 ? constant
        : celsius < LowCelsius ? Parabola(LowCelsius) + (ColdSlope * (LowCelsius - celsius))
        : celsius > HighCelsius ? Parabola(HighCelsius) + (HeatSlope * (celsius - HighCelsius))
        : Parabola(celsius);

    private double Parabola(double celsius) => constant + (slope * celsius) + (bend * celsius * celsius);

    private static ModelInfo Info(
        string id, string name, string equation, bool byTemperature, Citation source, string accuracy, params IReadOnlyList<ValidityRange> ranges) => new(
        id,
        name,
        equation,
        [
            new("MEm", "metabolizable energy for maintenance of a bird", "kcal/d"),
            new("W", "live weight", "kg"),
            .. byTemperature ? [new ModelSymbol("T", "air temperature", "°C")] : Array.Empty<ModelSymbol>(),
        ],
        byTemperature ? [source, FeedingSources.CriticalTemperature] : [source],
        accuracy,
        HowKnown.ReadInSource,
        ranges);
}
