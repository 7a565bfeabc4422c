using System.Globalization;

namespace Poultry.Growth.Primitives;

/// <summary>A share a day: the relative gain of a bird (0.05 per day: 5 % heavier tomorrow, by rate), or the rate of maturing of a growth curve.</summary>
/// <remarks>Range: any finite number. The default value is 0 per day.</remarks>
public readonly struct DailyRate : IEquatable<DailyRate>, IComparable<DailyRate>
{
    private DailyRate(double perDay) => PerDay = perDay;

    /// <summary>The rate in 1/d.</summary>
    public double PerDay { get; }

    /// <summary>The rate in percent a day.</summary>
    public double PercentPerDay => 100 * PerDay;

    /// <summary>A rate in 1/d.</summary>
    /// <param name="perDay">Any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or not a number.</exception>
    public static DailyRate FromPerDay(double perDay) => new(Require.Finite(perDay, "1/d"));

    /// <summary>A rate in 1/wk, as tables by week print it.</summary>
    /// <param name="perWeek">Any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or not a number.</exception>
    public static DailyRate FromPerWeek(double perWeek) => new(Require.Finite(perWeek, "1/wk") / 7);

    /// <inheritdoc/>
    public int CompareTo(DailyRate other) => PerDay.CompareTo(other.PerDay);

    /// <inheritdoc/>
    public bool Equals(DailyRate other) => PerDay.Equals(other.PerDay);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DailyRate other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => PerDay.GetHashCode();

    /// <summary>Same rate.</summary>
    public static bool operator ==(DailyRate left, DailyRate right) => left.Equals(right);

    /// <summary>Different rates.</summary>
    public static bool operator !=(DailyRate left, DailyRate right) => !left.Equals(right);

    /// <summary>Slower.</summary>
    public static bool operator <(DailyRate left, DailyRate right) => left.PerDay < right.PerDay;

    /// <summary>Slower or the same.</summary>
    public static bool operator <=(DailyRate left, DailyRate right) => left.PerDay <= right.PerDay;

    /// <summary>Faster.</summary>
    public static bool operator >(DailyRate left, DailyRate right) => left.PerDay > right.PerDay;

    /// <summary>Faster or the same.</summary>
    public static bool operator >=(DailyRate left, DailyRate right) => left.PerDay >= right.PerDay;

    /// <summary>The rate per day, as in <c>0.0394/d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerDay:0.######}/d");
}
