using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Primitives;

/// <summary>
/// How long ago a bird hatched, in whole or part days. An age is a point in a life, a <see cref="Duration"/> is a length of time:
/// an age plus a duration is an age, the difference of two ages is a duration, and neither turns into the other unasked.
/// </summary>
/// <remarks>Range: 0 (hatch) or more, finite. The default value is hatch, 0 d.</remarks>
public readonly struct Age : IEquatable<Age>, IComparable<Age>
{
    private Age(double days) => Days = days;

    /// <summary>The day of hatch: age 0 d.</summary>
    public static Age Hatch => default;

    /// <summary>The age in days.</summary>
    public double Days { get; }

    /// <summary>The age in weeks of seven days.</summary>
    public double Weeks => Days / 7;

    /// <summary>An age of so many days.</summary>
    /// <param name="days">Days since hatch, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static Age FromDays(double days) => new(Require.NotNegative(days, "d"));

    /// <summary>An age of so many weeks of seven days.</summary>
    /// <param name="weeks">Weeks since hatch, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static Age FromWeeks(double weeks) => new(7 * Require.NotNegative(weeks, "wk"));

    /// <summary>The age on a day, given the age on another.</summary>
    /// <param name="date">The day asked for.</param>
    /// <param name="placed">The day the chicks were placed.</param>
    /// <param name="ageAtPlacement">How old they were that day: chicks by mail are one to three days old.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day lies before hatch.</exception>
    public static Age On(DateOnly date, DateOnly placed, Age ageAtPlacement) =>
        FromDays(date.DayNumber - placed.DayNumber + ageAtPlacement.Days);

    /// <summary>The first day on which birds are of this age, as they are at the hour of placement; the day of placement for those that came older.</summary>
    /// <param name="placed">The day the chicks were placed.</param>
    /// <param name="ageAtPlacement">How old they were that day.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day lies beyond the calendar.</exception>
    public DateOnly ReachedOn(DateOnly placed, Age ageAtPlacement) => placed.AddDays((int)Math.Max(0, Math.Ceiling(Days - ageAtPlacement.Days - 1e-9)));

    /// <summary>The age some time later (or earlier, for a negative duration).</summary>
    /// <param name="time">Negative for an earlier age; not beyond hatch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The result lies before hatch.</exception>
    public Age Add(Duration time) => FromDays(Days + time.Days);

    /// <summary>The time from another age to this one; negative when the other is older.</summary>
    /// <param name="other">Any.</param>
    public Duration Since(Age other) => Duration.FromDays(Days - other.Days);

    /// <inheritdoc cref="Add"/>
    public static Age operator +(Age age, Duration time) => age.Add(time);

    /// <summary>The time from the right age to the left one; negative when the right is older.</summary>
    /// <param name="left">Any.</param>
    /// <param name="right">Any.</param>
    public static Duration Subtract(Age left, Age right) => left.Since(right);

    /// <inheritdoc cref="Subtract"/>
    public static Duration operator -(Age left, Age right) => left.Since(right);

    /// <inheritdoc/>
    public int CompareTo(Age other) => Days.CompareTo(other.Days);

    /// <inheritdoc/>
    public bool Equals(Age other) => Days.Equals(other.Days);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Age other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Days.GetHashCode();

    /// <summary>Same age.</summary>
    public static bool operator ==(Age left, Age right) => left.Equals(right);

    /// <summary>Different ages.</summary>
    public static bool operator !=(Age left, Age right) => !left.Equals(right);

    /// <summary>Younger.</summary>
    public static bool operator <(Age left, Age right) => left.Days < right.Days;

    /// <summary>Younger or the same age.</summary>
    public static bool operator <=(Age left, Age right) => left.Days <= right.Days;

    /// <summary>Older.</summary>
    public static bool operator >(Age left, Age right) => left.Days > right.Days;

    /// <summary>Older or the same age.</summary>
    public static bool operator >=(Age left, Age right) => left.Days >= right.Days;

    /// <summary>The age in days, as in <c>42 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Days:0.##} d");
}
