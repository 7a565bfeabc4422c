using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Energy in the trade's unit.</summary>
internal static class Kilocalories
{
    private const double Joules = 4184, SecondsPerDay = 86400;

    public static double PerDay(Power power) => (double)power.Watts * SecondsPerDay / Joules;

    public static double PerKilogram(SpecificEnergy energy) => energy.JoulesPerKilogram / Joules;

    /// <summary>For each unit of weight of tables.</summary>
    public static double PerUnit(SpecificEnergy energy, Units units) => PerKilogram(energy) / units.OfKilograms(1);
}
