using System.CommandLine;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>The ages and dates to project to, and the weight to reach.</summary>
internal sealed class WhenOptions
{
    public static readonly Age Oldest = Age.FromDays(1000);

    private readonly Option<string[]> at = new("--at")
    {
        HelpName = "49d", Description = "Ages to project to; repeatable, or with commas. [default: the last weigh-in and the weeks after it up to 63 d]",
    };

    private readonly Option<string[]> on = new("--on") { HelpName = "2027-06-07", Description = "Dates to project to, likewise." };

    private readonly Option<string?> target = new("--target") { HelpName = "2.6kg", Description = "A mean live weight: when is it reached?" };

    public static WhenOptions AddTo(Command command)
    {
        WhenOptions options = new();
        command.Add(options.at);
        command.Add(options.on);
        command.Add(options.target);
        return options;
    }

    public Mass? Target(OptionWords words) => words.Weight(target);

    /// <summary>The ages asked for, in order.</summary>
    /// <param name="words">The command line.</param>
    /// <param name="calendar">Null where the file that should say could not be read.</param>
    public IReadOnlyList<Age> Ages(OptionWords words, BatchCalendar? calendar)
    {
        IReadOnlyList<Age> ages = words.Ages(at);
        IReadOnlyList<DateOnly> dates = words.Dates(on);
        if (calendar is { Placed: { } placed, AgeAtPlacement: { } ageAtPlacement })
        {
            if (dates.Any(date => date < placed))
            {
                words.Refuse(on.Name + ": lies before the chicks were placed; expected a later date");
                return ages;
            }

            ages = [.. ages, .. dates.Select(date => Age.On(date, placed, ageAtPlacement))];
        }
        else if (calendar is not null && dates.Count > 0)
        {
            words.Refuse(on.Name + ": needs the day the chicks were placed and their age that day; expected --placed and --age-at-placement too");
        }

        if (ages.Any(age => age > Oldest))
        {
            words.Refuse(at.Name + " or " + on.Name + ": an age is out of range; expected ages up to " + Oldest);
        }

        return [.. ages.Distinct().Order()];
    }
}
