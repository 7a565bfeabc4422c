using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How growth falls as heat raises the temperature of the bird itself.</summary>
public static class BodyTemperatureGrowth
{
    /// <summary>Where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "growth-by-body-temperature",
        "Growth by body temperature",
        "g = 46.25 - 1.024 Tb",
        [new ModelSymbol("g", "gain as a part of live weight", "%/d"), new ModelSymbol("Tb", "body temperature", "°C")],
        [new Citation("BodyTemperature1983", "Br. Poult. Sci. 1983, 24:489", HowKnown.ReadInSource, "abstract: air above 32 °C cuts gain by about 10 % at 5 to 9 weeks")],
        "One study of birds of 5 to 9 weeks in 1983. Two printed points, at 42.13 and 42.86 °C. How intake falls with the air is disputed: 1.6 % a degree from 21 to 30 °C and 4.6 % above by custom, 3.9 % (gain 6.1 %) in one trial at 35 °C for 8 h a day, nothing below 800 g. Of the gain lost 71 % is lost appetite in one trial, the smaller part in another. So nothing here turns air temperature into intake: weigh the birds, and lower the curve.",
        HowKnown.ReadInSource,
        [new ValidityRange("body temperature", 41, 44, "°C")]);

    /// <summary>Gain a day as a share of the weight.</summary>
    /// <param name="body">Temperature of the bird, 41 to 44 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public static DailyRate At(Temperature body) =>
        DailyRate.FromPerDay((46.25 - (1.024 * Require.Between(body.DegreesCelsius, 41, 44, "°C", nameof(body)))) / 100);
}
