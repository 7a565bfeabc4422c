using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>Money for a weight of feed, live birds or meat: per kilogram or per pound, never a bare number.</summary>
/// <remarks>Range: 0 or more, finite. The default value is free of charge.</remarks>
public readonly struct UnitPrice : IEquatable<UnitPrice>, IComparable<UnitPrice>
{
    private UnitPrice(double amountPerKilogram) => AmountPerKilogram = amountPerKilogram;

    /// <summary>Money for a kilogram, in the farm's currency.</summary>
    public double AmountPerKilogram { get; }

    /// <summary>Money for a pound, in the farm's currency.</summary>
    public double AmountPerPound => AmountPerKilogram * WeightText.KilogramsPerPound;

    /// <summary>A price for a kilogram.</summary>
    /// <param name="amountPerKilogram">In the farm's currency, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static UnitPrice FromAmountPerKilogram(double amountPerKilogram) => new(Require.NotNegative(amountPerKilogram, "per kg"));

    /// <summary>A price for a pound.</summary>
    /// <param name="amountPerPound">In the farm's currency, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static UnitPrice FromAmountPerPound(double amountPerPound) => new(Require.NotNegative(amountPerPound, "per lb") / WeightText.KilogramsPerPound);

    /// <summary>What a weight costs or brings.</summary>
    /// <param name="weight">Finite; what a negative weight costs is negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not finite.</exception>
    public Money For(Mass weight) => Money.Of(AmountPerKilogram * weight.Kilograms);

    /// <inheritdoc/>
    public int CompareTo(UnitPrice other) => AmountPerKilogram.CompareTo(other.AmountPerKilogram);

    /// <inheritdoc/>
    public bool Equals(UnitPrice other) => AmountPerKilogram.Equals(other.AmountPerKilogram);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is UnitPrice other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => AmountPerKilogram.GetHashCode();

    /// <summary>The same price.</summary>
    public static bool operator ==(UnitPrice left, UnitPrice right) => left.Equals(right);

    /// <summary>Another price.</summary>
    public static bool operator !=(UnitPrice left, UnitPrice right) => !left.Equals(right);

    /// <summary>Cheaper.</summary>
    public static bool operator <(UnitPrice left, UnitPrice right) => left.AmountPerKilogram < right.AmountPerKilogram;

    /// <summary>Cheaper or the same.</summary>
    public static bool operator <=(UnitPrice left, UnitPrice right) => left.AmountPerKilogram <= right.AmountPerKilogram;

    /// <summary>Dearer.</summary>
    public static bool operator >(UnitPrice left, UnitPrice right) => left.AmountPerKilogram > right.AmountPerKilogram;

    /// <summary>Dearer or the same.</summary>
    public static bool operator >=(UnitPrice left, UnitPrice right) => left.AmountPerKilogram >= right.AmountPerKilogram;

    /// <summary>Both ways, as in <c>9.50/kg (4.31/lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{AmountPerKilogram:0.00}/kg ({AmountPerPound:0.00}/lb)");
}
