using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Heat of a fasting bird, least at a critical temperature that falls as the bird grows.</summary>
/// <remarks>
/// This is fasting heat, below what a fed bird needs. The library uses it for how need changes with temperature and for the temperature at
/// which a bird spends least; not as the level of maintenance.
/// </remarks>
public static class FastingHeat
{
    /// <summary>Where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "fasting-heat",
        "Fasting heat and critical temperature",
        "FHP = BW^0.75 (84.98 + 2.65 (CT - T)) below CT, BW^0.75 (84.98 + 4.41 (T - CT)) above; CT = 22.46 + (35.83 - 22.46) exp(-0.4906 BW)",
        [
            new ModelSymbol("FHP", "fasting heat of a bird", "kcal/d"),
            new ModelSymbol("BW", "live weight", "kg"),
            new ModelSymbol("CT", "critical temperature, of least heat", "°C"),
            new ModelSymbol("T", "air temperature", "°C"),
        ],
        [FeedingSources.CriticalTemperature],
        "One study of males of one strain, 1 to 45 d. Sources disagree on the level: 134 to 192 kcal/d for a bird of 2 kg by length of fast and allowance for activity. In cold its slope stands for 31 % of fed heat at 5 °C where a chamber measured 60 to 80 % at 16 to 30 d, and half of it after 7 weeks.",
        HowKnown.ReadInSource,
        [new ValidityRange("live weight", 0.2, 3.3, "kg"), new ValidityRange("temperature", 15, 36, "°C")]);

    /// <summary>The temperature at which a bird of this weight spends least: 34.6 °C at 0.2 kg, 25.5 °C at 3 kg.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public static Temperature CriticalTemperature(Mass weight) =>
        Temperature.FromDegreesCelsius(CriticalCelsius(Require.Positive(weight.Kilograms, "kg", nameof(weight))));

    /// <summary>Heat of a fasting bird.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <param name="temperature">Of the air, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or the temperature is not finite.</exception>
    public static Power At(Mass weight, Temperature temperature)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        double celsius = Require.Finite(temperature.DegreesCelsius, "°C", nameof(temperature));
        return Calories.PerDay(Math.Pow(kilograms, 0.75) * (84.98 + AboveLeast(kilograms, celsius)));
    }

    /// <summary>CT = 22.46 + (35.83 - 22.46) exp(-0.4906 BW), °C.</summary>
    internal static double CriticalCelsius(double kilograms) => 22.46 + ((35.83 - 22.46) * Math.Exp(-0.4906 * kilograms));

    /// <summary>2.65 max(0, CT - T) + 4.41 max(0, T - CT), kcal/kg^0.75/d.</summary>
    internal static double AboveLeast(double kilograms, double celsius)
    {
        double critical = CriticalCelsius(kilograms);
        return celsius < critical ? 2.65 * (critical - celsius) : 4.41 * (celsius - critical);
    }
}
