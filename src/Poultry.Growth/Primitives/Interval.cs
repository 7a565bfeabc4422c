using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>A range that holds the true value with a stated chance. A bound that the data do not give is open: <see langword="null"/>, an answer and not an omission.</summary>
/// <typeparam name="T">A quantity, an <see cref="Age"/>, or a plain number without unit.</typeparam>
/// <remarks>Quantities are kept in their base unit (1000 g and 1 kg are the same bound), and equality is that of the base numbers.</remarks>
public sealed class Interval<T> : IEquatable<Interval<T>>
    where T : struct, IComparable<T>
{
    private Interval(T? low, T? high, double level) => (Low, High, Level) = (low, high, level);

    /// <summary>The lower bound; null where it is open.</summary>
    public T? Low { get; }

    /// <summary>The upper bound; null where it is open.</summary>
    public T? High { get; }

    /// <summary>The chance that the interval claims, between 0 and 1; 0.90 where nothing else was asked.</summary>
    public double Level { get; }

    /// <summary>An interval from its bounds.</summary>
    /// <param name="low">Lower bound, or null where it is open.</param>
    /// <param name="high">Upper bound, or null where it is open; not below <paramref name="low"/>.</param>
    /// <param name="level">The chance claimed, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    /// <exception cref="ArgumentException">The bounds are crossed, or one is not a number.</exception>
    public static Interval<T> Of(T? low, T? high, double level)
    {
        Require.Share(level);
        if (low is { } from && high is { } to && from.CompareTo(to) > 0)
        {
            throw new ArgumentException("The lower bound lies above the upper bound.", nameof(low));
        }

        if ((object?)low is double.NaN || (object?)high is double.NaN)
        {
            throw new ArgumentException("A bound is not a number; expected null where it is open.", (object?)low is double.NaN ? nameof(low) : nameof(high));
        }

        return new Interval<T>(Canonical(low), Canonical(high), level);
    }

    /// <summary>Whether a value lies within the bounds, both included.</summary>
    public bool Contains(T value) => !(Low is { } low && value.CompareTo(low) < 0) && !(High is { } high && value.CompareTo(high) > 0);

    /// <inheritdoc/>
    public bool Equals(Interval<T>? other) =>
        other is not null && Level.Equals(other.Level) && Nullable.Equals(Low, other.Low) && Nullable.Equals(High, other.High);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Interval<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Low, High, Level);

    /// <summary>As in <c>2.41 to 2.68 kg (5.313 to 5.908 lb; 90 %)</c> or <c>45.3 to 52.1 d (90 %)</c>, in every culture; an open bound prints as <c>open</c>.</summary>
    public override string ToString() => RangeText<T>.Between(Low, High, Percent);

    internal string Percent => string.Create(CultureInfo.InvariantCulture, $"{100 * Level:0.##} %");

    internal static T? Canonical(T? value) => (object?)value is IQuantity quantity ? (T)quantity.ToUnit(quantity.QuantityInfo.BaseUnitInfo.Value) : value;
}
