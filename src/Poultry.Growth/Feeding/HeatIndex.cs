using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How hot the air is for birds: temperature and humidity in one figure, and moving air too.</summary>
/// <remarks>
/// A figure, no class: the classes of the source are rises of body temperature after a stated time in the heat, and how long the birds of today have been in it
/// is not known. Sun on the shelter, still air and time are not in it. Panting birds decide.
/// </remarks>
public static class HeatIndex
{
    /// <summary>Heavy birds do worse above this index already.</summary>
    private const double HeavyKilograms = 3.2, HeavyLimitCelsius = 21;

    private static readonly Citation TaoXin2003 = new(
        "TaoXin2003", "Tao X., Xin H. 2003. Acute synergistic effects of air temperature, humidity, and velocity on homeostasis of market-size broilers. ASAE paper 14094", HowKnown.ReadInSource, "abstract: males of 2.8 kg");

    /// <summary>Temperature and humidity.</summary>
    public static ModelInfo TemperatureHumidity { get; } = new(
        "heat-index-thi",
        "Temperature-humidity index of meat birds",
        "THI = 0.85 Tdb + 0.15 Twb",
        [new ModelSymbol("THI", "index", "°C"), new ModelSymbol("Tdb", "temperature of the air", "°C"), new ModelSymbol("Twb", "temperature of a wet thermometer in moving air", "°C")],
        [TaoXin2003, new Citation("Purswell2012", "Purswell J.L. et al. 2012", HowKnown.ReadInSource, "abstract: birds over 3.2 kg, 49 to 63 d, perform worse above 21 °C")],
        "The reading of the velocity index at 1 m/s. Bands of 27.8, 28.9 and 30 that are often quoted are of other species.",
        HowKnown.ReadInSource,
        [new ValidityRange("air temperature", 21, 41, "°C")]);

    /// <summary>Temperature, humidity and moving air.</summary>
    public static ModelInfo TemperatureHumidityVelocity { get; } = new(
        "heat-index-thvi",
        "Temperature-humidity-velocity index of meat birds",
        "THVI = (0.85 Tdb + 0.15 Twb) V^-0.058",
        [
            new ModelSymbol("THVI", "index", "°C"),
            new ModelSymbol("Tdb", "temperature of the air", "°C"),
            new ModelSymbol("Twb", "temperature of a wet thermometer in moving air", "°C"),
            new ModelSymbol("V", "air speed at the birds", "m/s"),
        ],
        [TaoXin2003],
        "One chamber study with males of 2.8 kg. Its states (normal, alert, danger, emergency) are rises of body temperature up to 1.0, 2.5, 4.0 °C and above, reached after a time: no rule for that time is known here, so that no state is named.",
        HowKnown.ReadInSource,
        [new ValidityRange("air temperature", 35, 41, "°C"), new ValidityRange("air speed", 0.2, 1.2, "m/s")]);

    /// <summary>What no index knows.</summary>
    public static Caution BirdsDecide { get; } = new(
        "birds-decide",
        "Sun on the shelter, still air and hours of heat are not in the index. Panting birds, wings spread, decide: shade, moving air and cool water at once; heavy birds die within hours.");

    /// <summary>Temperature and humidity in one figure.</summary>
    /// <param name="dryBulb">Temperature of the air, -20 to 50 °C.</param>
    /// <param name="wetBulb">Of a wet thermometer in moving air, not above <paramref name="dryBulb"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range.</exception>
    public static Temperature Thi(Temperature dryBulb, Temperature wetBulb) => Temperature.FromDegreesCelsius(ThiCelsius(dryBulb, wetBulb));

    /// <summary>The same with moving air; null outside the air temperatures (35 to 41 °C) and air speeds (0.2 to 1.2 m/s) that were measured.</summary>
    /// <param name="dryBulb">Temperature of the air, -20 to 50 °C.</param>
    /// <param name="wetBulb">Of a wet thermometer in moving air, not above <paramref name="dryBulb"/>.</param>
    /// <param name="airSpeed">At the birds, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range, or the speed below 0.</exception>
    public static Temperature? Thvi(Temperature dryBulb, Temperature wetBulb, Speed airSpeed)
    {
        double metersPerSecond = Require.NotNegative(airSpeed.MetersPerSecond, "m/s", nameof(airSpeed));
        double thi = ThiCelsius(dryBulb, wetBulb);
        IReadOnlyList<ValidityRange> ranges = TemperatureHumidityVelocity.Ranges;
        return Inside(ranges[0], dryBulb.DegreesCelsius) && ranges[1].Contains(metersPerSecond)
            ? Temperature.FromDegreesCelsius(thi * Math.Pow(metersPerSecond, -0.058))
            : null;
    }

    /// <summary>What to mind in this heat.</summary>
    /// <param name="dryBulb">Temperature of the air, -20 to 50 °C.</param>
    /// <param name="wetBulb">Of a wet thermometer in moving air, not above <paramref name="dryBulb"/>.</param>
    /// <param name="weight">Mean live weight, any; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of range.</exception>
    public static IReadOnlyList<Caution> Cautions(Temperature dryBulb, Temperature wetBulb, Mass? weight)
    {
        double thi = ThiCelsius(dryBulb, wetBulb);
        List<Caution> cautions = [];
        if (weight is { } live && live.Kilograms > HeavyKilograms && thi > HeavyLimitCelsius)
        {
            cautions.Add(new("heavy-birds-in-heat", string.Create(
                CultureInfo.InvariantCulture,
                $"Birds over {WeightText.Of(HeavyKilograms)} perform worse above an index of {HeavyLimitCelsius:0} °C (70 °F); it is {thi:0.0} °C.")));
        }

        if (!Inside(TemperatureHumidity.Ranges[0], dryBulb.DegreesCelsius))
        {
            cautions.Add(new("outside-heat-index", string.Create(
                CultureInfo.InvariantCulture, $"The index was measured at {TemperatureHumidity.Ranges[0]}; {dryBulb.DegreesCelsius:0.#} °C lies outside.")));
        }

        return [.. cautions, BirdsDecide];
    }

    /// <summary>Whether a temperature lies in a range; a rounding of Fahrenheit does not put it outside.</summary>
    private static bool Inside(ValidityRange range, double celsius) => range.Contains(Math.Round(celsius, 9));

    /// <summary>0.85 Tdb + 0.15 Twb.</summary>
    private static double ThiCelsius(Temperature dryBulb, Temperature wetBulb)
    {
        double dry = Temperatures.Sane(dryBulb, nameof(dryBulb));
        double wet = Require.Between(wetBulb.DegreesCelsius, -40, dry + 1e-9, "°C", nameof(wetBulb));
        return (0.85 * dry) + (0.15 * wet);
    }
}
