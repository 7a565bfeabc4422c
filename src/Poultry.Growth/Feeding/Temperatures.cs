using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>The temperature of the air around the birds by age: one value, a schedule, daily means, or a house first and outside after.</summary>
/// <remarks>Between given ages the temperature of the earlier one holds (a schedule, daily means); before the first and after the last given age theirs holds.</remarks>
public sealed class Temperatures
{
    /// <summary>Colder and hotter than birds live in: a slip of the keyboard.</summary>
    private const double ColdestCelsius = -20, HottestCelsius = 50;

    private readonly double[] fromDays, celsius;
    private readonly double standardUntilDays;

    private Temperatures(double standardUntilDays, double[] fromDays, double[] celsius) =>
        (this.standardUntilDays, this.fromDays, this.celsius) = (standardUntilDays, fromDays, celsius);

    /// <summary>A house at 32 °C that falls by 3 °C a week to 21 °C: what is taken to stand behind printed feed tables. Not for birds outdoors.</summary>
    public static Temperatures StandardHouse { get; } = new(double.PositiveInfinity, [], []);

    /// <summary>When the birds leave the standard house; null where they never do or never were in it.</summary>
    public Age? MoveOut => double.IsFinite(standardUntilDays) && standardUntilDays > 0 ? Age.FromDays(standardUntilDays) : null;

    /// <summary>One temperature all life.</summary>
    /// <param name="temperature">-20 to 50 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public static Temperatures Constant(Temperature temperature) => new(0, [0], [Sane(temperature, nameof(temperature))]);

    /// <summary>A schedule, or daily means: each temperature holds from its age until the next.</summary>
    /// <param name="steps">At least one, ages rising.</param>
    /// <exception cref="ArgumentException">There is none, or ages do not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside -20 to 50 °C.</exception>
    public static Temperatures ByAge(IEnumerable<(Age From, Temperature Temperature)> steps) => ByAge(0, steps);

    /// <summary>The standard house until the birds go out, then the outside: the temperature that must be asked for.</summary>
    /// <param name="moveOut">The age at which they go out, above 0.</param>
    /// <param name="outside">Outside temperatures by age; the last before <paramref name="moveOut"/> holds until the next.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age is 0.</exception>
    /// <exception cref="ArgumentException">The outside is the standard house.</exception>
    public static Temperatures HouseThen(Age moveOut, Temperatures outside)
    {
        ArgumentNullException.ThrowIfNull(outside);
        Require.Positive(moveOut.Days, "d", nameof(moveOut));
        return outside.fromDays.Length > 0
            ? new(moveOut.Days, outside.fromDays, outside.celsius)
            : throw new ArgumentException("The standard house is no outside; expected temperatures of the place.", nameof(outside));
    }

    /// <summary>The temperature at an age.</summary>
    /// <param name="age">Any; after the last that was given, that of the last.</param>
    public Temperature At(Age age) => Temperature.FromDegreesCelsius(Celsius(age.Days));

    /// <summary>In one line and in every culture.</summary>
    public override string ToString()
    {
        string house = double.IsInfinity(standardUntilDays) ? "standard house"
            : standardUntilDays > 0 ? string.Create(CultureInfo.InvariantCulture, $"standard house to {standardUntilDays:0.##} d, then ")
            : "";
        return house + celsius.Length switch
        {
            0 => "",
            1 => string.Create(CultureInfo.InvariantCulture, $"{celsius[0]:0.#} °C"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{celsius.Length} temperatures from {celsius.Min():0.#} to {celsius.Max():0.#} °C"),
        };
    }

    /// <summary>32 °C falling by 3 °C a week to 21 °C.</summary>
    internal static double StandardCelsius(double ageDays) => Math.Max(21, 32 - (3 * ageDays / 7));

    internal static double Sane(Temperature temperature, string name) => Require.Between(temperature.DegreesCelsius, ColdestCelsius, HottestCelsius, "°C", name);

    internal double Celsius(double ageDays)
    {
        if (ageDays < standardUntilDays)
        {
            return StandardCelsius(ageDays);
        }

        int found = Array.BinarySearch(fromDays, ageDays);
        return celsius[Math.Max(0, found >= 0 ? found : ~found - 1)];
    }

    private static Temperatures ByAge(double standardUntilDays, IEnumerable<(Age From, Temperature Temperature)> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        (Age From, Temperature Temperature)[] given = [.. steps];
        Require.Some(given, nameof(steps));
        for (int i = 1; i < given.Length; i++)
        {
            if (given[i].From <= given[i - 1].From)
            {
                throw new ArgumentException(given[i].From + " follows " + given[i - 1].From + "; expected rising ages.", nameof(steps));
            }
        }

        return new(standardUntilDays, [.. given.Select(step => step.From.Days)], [.. given.Select(step => Sane(step.Temperature, nameof(steps)))]);
    }
}
