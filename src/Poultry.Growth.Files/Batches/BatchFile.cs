
namespace Poultry.Growth.Files;

/// <summary>Reads a batch file (JSON, with comments): one batch with its birds, weights and feed. The format is in docs/file-formats.md.</summary>
/// <remarks>
/// Nothing in a file makes this throw: every problem of it and of the files that it names is found in one pass and told with its line and column. Files that it names are
/// looked for beside it.
/// </remarks>
public static class BatchFile
{
    /// <summary>Reads a file and those that it names.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not JSON is a problem of the result, not an exception.</param>
    /// <param name="history">The farm's history (<see cref="FarmHistoryFolder"/>), in place of the one that the file may name; null for that one.</param>
    public static BatchFileReading Read(string path, string? history = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        JsonValue? root = TextFile.Read(path, problems) is { } text ? JsonText.Read(text, problems) : null;
        if (root is null || JsonSection.Of(root, problems) is not { } file || file.IsOfAnotherKind("batches", "birds", "a season file", "a batch file; a season file is for season"))
        {
            return new BatchFileReading(problems.File) { Problems = problems.InOrder };
        }

        file.Text(JsonSection.Schema);
        BatchContext context = new(path, root, problems);
        BatchFlock? flock = BatchFlockSection.Read(file);
        context.Place(flock);
        flock = BatchDeathsSection.Read(file, flock, context);
        BatchWeights weights = BatchWeightsSection.Read(file.Section("weights"), flock, context);
        BatchFeeding? feeding = BatchFeedSection.Read(file, flock, weights, context);
        (flock, weights) = BatchHistorySection.Read(file, history, flock, weights, feeding, context);
        BatchHarvest? harvest = BatchHarvestSection.Read(file, flock, context);
        file.Close();
        return context.HasProblems
            ? new BatchFileReading(problems.File) { Problems = context.Problems }
            : new BatchFileReading(problems.File) { Flock = flock, Weights = weights, Feeding = feeding, Harvest = harvest, Farm = context.Farm };
    }
}
