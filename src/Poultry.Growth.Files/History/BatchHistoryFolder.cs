using Poultry.Growth.Fitting;

namespace Poultry.Growth.Files;

/// <summary>Reads the past batches of a farm from a folder: one weigh-in file (CSV) a batch, as in docs/file-formats.md.</summary>
/// <remarks>
/// A batch is called by its file, without <c>.csv</c>. Strain, system and sex stand in # lines. Folders within the folder, and files with other endings, are not
/// looked at. Nothing in the folder makes reading throw.
/// </remarks>
public static class BatchHistoryFolder
{
    private const string Expected = "a folder with one weigh-in file (.csv) a batch";

    /// <summary>Reads every weigh-in file of a folder.</summary>
    /// <param name="folder">Where it is. One that is missing, unreadable or without such a file is a problem of the result, not an exception.</param>
    /// <param name="excludeFlagged">Whether birds and weigh-ins that look wrong are left out; otherwise they are flagged and kept.</param>
    public static BatchHistoryReading Read(string folder, bool excludeFlagged = false)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ProblemList problems = new(folder);
        string[] paths = CsvFolder.Paths(folder, Expected, problems);
        WeighInFileOptions options = new() { ExcludeFlagged = excludeFlagged };
        WeighInReading[] files = [.. paths.Select(path => WeighInFile.Read(path, options))];
        FileProblem[] all = [.. problems.InOrder, .. files.SelectMany(file => file.Problems)];
        return new BatchHistoryReading(folder)
        {
            History = all.Length > 0
                ? null
                : BatchHistory.Of(files.Zip(paths, (file, path) => PastBatch.Of(Path.GetFileNameWithoutExtension(path), file.Series!, file.Kind!))),
            Files = files,
            Problems = all,
        };
    }
}
