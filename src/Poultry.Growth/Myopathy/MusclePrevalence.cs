using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The share of single tenders (pectoralis minor muscles, two a bird) that have a lesion.</summary>
/// <remarks>Range: 0 to 1, both included. The default value is 0. A share of muscles is no share of birds: <see cref="LesionSides"/> turns one into the other.</remarks>
public readonly struct MusclePrevalence : IEquatable<MusclePrevalence>, IComparable<MusclePrevalence>
{
    private MusclePrevalence(Probability share) => Share = share;

    /// <summary>The share of muscles.</summary>
    public Probability Share { get; }

    /// <summary>The share of muscles, from 0 to 100 %.</summary>
    public double Percent => Share.Percent;

    /// <summary>A share of muscles.</summary>
    /// <param name="share">0 to 1.</param>
    public static MusclePrevalence Of(Probability share) => new(share);

    /// <summary>A share of muscles in percent.</summary>
    /// <param name="percent">0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 100.</exception>
    public static MusclePrevalence FromPercent(double percent) => new(Probability.FromPercent(percent));

    /// <inheritdoc/>
    public int CompareTo(MusclePrevalence other) => Share.CompareTo(other.Share);

    /// <inheritdoc/>
    public bool Equals(MusclePrevalence other) => Share.Equals(other.Share);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MusclePrevalence other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Share.GetHashCode();

    /// <summary>The same share.</summary>
    public static bool operator ==(MusclePrevalence left, MusclePrevalence right) => left.Equals(right);

    /// <summary>Different shares.</summary>
    public static bool operator !=(MusclePrevalence left, MusclePrevalence right) => !left.Equals(right);

    /// <summary>Fewer.</summary>
    public static bool operator <(MusclePrevalence left, MusclePrevalence right) => left.Share < right.Share;

    /// <summary>Fewer or as many.</summary>
    public static bool operator <=(MusclePrevalence left, MusclePrevalence right) => left.Share <= right.Share;

    /// <summary>More.</summary>
    public static bool operator >(MusclePrevalence left, MusclePrevalence right) => left.Share > right.Share;

    /// <summary>More or as many.</summary>
    public static bool operator >=(MusclePrevalence left, MusclePrevalence right) => left.Share >= right.Share;

    /// <summary>As in <c>0.78 % of muscles</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:G3} % of muscles");
}
