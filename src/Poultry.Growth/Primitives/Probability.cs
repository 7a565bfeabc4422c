using System.Globalization;

namespace Poultry.Growth.Primitives;

/// <summary>How likely something is, or which part of many birds it holds for.</summary>
/// <remarks>Range: 0 to 1, both included. The default value is 0.</remarks>
public readonly struct Probability : IEquatable<Probability>, IComparable<Probability>
{
    private Probability(double fraction) => Fraction = fraction;

    /// <summary>From 0 (never, none) to 1 (surely, all).</summary>
    public double Fraction { get; }

    /// <summary>From 0 to 100 %.</summary>
    public double Percent => 100 * Fraction;

    /// <summary>A probability as a fraction.</summary>
    /// <param name="fraction">0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 1.</exception>
    public static Probability FromFraction(double fraction) => new(Require.Between(fraction, 0, 1, ""));

    /// <summary>A probability in percent.</summary>
    /// <param name="percent">0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 100.</exception>
    public static Probability FromPercent(double percent) => new(Require.Between(percent, 0, 100, "%") / 100);

    /// <inheritdoc/>
    public int CompareTo(Probability other) => Fraction.CompareTo(other.Fraction);

    /// <inheritdoc/>
    public bool Equals(Probability other) => Fraction.Equals(other.Fraction);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Probability other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Fraction.GetHashCode();

    /// <summary>As likely.</summary>
    public static bool operator ==(Probability left, Probability right) => left.Equals(right);

    /// <summary>Not as likely.</summary>
    public static bool operator !=(Probability left, Probability right) => !left.Equals(right);

    /// <summary>Less likely.</summary>
    public static bool operator <(Probability left, Probability right) => left.Fraction < right.Fraction;

    /// <summary>Less or as likely.</summary>
    public static bool operator <=(Probability left, Probability right) => left.Fraction <= right.Fraction;

    /// <summary>More likely.</summary>
    public static bool operator >(Probability left, Probability right) => left.Fraction > right.Fraction;

    /// <summary>More or as likely.</summary>
    public static bool operator >=(Probability left, Probability right) => left.Fraction >= right.Fraction;

    /// <summary>In percent, as in <c>82 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:0.#} %");
}
