using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The share of birds that have a lesion in at least one of their two tenders.</summary>
/// <remarks>Range: 0 to 1, both included. The default value is 0. A share of birds is no share of muscles: <see cref="LesionSides"/> turns one into the other.</remarks>
public readonly struct BirdPrevalence : IEquatable<BirdPrevalence>, IComparable<BirdPrevalence>
{
    private BirdPrevalence(Probability share) => Share = share;

    /// <summary>The share of birds.</summary>
    public Probability Share { get; }

    /// <summary>The share of birds, from 0 to 100 %.</summary>
    public double Percent => Share.Percent;

    /// <summary>A share of birds.</summary>
    /// <param name="share">0 to 1.</param>
    public static BirdPrevalence Of(Probability share) => new(share);

    /// <summary>A share of birds in percent.</summary>
    /// <param name="percent">0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 100.</exception>
    public static BirdPrevalence FromPercent(double percent) => new(Probability.FromPercent(percent));

    /// <inheritdoc/>
    public int CompareTo(BirdPrevalence other) => Share.CompareTo(other.Share);

    /// <inheritdoc/>
    public bool Equals(BirdPrevalence other) => Share.Equals(other.Share);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BirdPrevalence other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Share.GetHashCode();

    /// <summary>The same share.</summary>
    public static bool operator ==(BirdPrevalence left, BirdPrevalence right) => left.Equals(right);

    /// <summary>Different shares.</summary>
    public static bool operator !=(BirdPrevalence left, BirdPrevalence right) => !left.Equals(right);

    /// <summary>Fewer.</summary>
    public static bool operator <(BirdPrevalence left, BirdPrevalence right) => left.Share < right.Share;

    /// <summary>Fewer or as many.</summary>
    public static bool operator <=(BirdPrevalence left, BirdPrevalence right) => left.Share <= right.Share;

    /// <summary>More.</summary>
    public static bool operator >(BirdPrevalence left, BirdPrevalence right) => left.Share > right.Share;

    /// <summary>More or as many.</summary>
    public static bool operator >=(BirdPrevalence left, BirdPrevalence right) => left.Share >= right.Share;

    /// <summary>As in <c>0.78 % of birds</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:G3} % of birds");
}
