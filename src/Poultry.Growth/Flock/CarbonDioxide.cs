using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>The carbon dioxide that comes with the heat of birds.</summary>
public sealed class CarbonDioxide
{
    private readonly double litresPerKilowattHour;

    private CarbonDioxide(double litresPerKilowattHour, ModelInfo model) => (this.litresPerKilowattHour, Model) = (litresPerKilowattHour, model);

    /// <summary>185 L an hour for 1000 W of birds; meat birds may give less.</summary>
    public static CarbonDioxide OfBirds { get; } = new(185, Describe(
        "carbon-dioxide-birds", "Carbon dioxide of birds", "q = 185 P", "Given for housed animals in general; lower for meat birds, by how much is not said."));

    /// <summary>The same and a tenth more from manure.</summary>
    public static CarbonDioxide OfBirdsAndManure { get; } = new(185 * 1.10, Describe(
        "carbon-dioxide-birds-manure", "Carbon dioxide of birds and manure", "q = 1.10 x 185 P", "Another study of birds on litter says 1.077 times the birds' own (Xin et al., abstract)."));

    /// <summary>Equation and source.</summary>
    public ModelInfo Model { get; }

    /// <summary>What comes with so much heat.</summary>
    /// <param name="heat">Total heat of the birds, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The heat is negative.</exception>
    public VolumeFlow With(Power heat) =>
        VolumeFlow.FromLitersPerHour(litresPerKilowattHour * Require.NotNegative((double)heat.Watts, "W", nameof(heat)) / 1000);

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Describe(string id, string name, string equation, string accuracy) => new(
        id,
        name,
        equation,
        [new("q", "carbon dioxide", "L/h"), new("P", "total heat of the birds at 20 °C", "kW")],
        [new Citation("Pedersen2008", "Pedersen S. et al. 2008. Carbon dioxide production in animal houses. CIGR Journal, article 1205", HowKnown.ReadInSource, "abstract")],
        accuracy,
        HowKnown.ReadInSource);
}
