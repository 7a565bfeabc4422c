using Poultry.Growth.Files.Json;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>The section <c>weights</c> of a batch file: weigh-ins and a prior, or a table. Without it the batch is projected by the prior of its type.</summary>
internal static class BatchWeightsSection
{
    public static BatchWeights Read(JsonSection? section, Sex sex, BirdType type, BatchContext context)
    {
        Func<Sex, GrowthPrior> usual = type != BirdType.Fast ? GrowthPrior.SlowGrowing : GrowthPrior.FastGrowingOutdoor;
        if (section is null)
        {
            return new() { Prior = usual(sex) };
        }

        string? weighIns = section.Text("weighIns", expected: "the name of a file of weigh-ins beside this one");
        string? table = section.Text("table", expected: "the name of a file with a table of weights beside this one");
        Func<Sex, GrowthPrior> prior = section.Optional("prior") is null
            ? usual
            : section.Choice<Func<Sex, GrowthPrior>>("prior", ("fast-outdoor", GrowthPrior.FastGrowingOutdoor), ("fast-objective", GrowthPrior.FastGrowingObjective), ("slow", GrowthPrior.SlowGrowing));
        if (table is not null && (weighIns is not null || section.Optional("prior") is not null))
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

        return new() { Prior = prior(sex), WeighIns = weighIns is null ? null : WeighIns(section, weighIns, sex, context) };
    }

    private static WeighInReading WeighIns(JsonSection section, string name, Sex sex, BatchContext context)
    {
        WeighInReading reading = WeighInFile.Read(context.Beside(name), new WeighInFileOptions { Placed = context.Placed, AgeAtPlacement = context.AgeAtPlacement });
        context.Add(reading.Problems);
        if (sex != Sex.Mixed && reading.Series?.Any(weighIn => weighIn.Sex != sex && weighIn.Sex != Sex.Mixed) == true)
        {
            section.Refuse("names weigh-ins of the other sex", "weigh-ins of the batch's own birds");
        }

        return reading;
    }
}
