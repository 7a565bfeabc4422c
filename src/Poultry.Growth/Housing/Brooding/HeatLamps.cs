using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>Heat lamps of 250 W for a brooder.</summary>
public static class HeatLamps
{
    private const double MostChicksPerLamp = 75;
    private const double FewestChicksPerLamp = 50;

    /// <summary>Rule and source.</summary>
    public static ModelInfo Model { get; } = new(
        "heat-lamps",
        "Heat lamps for a brooder",
        "lamps = chicks/75 to chicks/50",
        [new("lamps", "lamps of 250 W, rounded up", "-"), new("chicks", "chicks in the brooder", "birds")],
        [new Citation("LampRule", "Common practice of the trade", HowKnown.CommonPractice, "one lamp of 250 W for 50 to 75 chicks, about 45 cm (18 in) above the floor")],
        "A rule of thumb for a draught-free room; a cold room needs more.",
        HowKnown.CommonPractice);

    /// <summary>How many lamps, from a warm room to a cool one, both rounded up.</summary>
    /// <param name="chicks">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public static (int Fewest, int Most) For(int chicks) =>
        ((int)Math.Ceiling(Require.AtLeast(chicks, 1) / MostChicksPerLamp), (int)Math.Ceiling(chicks / FewestChicksPerLamp));
}
