namespace Poultry.Growth.Primitives;

/// <summary>
/// A figure as people give one: what is likely, and how low and how high it may be. It claims no chance, as an <see cref="Interval{T}"/> does:
/// a range of the trade, or a grower's guess, has none.
/// </summary>
/// <typeparam name="T">A quantity, a <see cref="Probability"/>, or a plain number without unit.</typeparam>
public sealed class LikelyRange<T> : IEquatable<LikelyRange<T>>
    where T : struct, IComparable<T>
{
    private LikelyRange(T low, T likely, T high) => (Low, Likely, High) = (low, likely, high);

    /// <summary>As low as it may be.</summary>
    public T Low { get; }

    /// <summary>What is likely.</summary>
    public T Likely { get; }

    /// <summary>As high as it may be.</summary>
    public T High { get; }

    /// <summary>A range from its three figures.</summary>
    /// <param name="low">Not above <paramref name="likely"/>.</param>
    /// <param name="likely">Between the other two.</param>
    /// <param name="high">Not below <paramref name="likely"/>.</param>
    /// <exception cref="ArgumentException">The figures are out of order, or one is not a number.</exception>
    public static LikelyRange<T> Of(T low, T likely, T high) =>
        low.CompareTo(likely) <= 0 && likely.CompareTo(high) <= 0 && (object)low is not double.NaN
            ? new(Interval<T>.Canonical(low)!.Value, Interval<T>.Canonical(likely)!.Value, Interval<T>.Canonical(high)!.Value)
            : throw new ArgumentException(
                RangeText<T>.Number(low) + ", " + RangeText<T>.Number(likely) + ", " + RangeText<T>.Number(high) + " is no range; expected low, likely and high in this order.",
                nameof(likely));

    /// <summary>A figure without doubt.</summary>
    public static LikelyRange<T> Exactly(T value) => Of(value, value, value);

    /// <inheritdoc/>
    public bool Equals(LikelyRange<T>? other) => other is not null && Low.Equals(other.Low) && Likely.Equals(other.Likely) && High.Equals(other.High);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LikelyRange<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Low, Likely, High);

    /// <summary>As in <c>72.5 % (70 % to 75 %)</c> or <c>1 kg (2.205 lb; 0.9 to 2 kg, 1.984 to 4.409 lb)</c>, in every culture.</summary>
    public override string ToString() => RangeText<T>.Around(Likely, "", Low, High);
}
