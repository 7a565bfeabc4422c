using Poultry.Growth.Fitting;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a folder of past batches: the history, or every problem of every file at once.</summary>
public sealed class BatchHistoryReading
{
    internal BatchHistoryReading(string folder) => Folder = folder;

    /// <summary>The folder, as the caller named it.</summary>
    public string Folder { get; }

    /// <summary>The batches, in the order of the files' names; null where there is any problem.</summary>
    public BatchHistory? History { get; internal init; }

    /// <summary>What came of each file, in the order of their names.</summary>
    public IReadOnlyList<WeighInReading> Files { get; internal init; } = [];

    /// <summary>Everything that cannot be read, file by file; empty where there is a history.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>What can be read but looks wrong, file by file.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions => [.. Files.SelectMany(file => file.Suspicions)];

    /// <summary>One line, as in <c>history: 7 batches of 2 kinds</c>, in every culture.</summary>
    public override string ToString() => Folder + ": " + (History?.ToString() ?? NumberText.Counted(Problems.Count, "problem"));
}
