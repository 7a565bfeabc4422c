using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Options that several of these commands share, and how they are read.</summary>
internal static class LesionWords
{
    public static Option<string?> Sex(bool isRequired = false) => new("--sex")
    {
        HelpName = "mixed|male|female", Description = "Sex of the birds; cockerels are susceptible ten days before pullets." + (isRequired ? "" : " [default: mixed]"), Required = isRequired,
    };

    public static Option<string?> KillAge() => new("--kill-age") { HelpName = "56d", Description = "Age at which the birds are killed.", Required = true };

    public static Option<bool> Indoor() => new("--indoor") { Description = "Birds without access to the open. Without it they are outdoors, of which there are no data." };

    public static Option<string?> Farm() => new("--farm") { HelpName = "FOLDER", Description = "The farm's own inspections, one table or more, see docs/file-formats.md; in place of the published figures." };

    /// <summary>An age that must be given.</summary>
    public static Age ReadAge(this OptionWords words, Option<string?> option)
    {
        Age? age = words.Age(option);
        if (age > WhenOptions.Oldest)
        {
            words.Refuse(option.Name + ": is out of range; expected an age up to " + WhenOptions.Oldest);
        }

        return age ?? Age.Hatch;
    }

    /// <summary>What the farm's own inspections teach; null without them, or where they cannot be read.</summary>
    public static FarmLesionRate? ReadFarm(this OptionWords words, string? folder)
    {
        if (folder is null)
        {
            return null;
        }

        InspectionReading reading = InspectionFile.ReadFolder(folder);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Inspections is { } inspections ? FarmLesionRate.Learn(inspections) : null;
    }

    /// <summary>The model of a batch: the farm's own where there is one.</summary>
    public static PlanningRisk Model(FarmLesionRate? farm) => farm is null ? PlanningRisk.Published : PlanningRisk.Learned(farm);

    /// <summary>A disturbance log from a file; null, and problems, where it cannot be read.</summary>
    public static DisturbanceLog? ReadLog(this OptionWords words, string path, DateOnly? hatched, Age? killAge)
    {
        DisturbanceReading reading = DisturbanceFile.Read(path, hatched);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Log is { } log && Within(words, log, reading.File, killAge) ? log : null;
    }

    /// <summary>Whether no disturbance lies after killing; a problem where one does.</summary>
    public static bool Within(OptionWords words, DisturbanceLog log, string source, Age? killAge)
    {
        Disturbance[] late = [.. log.Where(disturbance => killAge is { } killed && disturbance.Age > killed)];
        foreach (Disturbance disturbance in late)
        {
            words.Refuse(source + ": \"" + disturbance.What + "\" at " + disturbance.Age + " lies after killing at " + killAge + "; expected an age up to that");
        }

        return late.Length == 0;
    }
}
