using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>Live weight on a floor: what most rules limit.</summary>
/// <remarks>Range: 0 or more, finite. The default value is an empty floor.</remarks>
public readonly struct StockingDensity : IEquatable<StockingDensity>, IComparable<StockingDensity>
{
    private const double KilogramsPerSquareMeterInPoundsPerSquareFoot = WeightText.KilogramsPerPound / (0.3048 * 0.3048);

    private StockingDensity(double kilogramsPerSquareMeter) => KilogramsPerSquareMeter = kilogramsPerSquareMeter;

    /// <summary>In kg/m².</summary>
    public double KilogramsPerSquareMeter { get; }

    /// <summary>In lb/ft²; 1 lb/ft² is 4.882 kg/m².</summary>
    public double PoundsPerSquareFoot => KilogramsPerSquareMeter / KilogramsPerSquareMeterInPoundsPerSquareFoot;

    /// <summary>A density in kg/m².</summary>
    /// <param name="kilogramsPerSquareMeter">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static StockingDensity FromKilogramsPerSquareMeter(double kilogramsPerSquareMeter) => new(Require.NotNegative(kilogramsPerSquareMeter, "kg/m2"));

    /// <summary>A density in lb/ft².</summary>
    /// <param name="poundsPerSquareFoot">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static StockingDensity FromPoundsPerSquareFoot(double poundsPerSquareFoot) =>
        new(Require.NotNegative(poundsPerSquareFoot, "lb/ft2") * KilogramsPerSquareMeterInPoundsPerSquareFoot);

    /// <summary>A live weight on a floor.</summary>
    /// <param name="liveWeight">Of all birds together, 0 or more.</param>
    /// <param name="floor">The littered area that the birds can reach at all times, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static StockingDensity Of(Mass liveWeight, Area floor) =>
        new(Require.NotNegative(liveWeight.Kilograms, "kg", nameof(liveWeight)) / Require.Positive(floor.SquareMeters, "m2", nameof(floor)));

    /// <inheritdoc/>
    public int CompareTo(StockingDensity other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);

    /// <inheritdoc/>
    public bool Equals(StockingDensity other) => KilogramsPerSquareMeter.Equals(other.KilogramsPerSquareMeter);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is StockingDensity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => KilogramsPerSquareMeter.GetHashCode();

    /// <summary>As dense.</summary>
    public static bool operator ==(StockingDensity left, StockingDensity right) => left.Equals(right);

    /// <summary>Not as dense.</summary>
    public static bool operator !=(StockingDensity left, StockingDensity right) => !left.Equals(right);

    /// <summary>Less dense.</summary>
    public static bool operator <(StockingDensity left, StockingDensity right) => left.KilogramsPerSquareMeter < right.KilogramsPerSquareMeter;

    /// <summary>Less or as dense.</summary>
    public static bool operator <=(StockingDensity left, StockingDensity right) => left.KilogramsPerSquareMeter <= right.KilogramsPerSquareMeter;

    /// <summary>Denser.</summary>
    public static bool operator >(StockingDensity left, StockingDensity right) => left.KilogramsPerSquareMeter > right.KilogramsPerSquareMeter;

    /// <summary>Denser or the same.</summary>
    public static bool operator >=(StockingDensity left, StockingDensity right) => left.KilogramsPerSquareMeter >= right.KilogramsPerSquareMeter;

    /// <summary>Both ways, as in <c>33 kg/m2 (6.76 lb/ft2)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{KilogramsPerSquareMeter:0.##} kg/m2 ({PoundsPerSquareFoot:0.##} lb/ft2)");
}
