using System.CommandLine;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What is known beforehand, and what to ask the projection.</summary>
internal sealed class ProjectOptions
{
    /// <summary>Weigh-ins before this age say nothing to a projection.</summary>
    private static readonly Age YoungestWeighIn = Age.FromDays(7);

    private readonly Option<string?> prior = new("--prior")
    {
        HelpName = "NAME",
        Description = "What is known beforehand: fast-outdoor (fast-growing birds outdoors), fast-objective (by breeders' objectives), slow (slower-growing birds). [default: fast-outdoor]",
    };

    private readonly Option<string?> sex = new("--sex") { HelpName = "mixed|male|female", Description = "The birds of the batch. [default: mixed]" };

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
        command.Add(prior);
        command.Add(sex);
        when = WhenOptions.AddTo(command);
        command.Add(bands);
        command.Add(nextWeighIn);
    }

    public static ProjectOptions AddTo(Command command) => new(command);

    /// <param name="words">The command line.</param>
    /// <param name="calendar">Null where the file that should say could not be read.</param>
    /// <param name="level">The chance that intervals claim.</param>
    public ProjectQuestion Read(OptionWords words, BatchCalendar? calendar, double level)
    {
        Func<Sex, GrowthPrior> known = words.Choice<Func<Sex, GrowthPrior>>(
            prior, ("fast-outdoor", GrowthPrior.FastGrowingOutdoor), ("fast-objective", GrowthPrior.FastGrowingObjective), ("slow", GrowthPrior.SlowGrowing));
        IReadOnlyList<(int Birds, Age Age)> weighIns = words.WeighIns(nextWeighIn);
        if (weighIns.Any(next => next.Age < YoungestWeighIn || next.Age > WhenOptions.Oldest))
        {
            words.Refuse(nextWeighIn.Name + ": an age is out of range; expected " + YoungestWeighIn + " to " + WhenOptions.Oldest);
        }

        return new()
        {
            Prior = known(words.Choice(sex, ("mixed", Sex.Mixed), ("male", Sex.Male), ("female", Sex.Female))),
            Ages = when.Ages(words, calendar),
            Target = when.Target(words),
            Bands = words.Weights(bands),
            NextWeighIns = weighIns,
            Level = level,
        };
    }
}
