using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What is known of a batch beforehand: a shipped prior, a standard, or the farm's own past batches.</summary>
internal sealed class PriorOptions
{
    private readonly Option<string?> prior = new("--prior")
    {
        HelpName = "NAME|FILE|FOLDER",
        Description = "What is known beforehand: " + ShippedPrior.Names + "; a FILE with a standard, a FOLDER with the farm's own past batches. [default: fast-outdoor]",
    };

    private readonly PastBatchOptions past;

    private PriorOptions(Command command)
    {
        command.Add(prior);
        past = PastBatchOptions.AddTo(command, "The birds of the batch. [default: mixed; with a FOLDER, as the past batches]");
    }

    public static PriorOptions AddTo(Command command) => new(command);

    /// <summary>The prior, and the past batches it was learned from, if any; null, and problems, where there is none.</summary>
    public (GrowthPrior Prior, BatchHistoryReading? Past)? Read(OptionWords words)
    {
        string name = words.Text(prior) ?? ShippedPrior.All[0].Name;
        bool isShipped = ShippedPrior.All.Any(shipped => shipped.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (!isShipped && Directory.Exists(name))
        {
            BatchHistoryReading reading = BatchHistoryFolder.Read(name);
            return past.Learn(words, reading) is { } learned ? (learned.Prior, reading) : null;
        }

        past.RefuseStray(words, needsWidth: !isShipped);
        Sex sex = past.SexAskedFor(words) ?? Sex.Mixed;
        if (isShipped)
        {
            return (words.Choice(prior, ShippedPrior.All)(sex), null);
        }

        if (!File.Exists(name))
        {
            words.Refuse(prior.Name + ": \"" + name + "\" is no prior and there is no such file or folder; expected "
                + string.Join(", ", ShippedPrior.All.Select(shipped => shipped.Name)) + ", a standard (CSV) or a folder of past batches");
            return null;
        }

        return Standard(words, StandardFile.Read(name), past.Wider(words)(sex)) is { } standard ? (standard, null) : null;
    }

    private GrowthPrior? Standard(OptionWords words, StandardReading reading, GrowthPrior wider)
    {
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        if (reading.Standard is not { } table)
        {
            return null;
        }

        try
        {
            return GrowthPrior.FromTable(table, wider);
        }
        catch (ArgumentException exception)
        {
            words.Refuse(prior.Name + ": " + reading.File + ": " + exception.Message);
            return null;
        }
    }
}
