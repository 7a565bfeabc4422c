using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>The weight of a carcass, or of many, on a basis that is part of the type: only weights of one basis add up and are compared; another one does not compile.</summary>
/// <typeparam name="TBasis">What was on the scale, and when.</typeparam>
public readonly struct CarcassWeight<TBasis> : IEquatable<CarcassWeight<TBasis>>, IComparable<CarcassWeight<TBasis>>
    where TBasis : ICarcassBasis
{
    private readonly double kilograms;

    internal CarcassWeight(double kilograms) => this.kilograms = kilograms;

    /// <summary>The weight, 0 or more.</summary>
    public Mass Weight => Mass.FromKilograms(kilograms);

    /// <summary>Two carcasses together.</summary>
    public static CarcassWeight<TBasis> operator +(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => new(one.kilograms + other.kilograms);

    /// <summary>Whether the first one is lighter.</summary>
    public static bool operator <(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one.CompareTo(other) < 0;

    /// <summary>Whether the first one is heavier.</summary>
    public static bool operator >(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one.CompareTo(other) > 0;

    /// <summary>Whether the first one is not heavier.</summary>
    public static bool operator <=(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one.CompareTo(other) <= 0;

    /// <summary>Whether the first one is not lighter.</summary>
    public static bool operator >=(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one.CompareTo(other) >= 0;

    /// <summary>Whether both weigh the same.</summary>
    public static bool operator ==(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one.Equals(other);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => !one.Equals(other);

    /// <summary>Two carcasses together.</summary>
    public static CarcassWeight<TBasis> Add(CarcassWeight<TBasis> one, CarcassWeight<TBasis> other) => one + other;

    /// <inheritdoc/>
    public int CompareTo(CarcassWeight<TBasis> other) => kilograms.CompareTo(other.kilograms);

    /// <inheritdoc/>
    public bool Equals(CarcassWeight<TBasis> other) => kilograms.Equals(other.kilograms);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CarcassWeight<TBasis> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => kilograms.GetHashCode();

    /// <summary>In one line, as in <c>2.1 kg (4.63 lb), hot, with neck, without giblets, without feet</c>, in every culture.</summary>
    public override string ToString() => WeightText.Of(kilograms) + ", " + TBasis.Basis;
}
