using System.Collections.Immutable;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>The section <c>weights</c> of a batch file: weigh-ins and a prior, or a table. Without it the batch is projected by the prior of its type.</summary>
internal static class BatchWeightsSection
{
    private static readonly ImmutableArray<(string Name, Func<Sex, GrowthPrior> Prior)> Shipped =
        [("fast-outdoor", GrowthPrior.FastGrowingOutdoor), ("fast-objective", GrowthPrior.FastGrowingObjective), ("slow", GrowthPrior.SlowGrowing)];

    private static string Priors => string.Join(", ", Shipped.Select(shipped => shipped.Name)) + ", or the name of a standard (CSV) or of a folder of past batches beside this file";

    public static BatchWeights Read(JsonSection? section, BatchFlock? flock, BatchContext context)
    {
        (Sex sex, BirdType type) = (flock?.Sex ?? Sex.Mixed, flock?.Type ?? default);
        Func<Sex, GrowthPrior> usual = type != BirdType.Fast ? GrowthPrior.SlowGrowing : GrowthPrior.FastGrowingOutdoor;
        if (section is null)
        {
            return new() { Prior = usual(sex) };
        }

        string? weighIns = section.Text("weighIns", expected: "the name of a file of weigh-ins beside this one");
        string? table = section.Text("table", expected: "the name of a file with a table of weights beside this one");
        string? prior = section.Text("prior", expected: Priors);
        if (table is not null && (weighIns is not null || prior is not null))
        {
            section.Refuse("holds a table and weigh-ins or a prior", "a table, or weigh-ins and a prior");
        }

        section.Close();
        if (table is not null)
        {
            StandardReading reading = StandardFile.Read(context.Beside(table));
            context.Add(reading.Problems);
            return new() { Table = reading.Standard };
        }

        BatchWeights read = new() { Prior = usual(sex), WeighIns = weighIns is null ? null : WeighIns(section, weighIns, sex, context) };
        return prior is null ? read : WithPrior(section, prior, read, flock, usual(sex), context);
    }

    /// <summary>A shipped prior by its name, a standard (CSV), or what a folder of past batches teaches.</summary>
    private static BatchWeights WithPrior(JsonSection section, string prior, BatchWeights read, BatchFlock? flock, GrowthPrior wider, BatchContext context)
    {
        if (Shipped.FirstOrDefault(shipped => shipped.Name.Equals(prior, StringComparison.OrdinalIgnoreCase)).Prior is { } shipped)
        {
            return new() { Prior = shipped(wider.Sex), WeighIns = read.WeighIns };
        }

        string path = context.Beside(prior);
        if (Directory.Exists(path))
        {
            BatchHistoryReading past = BatchHistoryFolder.Read(path);
            context.Add(past.Problems);
            return past.History is { } history && flock is not null
                ? new() { Prior = history.Learn(BatchHistorySection.KindOf(flock, read), wider).Prior, WeighIns = read.WeighIns, PriorFolder = path, PastSuspicions = past.Suspicions }
                : read;
        }

        if (!File.Exists(path))
        {
            section.Refuse(section.Optional("prior")!, "is no prior, and there is no such file or folder", Priors);
            return read;
        }

        StandardReading standard = StandardFile.Read(path);
        context.Add(standard.Problems);
        try
        {
            return standard.Standard is { } table ? new() { Prior = GrowthPrior.FromTable(table, wider), WeighIns = read.WeighIns } : read;
        }
        catch (ArgumentException exception)
        {
            (string fault, string expected) = ProblemList.Said(exception, "makes no prior");
            section.Refuse(section.Optional("prior")!, fault, expected);
            return read;
        }
    }

    private static WeighInReading? WeighIns(JsonSection section, string name, Sex sex, BatchContext context)
    {
        WeighInReading reading = WeighInFile.Read(context.Beside(name), new WeighInFileOptions { Placed = context.Placed, AgeAtPlacement = context.AgeAtPlacement, MayBeEmpty = true });
        context.Add(reading.Problems);
        if (sex != Sex.Mixed && reading.Series?.Any(weighIn => weighIn.Sex != sex && weighIn.Sex != Sex.Mixed) == true)
        {
            section.Refuse("names weigh-ins of the other sex", "weigh-ins of the batch's own birds");
        }

        return reading.Series is null && reading.Problems.Count == 0 ? null : reading;
    }
}
