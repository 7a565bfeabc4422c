using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>Feed eaten for each unit of weight, with what it is divided by: a pure number (kg/kg, lb/lb). Lower is better.</summary>
/// <remarks>
/// Range: above 0, finite. Figures on different bases are different things: they are never equal, and comparing them throws. A conversion is no yield:
/// neither turns into the other.
/// </remarks>
public sealed class FeedConversion : IEquatable<FeedConversion>, IComparable<FeedConversion>
{
    private FeedConversion(double ratio, FeedConversionBasis basis) => (Ratio, Basis) = (ratio, basis);

    /// <summary>Feed over weight, a pure number above 0.</summary>
    public double Ratio { get; }

    /// <summary>What the feed is divided by.</summary>
    public FeedConversionBasis Basis { get; }

    /// <summary>A conversion already worked out.</summary>
    /// <param name="ratio">Feed over weight, above 0.</param>
    /// <param name="basis">What the feed was divided by.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or no known basis.</exception>
    public static FeedConversion Of(double ratio, FeedConversionBasis basis) => new(Require.Positive(ratio, ""), Require.Named(basis));

    /// <summary>A conversion from feed and weight.</summary>
    /// <param name="feed">Feed eaten, above 0.</param>
    /// <param name="weight">What it is divided by, above 0: live weight, gain, or live weight with that of dead birds, as the basis says.</param>
    /// <param name="basis">Which of them.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static FeedConversion Of(Mass feed, Mass weight, FeedConversionBasis basis) =>
        Of(Require.Positive(feed.Kilograms, "kg", nameof(feed)) / Require.Positive(weight.Kilograms, "kg", nameof(weight)), basis);

    /// <summary>Which is better; null comes first.</summary>
    /// <exception cref="ArgumentException">The other stands on another basis.</exception>
    public int CompareTo(FeedConversion? other) => other is null ? 1
        : other.Basis == Basis ? Ratio.CompareTo(other.Ratio)
        : throw new ArgumentException($"A conversion by {Basis} cannot be compared with one by {other.Basis}.", nameof(other));

    /// <inheritdoc/>
    public bool Equals(FeedConversion? other) => other is not null && Basis == other.Basis && Ratio.Equals(other.Ratio);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FeedConversion);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Ratio, Basis);

    /// <summary>Same ratio on the same basis.</summary>
    public static bool operator ==(FeedConversion? left, FeedConversion? right) => Equals(left, right);

    /// <summary>Different ratio or basis.</summary>
    public static bool operator !=(FeedConversion? left, FeedConversion? right) => !Equals(left, right);

    /// <summary>Better.</summary>
    public static bool operator <(FeedConversion? left, FeedConversion? right) => Comparer<FeedConversion>.Default.Compare(left, right) < 0;

    /// <summary>Better or the same.</summary>
    public static bool operator <=(FeedConversion? left, FeedConversion? right) => Comparer<FeedConversion>.Default.Compare(left, right) <= 0;

    /// <summary>Worse.</summary>
    public static bool operator >(FeedConversion? left, FeedConversion? right) => Comparer<FeedConversion>.Default.Compare(left, right) > 0;

    /// <summary>Worse or the same.</summary>
    public static bool operator >=(FeedConversion? left, FeedConversion? right) => Comparer<FeedConversion>.Default.Compare(left, right) >= 0;

    /// <summary>As in <c>1.88 (feed over gain)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Ratio:0.000} (feed over {Words(Basis)})");

    private static string Words(FeedConversionBasis basis) => basis switch
    {
        FeedConversionBasis.LiveWeight => "live weight sold",
        FeedConversionBasis.Gain => "gain",
        _ => "live weight sold and dead",
    };
}
