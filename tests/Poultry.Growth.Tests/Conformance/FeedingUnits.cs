using Poultry.Growth.Feeding;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The units in which sources on energy print, for the checks of the feed room.</summary>
internal static class FeedingUnits
{
    public static double PerDay(Power power) => Calories.PerDay(power);

    public static SpecificEnergy Kilocalories(double perKilogram) => Calories.PerKilogram(perKilogram);

    public static Mass Kilograms(double kilograms) => Mass.FromKilograms(kilograms);

    public static MassFlow GramsPerDay(double grams) => MassFlow.FromGramsPerDay(grams);

    public static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static double FahrenheitAsCelsius(this double fahrenheit) => Temperature.FromDegreesFahrenheit(fahrenheit).DegreesCelsius;
}
