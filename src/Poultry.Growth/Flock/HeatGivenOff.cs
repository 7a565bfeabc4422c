using System.Globalization;
using Poultry.Growth.Evidence;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>The heat and moisture that birds give off at a temperature of the air.</summary>
public sealed class HeatGivenOff
{
    internal HeatGivenOff(Power total, Power sensible, MassFlow moisture, IReadOnlyList<Caution> cautions) =>
        (Total, Sensible, Moisture, Cautions) = (total, sensible, moisture, cautions);

    /// <summary>All heat.</summary>
    public Power Total { get; }

    /// <summary>Heat that warms the air.</summary>
    public Power Sensible { get; }

    /// <summary>Heat that leaves as moisture.</summary>
    public Power Latent => Power.FromWatts(Total.Watts - Sensible.Watts);

    /// <summary>Water breathed out and evaporated.</summary>
    public MassFlow Moisture { get; }

    /// <summary>Equations and source.</summary>
    public static ModelInfo Model => HouseClimate.Model;

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>As in <c>16.1 W: 9.4 W sensible, 6.7 W latent</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Total.Watts:0.#} W: {Sensible.Watts:0.#} W sensible, {Latent.Watts:0.#} W latent");
}
