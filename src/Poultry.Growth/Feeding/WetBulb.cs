using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>The temperature of a wet thermometer in moving air, where only the humidity is known.</summary>
/// <remarks>The formula is recalled, and agrees with two figures known otherwise to 0.01 °C. Who has a wet thermometer does not need it.</remarks>
public static class WetBulb
{
    /// <summary>Where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "wet-bulb",
        "Wet-bulb temperature from humidity",
        "Twb = T atan(0.151977 (RH + 8.313659)^0.5) + atan(T + RH) - atan(RH - 1.676331) + 0.00391838 RH^1.5 atan(0.023101 RH) - 4.686035",
        [new ModelSymbol("Twb", "wet-bulb temperature", "°C"), new ModelSymbol("T", "air temperature", "°C"), new ModelSymbol("RH", "relative humidity", "%")],
        [new Citation("Stull2011", "Stull R. 2011. Wet-bulb temperature from relative humidity and air temperature. J. Appl. Meteorol. Climatol. 50:2267-2269", HowKnown.Memory)],
        "Recalled, unverified; meant for sea level. It gives 16.56 and 24.25 °C at 21 °C, 65 % and 27 °C, 80 %, as other figures do. An error of 1 °C moves the heat index by 0.15 °C.",
        HowKnown.Memory,
        [new ValidityRange("relative humidity", 5, 99, "%"), new ValidityRange("air temperature", -20, 50, "°C")]);

    /// <summary>Goes with every answer from humidity.</summary>
    public static Caution FromHumidity { get; } = new(
        "wet-bulb-from-humidity", "The wet bulb was worked out from humidity by a formula recalled from memory; a wet thermometer, swung, is better.");

    /// <summary>The temperature of a wet thermometer.</summary>
    /// <param name="air">-20 to 50 °C.</param>
    /// <param name="humidity">Relative humidity, 5 to 100 %; at 100 % it is the air's own temperature.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static Temperature At(Temperature air, Probability humidity)
    {
        double celsius = Temperatures.Sane(air, nameof(air));
        double percent = Require.Between(humidity.Percent, 5, 100, "%", nameof(humidity));
        double wet = (celsius * Math.Atan(0.151977 * Math.Sqrt(percent + 8.313659))) + Math.Atan(celsius + percent) - Math.Atan(percent - 1.676331)
            + (0.00391838 * Math.Pow(percent, 1.5) * Math.Atan(0.023101 * percent)) - 4.686035;

        // Near saturation the fit passes the air itself by a few hundredths of a degree, which no thermometer does.
        return Temperature.FromDegreesCelsius(Math.Min(celsius, wet));
    }
}
