using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a log of disturbances: the log, or every problem at once.</summary>
public sealed class DisturbanceReading
{
    internal DisturbanceReading(string file) => File = file;

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The disturbances by age; null where there is any problem.</summary>
    public DisturbanceLog? Log { get; internal init; }

    /// <summary>The day of hatch, from the caller or the line <c># hatched:</c>; null where neither says it.</summary>
    public DateOnly? Hatched { get; internal init; }

    /// <summary>Everything that cannot be read, in the order of the file; empty where there is a log.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>log.csv: 4 disturbances</c>, in every culture.</summary>
    public override string ToString() => File + ": " + (Log?.ToString() ?? NumberText.Counted(Problems.Count, "problem"));
}
