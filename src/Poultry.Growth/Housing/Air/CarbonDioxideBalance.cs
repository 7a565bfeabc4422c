using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>The air that carries the birds' carbon dioxide away: V = q/(inside - outside).</summary>
public static class CarbonDioxideBalance
{
    /// <summary>Equation and source.</summary>
    public static ModelInfo Model { get; } = new(
        "carbon-dioxide-balance",
        "Ventilation by carbon dioxide balance",
        "V = q/(c_in - c_out)",
        [new("V", "ventilation", "m3/h"), new("q", "carbon dioxide given off", "m3/h"), new("c_in", "content inside, as a fraction", "-"), new("c_out", "content outside, as a fraction", "-")],
        [new Citation("MassBalance", "Conservation of mass in a steady state", HowKnown.Derived)],
        "Exact for air that is mixed and steady; the carbon dioxide of heaters that burn in the house is not in it and must be added.",
        HowKnown.Derived);

    /// <summary>Heaters add their own.</summary>
    public static Caution Heaters { get; } = new(
        "unvented-heaters", "Heaters that burn gas in the house without a flue give off carbon dioxide, water and, when they burn badly, carbon monoxide: add theirs, and have them serviced.");

    /// <summary>The ventilation that holds the content inside.</summary>
    /// <param name="given">Carbon dioxide of birds, manure and heaters, 0 or more.</param>
    /// <param name="inside">The content to hold, above <paramref name="outside"/>.</param>
    /// <param name="outside">The content of the outside air, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static VolumeFlow Ventilation(VolumeFlow given, VolumeConcentration inside, VolumeConcentration outside)
    {
        double low = Require.NotNegative(outside.PartsPerMillion, "ppm", nameof(outside));
        double high = Require.Above(inside.PartsPerMillion, low, "ppm", nameof(inside));
        return VolumeFlow.FromCubicMetersPerHour(Require.NotNegative(given.CubicMetersPerHour, "m3/h", nameof(given)) / ((high - low) * 1e-6));
    }
}
