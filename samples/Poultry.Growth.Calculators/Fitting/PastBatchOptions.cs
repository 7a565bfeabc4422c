using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Which of a farm's past batches are meant, and what stands behind them.</summary>
internal sealed class PastBatchOptions
{
    /// <summary>In place of the name of a strain or system, for batches that do not state it.</summary>
    private const string Unstated = "unstated";

    private readonly Option<string?> sex;

    private readonly Option<string?> strain = new("--strain") { HelpName = "NAME", Description = "Of a FOLDER of past batches, those of this strain; unstated: those without one." };

    private readonly Option<string?> system = new("--system") { HelpName = "NAME", Description = "Likewise by how they were kept." };

    private readonly Option<string?> wider = new("--wider")
    {
        HelpName = "NAME",
        Description = "The shipped prior behind past batches, for the batch that is unlike them; a standard gets its width: " + ShippedPrior.Names + ". [default: fast-outdoor]",
    };

    private PastBatchOptions(string sexDescription) => sex = new("--sex") { HelpName = "mixed|male|female", Description = sexDescription };

    public static PastBatchOptions AddTo(Command command, string sexDescription)
    {
        PastBatchOptions options = new(sexDescription);
        command.Add(options.sex);
        command.Add(options.strain);
        command.Add(options.system);
        command.Add(options.wider);
        return options;
    }

    /// <summary>The sex asked for; null where none is.</summary>
    public Sex? SexAskedFor(OptionWords words) => words.Text(sex) is null ? null : words.Sex(sex);

    public Func<Sex, GrowthPrior> Wider(OptionWords words) => words.Choice(wider, ShippedPrior.All);

    /// <summary>Refuses options that choose among past batches where there are none, and the wider prior where nothing stands before it.</summary>
    public void RefuseStray(OptionWords words, bool needsWidth)
    {
        foreach (Option<string?> option in ((Option<string?>[])[strain, system]).Where(option => words.Text(option) is not null))
        {
            words.Refuse(option.Name + ": chooses among past batches; expected --prior FOLDER too");
        }

        if (!needsWidth && words.Text(wider) is not null)
        {
            words.Refuse(wider.Name + ": stands behind past batches or a standard; expected --prior FOLDER or --prior FILE too");
        }
    }

    /// <summary>What the batches of the one kind that is meant teach; null, and problems, where the folder cannot be read or the kind is not clear.</summary>
    public LearnedPrior? Learn(OptionWords words, BatchHistoryReading reading)
    {
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        if (reading.History is not { } history)
        {
            return null;
        }

        Sex? wanted = SexAskedFor(words);
        BatchKind[] kinds = [.. history.Kinds.Where(kind => (wanted is null || kind.Sex == wanted) && Fits(words.Text(strain), kind.Strain) && Fits(words.Text(system), kind.System))];
        if (kinds is [var one])
        {
            return history.Learn(one, Wider(words)(one.Sex));
        }

        words.Refuse(reading.Folder + ": holds " + (kinds.Length == 0 ? "no batches of this kind" : "batches of several kinds, which are learned apart")
            + "; expected --strain, --system or --sex to name one of");
        foreach (BatchKind kind in kinds.Length == 0 ? history.Kinds : kinds)
        {
            words.Refuse("  " + Words(kind) + " (batches: " + Numbers.Whole(history.OfKind(kind).Count) + ")");
        }

        return null;
    }

    private static bool Fits(string? asked, string? stated) =>
        asked is null || string.Equals(asked.Trim(), stated ?? Unstated, StringComparison.OrdinalIgnoreCase);

    /// <summary>A kind as it is asked for.</summary>
    private string Words(BatchKind kind) => strain.Name + " \"" + (kind.Strain ?? Unstated) + "\" " + system.Name + " \"" + (kind.System ?? Unstated) + "\" "
        + sex.Name + " " + Codes.Of(kind.Sex);
}
