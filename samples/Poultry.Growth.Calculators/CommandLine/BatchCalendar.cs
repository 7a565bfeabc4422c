using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Days of the calendar for ages, where the file or the options say when the chicks were placed and how old they were.</summary>
internal sealed record BatchCalendar(DateOnly? Placed, Age? AgeAtPlacement)
{
    public static BatchCalendar Of(WeighInReading reading) => new(reading.Placed, reading.AgeAtPlacement);

    /// <summary>The day on which the birds have this age; null where placement is unknown or no calendar has the day.</summary>
    public DateOnly? DateAt(Age age)
    {
        if (Placed is not { } placed || AgeAtPlacement is not { } ageAtPlacement)
        {
            return null;
        }

        // The slack keeps an age worked out by subtraction on its own day.
        double day = placed.DayNumber + Math.Ceiling((age - ageAtPlacement).Days - 1e-6);
        return day >= DateOnly.MinValue.DayNumber && day <= DateOnly.MaxValue.DayNumber ? DateOnly.FromDayNumber((int)day) : null;
    }
}
