using System.CommandLine;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What is known beforehand, and what to ask the projection.</summary>
internal sealed class ProjectOptions
{
    /// <summary>Weigh-ins before this age say nothing to a projection.</summary>
    private static readonly Age YoungestWeighIn = Age.FromDays(7);

    private readonly PriorOptions prior;

    private readonly Option<string[]> bands = new("--bands")
    {
        HelpName = "1.8kg,2.2kg,2.6kg", Description = "Limits of weight bands: which share of the birds lies below, between and above?",
    };

    private readonly Option<string[]> nextWeighIn = new("--next-weigh-in")
    {
        HelpName = "30@35d",
        Description = "A weigh-in that could come next, birds@age: what will it show, and how much surer of the last age asked for will it make? Repeatable, or with commas.",
    };

    private readonly WhenOptions when;

    private ProjectOptions(Command command)
    {
        prior = PriorOptions.AddTo(command);
        when = WhenOptions.AddTo(command);
        command.Add(bands);
        command.Add(nextWeighIn);
    }

    public static ProjectOptions AddTo(Command command) => new(command);

    /// <param name="words">The command line.</param>
    /// <param name="calendar">Null where the file that should say could not be read.</param>
    /// <param name="level">The chance that intervals claim.</param>
    /// <returns>Null, and problems, where there is no prior.</returns>
    public ProjectQuestion? Read(OptionWords words, BatchCalendar? calendar, double level)
    {
        var known = prior.Read(words);
        IReadOnlyList<(int Birds, Age Age)> weighIns = words.WeighIns(nextWeighIn);
        if (weighIns.Any(next => next.Age < YoungestWeighIn || next.Age > WhenOptions.Oldest))
        {
            words.Refuse(nextWeighIn.Name + ": an age is out of range; expected " + YoungestWeighIn + " to " + WhenOptions.Oldest);
        }

        (IReadOnlyList<Age> ages, Mass? target, IReadOnlyList<Mass> limits) = (when.Ages(words, calendar), when.Target(words), words.Weights(bands));
        return known is null ? null : new()
        {
            Prior = known.Value.Prior,
            Past = known.Value.Past,
            Ages = ages,
            Target = target,
            Bands = limits,
            NextWeighIns = weighIns,
            Level = level,
        };
    }
}
