using Poultry.Growth.Fitting;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Files;

/// <summary>
/// A farm's finished batches in a folder: one weigh-in file a batch, as <see cref="BatchHistoryFolder"/> reads it, with losses, feed and dressing in # lines, and in
/// the folder <c>inspections</c> within it what <see cref="InspectionFile"/> reads. The format is in docs/file-formats.md.
/// </summary>
/// <remarks>Nothing in the folder makes reading throw. Files without those lines are read too, and teach growth alone.</remarks>
public static class FarmHistoryFolder
{
    private const string Expected = "a folder with one weigh-in file (.csv) a batch";

    /// <summary>The folder of inspections within the history.</summary>
    private const string Inspections = "inspections";

    /// <summary>Reads every batch of a folder.</summary>
    /// <param name="folder">Where it is. One that is missing, unreadable or without a batch is a problem of the result, not an exception.</param>
    public static FileReading<FarmHistory> Read(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ProblemList own = new(folder);
        string[] paths = CsvFolder.Paths(folder, Expected, own);
        InspectionReading? inspections = InspectionsIn(folder);
        Dictionary<string, LesionInspection> inspected = (inspections?.Inspections ?? []).ToDictionary(inspection => inspection.Batch, StringComparer.OrdinalIgnoreCase);

        // An inspection of no batch here has no kind of bird, so nothing could learn from it; mostly its name is misspelt.
        foreach (string stray in inspected.Keys.Except(paths.Select(path => Path.GetFileNameWithoutExtension(path)), StringComparer.OrdinalIgnoreCase))
        {
            own.Add(Inspections, stray, "is inspected but has no weigh-in file", "the name of a weigh-in file of the folder, without .csv");
        }

        List<FileProblem> problems = [.. own.InOrder, .. inspections?.Problems ?? []];

        List<FarmBatch> batches = [];
        foreach (string path in paths)
        {
            string name = Path.GetFileNameWithoutExtension(path);
            WeighInReading weighIns = WeighInFile.Read(path);
            problems.AddRange(weighIns.Problems);
            ProblemList facts = new(Path.GetFileName(path));
            if (weighIns.Series is { } series && FarmBatchFacts.Read(path, weighIns.AgeAtPlacement, facts) is { } read)
            {
                batches.Add(read.Batch(PastBatch.Of(name, series, weighIns.Kind!), inspected.GetValueOrDefault(name)));
            }

            problems.AddRange(facts.InOrder);
        }

        return new(own.File, problems.Count == 0 ? FarmHistory.Of(batches) : null, problems);
    }

    /// <summary>Adds a batch: all of its files or none.</summary>
    /// <param name="folder">Where the history is; it is made where it does not exist, its own folder must.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="replace">Whether a batch of the same name gives way; otherwise that is refused.</param>
    /// <returns>What stood in the way, in one line; null where the batch is there now.</returns>
    public static string? Add(string folder, FarmBatch batch, bool replace = false)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(batch);
        if (!IsFileName(batch.Name))
        {
            return "the name " + FileProblem.Quoted(batch.Name) + " cannot be the name of a file; expected letters, digits, spaces, hyphens and dots, as in Meadow 3";
        }

        string at = PlaceOf(folder, batch.Name), inspection = PlaceOf(Path.Combine(folder, Inspections), batch.Name);
        if (!replace && (File.Exists(at) || File.Exists(inspection)))
        {
            return FileProblem.Quoted(batch.Name) + " is in the history already; expected another batch, or to be told to replace it";
        }

        // A table of inspections that the farm keeps by hand may hold the batch too: added to it, the birds would count twice.
        if (batch.Inspection is not null && InspectionsIn(folder, except: inspection) is { } kept && (kept.Inspections?.Any(one => one.Batch.Equals(batch.Name, StringComparison.OrdinalIgnoreCase)) ?? true))
        {
            return kept.Inspections is null
                ? "the inspections in the history cannot be read: " + kept.Problems[0]
                : "the inspections in the history hold " + FileProblem.Quoted(batch.Name) + " in another file; expected it once";
        }

        List<(string Path, string? Text)> files = [(inspection, FarmBatchText.InspectionText(batch)), (at, FarmBatchText.Text(batch))];
        return FileSet.Replace(folder, files);
    }

    /// <summary>Where a batch is kept, in upper or lower case: Meadow 3 and MEADOW 3 are one batch, also where files tell them apart.</summary>
    private static string PlaceOf(string folder, string batch)
    {
        string path = Path.Combine(folder, batch + ".csv");
        return (Directory.Exists(folder) ? Directory.EnumerateFiles(folder) : [])
            .FirstOrDefault(file => Path.GetFileName(file).Equals(Path.GetFileName(path), StringComparison.OrdinalIgnoreCase)) ?? path;
    }

    /// <summary>The inspections of the history but for one file; null where there are none.</summary>
    private static InspectionReading? InspectionsIn(string folder, string? except = null)
    {
        string within = Path.Combine(folder, Inspections);
        return Directory.Exists(within) && Directory.EnumerateFiles(within, "*.csv").Any(path => path != except) ? InspectionFile.ReadFolder(within, except) : null;
    }

    /// <summary>Names that every system takes for a file, and that no system takes for anything else.</summary>
    private static bool IsFileName(string name) =>
        name.Length is > 0 and <= 100 && name.All(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-' or '_' or '.' or '(' or ')')
        && !name.StartsWith('.') && !name.EndsWith('.') && !name.StartsWith(' ') && !name.EndsWith(' ')
        && !Reserved.Contains(name.Split('.')[0].ToUpperInvariant());

    private static HashSet<string> Reserved =>
        ["CON", "PRN", "AUX", "NUL", .. Enumerable.Range(1, 9).SelectMany(number => new[] { "COM" + (char)('0' + number), "LPT" + (char)('0' + number) })];
}
