using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>What came of reading limits: all of them, or every problem at once.</summary>
public sealed class LimitReading
{
    internal LimitReading(string file) => File = file;

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The limits in the order of the file; empty where there is any problem.</summary>
    public IReadOnlyList<Limit> Limits { get; internal init; } = [];

    /// <summary>Everything that cannot be read, in the order of the file; empty where there are limits.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>limits.csv: 3 limits</c>, in every culture.</summary>
    public override string ToString() => File + ": " + (Problems.Count > 0 ? NumberText.Counted(Problems.Count, "problem") : NumberText.Counted(Limits.Count, "limit"));
}
