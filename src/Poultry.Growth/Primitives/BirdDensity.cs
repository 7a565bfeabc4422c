using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>Birds on a floor or on land, and the other way round the area that each has: 8 birds/m² are 0.125 m² a bird.</summary>
/// <remarks>Range: 0 or more, finite. The default value is no bird, for which there is no area a bird.</remarks>
public readonly struct BirdDensity : IEquatable<BirdDensity>, IComparable<BirdDensity>
{
    private const double SquareMetersPerSquareFoot = 0.3048 * 0.3048;
    private const double SquareMetersPerHectare = 10_000;
    private const double SquareMetersPerAcre = 43_560 * SquareMetersPerSquareFoot;

    private BirdDensity(double birdsPerSquareMeter) => BirdsPerSquareMeter = birdsPerSquareMeter;

    /// <summary>Birds on a square metre.</summary>
    public double BirdsPerSquareMeter { get; }

    /// <summary>Birds on a square foot.</summary>
    public double BirdsPerSquareFoot => BirdsPerSquareMeter * SquareMetersPerSquareFoot;

    /// <summary>Birds on a hectare.</summary>
    public double BirdsPerHectare => BirdsPerSquareMeter * SquareMetersPerHectare;

    /// <summary>Birds on an acre.</summary>
    public double BirdsPerAcre => BirdsPerSquareMeter * SquareMetersPerAcre;

    /// <summary>The area that each bird has; null where there is no bird.</summary>
    public Area? AreaPerBird => BirdsPerSquareMeter > 0 ? Area.FromSquareMeters(1 / BirdsPerSquareMeter) : null;

    /// <summary>Birds on a square metre.</summary>
    /// <param name="birdsPerSquareMeter">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static BirdDensity FromBirdsPerSquareMeter(double birdsPerSquareMeter) => new(Require.NotNegative(birdsPerSquareMeter, "birds/m2"));

    /// <summary>Birds on a hectare.</summary>
    /// <param name="birdsPerHectare">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static BirdDensity FromBirdsPerHectare(double birdsPerHectare) => new(Require.NotNegative(birdsPerHectare, "birds/ha") / SquareMetersPerHectare);

    /// <summary>Birds on an acre.</summary>
    /// <param name="birdsPerAcre">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static BirdDensity FromBirdsPerAcre(double birdsPerAcre) => new(Require.NotNegative(birdsPerAcre, "birds/ac") / SquareMetersPerAcre);

    /// <summary>As many birds as have this area each.</summary>
    /// <param name="area">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public static BirdDensity FromAreaPerBird(Area area) => new(1 / Require.Positive(area.SquareMeters, "m2", nameof(area)));

    /// <summary>Birds on an area.</summary>
    /// <param name="birds">0 or more; an expected number need not be whole.</param>
    /// <param name="area">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static BirdDensity Of(double birds, Area area) => new(Require.NotNegative(birds, "birds") / Require.Positive(area.SquareMeters, "m2", nameof(area)));

    /// <summary>What these birds weigh on the floor.</summary>
    /// <param name="birdWeight">Of one bird, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public StockingDensity At(Mass birdWeight) =>
        StockingDensity.FromKilogramsPerSquareMeter(BirdsPerSquareMeter * Require.NotNegative(birdWeight.Kilograms, "kg", nameof(birdWeight)));

    /// <inheritdoc/>
    public int CompareTo(BirdDensity other) => BirdsPerSquareMeter.CompareTo(other.BirdsPerSquareMeter);

    /// <inheritdoc/>
    public bool Equals(BirdDensity other) => BirdsPerSquareMeter.Equals(other.BirdsPerSquareMeter);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BirdDensity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => BirdsPerSquareMeter.GetHashCode();

    /// <summary>As dense.</summary>
    public static bool operator ==(BirdDensity left, BirdDensity right) => left.Equals(right);

    /// <summary>Not as dense.</summary>
    public static bool operator !=(BirdDensity left, BirdDensity right) => !left.Equals(right);

    /// <summary>Less dense.</summary>
    public static bool operator <(BirdDensity left, BirdDensity right) => left.BirdsPerSquareMeter < right.BirdsPerSquareMeter;

    /// <summary>Less or as dense.</summary>
    public static bool operator <=(BirdDensity left, BirdDensity right) => left.BirdsPerSquareMeter <= right.BirdsPerSquareMeter;

    /// <summary>Denser.</summary>
    public static bool operator >(BirdDensity left, BirdDensity right) => left.BirdsPerSquareMeter > right.BirdsPerSquareMeter;

    /// <summary>Denser or the same.</summary>
    public static bool operator >=(BirdDensity left, BirdDensity right) => left.BirdsPerSquareMeter >= right.BirdsPerSquareMeter;

    /// <summary>Both ways, as in <c>8 birds/m2 (1.35 ft2 a bird)</c>, in every culture.</summary>
    public override string ToString() => BirdsPerSquareMeter > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{BirdsPerSquareMeter:0.###} birds/m2 ({1 / BirdsPerSquareFoot:0.##} ft2 a bird)")
        : "0 birds/m2";
}
