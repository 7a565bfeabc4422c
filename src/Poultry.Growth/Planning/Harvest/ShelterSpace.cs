using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The floor of all shelters of a batch, and the weight of birds that it may carry.</summary>
public sealed class ShelterSpace
{
    private ShelterSpace(Area floor, StockingDensity limit, Duration rest) => (Floor, Limit, Rest) = (floor, limit, rest);

    /// <summary>All floor together.</summary>
    public Area Floor { get; }

    /// <summary>Live weight that the floor may carry, by the rule the farm keeps.</summary>
    public StockingDensity Limit { get; }

    /// <summary>How long shelters stand empty after the birds are caught.</summary>
    public Duration Rest { get; }

    /// <summary>Space and its rule.</summary>
    /// <param name="floor">All floor together, above 0.</param>
    /// <param name="limit">Live weight that it may carry, above 0.</param>
    /// <param name="rest">How long shelters stand empty after the birds are caught, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static ShelterSpace Of(Area floor, StockingDensity limit, Duration rest)
    {
        Require.Positive(floor.SquareMeters, "m2", nameof(floor));
        Require.Positive(limit.KilogramsPerSquareMeter, "kg/m2", nameof(limit));
        Require.NotNegative(rest.Days, "d", nameof(rest));
        return new(floor, limit, rest);
    }

    /// <summary>As in <c>60 m2 (646 ft2) for at most 20 kg/m2 (4.1 lb/ft2), 7 d of rest</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Floor.SquareMeters:0.#} m2 ({Floor.SquareFeet:0} ft2) for at most {Limit}, {Rest.Days:0.#} d of rest");
}
