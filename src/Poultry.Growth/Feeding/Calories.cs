using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Kilocalories, in which the sources count, and the quantities of the public edge: 1 kcal = 4184 J, 1 W = 20.65 kcal a day.</summary>
internal static class Calories
{
    public const double JoulesPerKilocalorie = 4184;

    public const double KilocaloriesPerDayPerWatt = 86400 / JoulesPerKilocalorie;

    public static Power PerDay(double kilocaloriesPerDay) => Power.FromWatts(kilocaloriesPerDay / KilocaloriesPerDayPerWatt);

    public static double PerDay(Power power) => (double)power.Watts * KilocaloriesPerDayPerWatt;

    public static SpecificEnergy PerKilogram(double kilocaloriesPerKilogram) => SpecificEnergy.FromJoulesPerKilogram(kilocaloriesPerKilogram * JoulesPerKilocalorie);

    public static double PerKilogram(SpecificEnergy energy) => energy.JoulesPerKilogram / JoulesPerKilocalorie;
}
