namespace Poultry.Growth.Feeding;

/// <summary>Energy of a bird and day by its parts, kcal.</summary>
internal readonly record struct EnergyParts(double Maintenance, double TemperatureTerm, double Gain)
{
    public double Total => Maintenance + TemperatureTerm + Gain;

    public static EnergyParts Mean(EnergyParts one, EnergyParts other) => new(
        (one.Maintenance + other.Maintenance) / 2, (one.TemperatureTerm + other.TemperatureTerm) / 2, (one.Gain + other.Gain) / 2);
}
