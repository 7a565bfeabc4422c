using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>How the heat of birds changes with the temperature of the air, and how it parts into warmth and moisture: the CIGR relations as recalled.</summary>
internal static class HouseClimate
{
    /// <summary>Heat that evaporates a kilogram of water, in Wh.</summary>
    private const double WattHoursPerKilogramOfWater = 680;

    public static Citation Cigr { get; } = new(
        "CIGR2002", "CIGR Working Group 2002. Climatization of Animal Houses, 4th report", HowKnown.Memory, "chapters 2 and 3, not at hand");

    public static ModelInfo Model { get; } = new(
        "house-heat-cigr",
        "Sensible and latent heat of birds by air temperature",
        "total = HP20 (1000 + 20 (20 - T))/1000; sensible = HP20 (0.61 (1000 + 20 (20 - T)) - 0.228 T^2)/1000; latent = total - sensible; water = latent/680",
        [
            new("HP20", "total heat of one bird at 20 °C", "W"),
            new("T", "air temperature", "°C"),
            new("total", "heat given off", "W"),
            new("sensible", "heat that warms the air", "W"),
            new("latent", "heat that leaves as moisture", "W"),
            new("water", "moisture given off", "kg/h"),
        ],
        [Cigr],
        "Recalled, unverified. Birds on litter give off about 17 % less sensible heat than such tables say (Pedersen and Thomsen 2000, abstract).",
        HowKnown.Memory,
        [new ValidityRange("air temperature", 10, 35, "°C")]);

    public static Caution FromMemory { get; } = new(
        "house-heat-unverified", "How heat parts into warmth and moisture, and how it changes with temperature, is recalled from a handbook and unverified.");

    private static Caution OutsideRange { get; } = new(
        "house-heat-outside-range", "The relations for heat and moisture are meant for 10 to 35 °C (50 to 95 °F); this temperature lies outside.");

    public static HeatGivenOff At(Power at20, Temperature air, IReadOnlyList<Caution> ofHeat)
    {
        double celsius = Require.Between(air.DegreesCelsius, -20, 40, "°C", nameof(air));
        double total = Total((double)at20.Watts, celsius);
        double sensible = Sensible((double)at20.Watts, celsius);
        return new(
            Power.FromWatts(total),
            Power.FromWatts(sensible),
            MassFlow.FromKilogramsPerHour((total - sensible) / WattHoursPerKilogramOfWater),
            [.. ofHeat, FromMemory, .. Model.Ranges[0].Contains(celsius) ? Array.Empty<Caution>() : [OutsideRange]]);
    }

    /// <summary>total = HP20 (1000 + 20 (20 - T))/1000.</summary>
    private static double Total(double watts, double celsius) => watts * (1000 + (20 * (20 - celsius))) / 1000;

    /// <summary>sensible = HP20 (0.61 (1000 + 20 (20 - T)) - 0.228 T^2)/1000.</summary>
    private static double Sensible(double watts, double celsius) => watts * ((0.61 * (1000 + (20 * (20 - celsius)))) - (0.228 * celsius * celsius)) / 1000;
}
