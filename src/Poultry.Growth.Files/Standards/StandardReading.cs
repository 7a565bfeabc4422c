using Poultry.Growth.Curves;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a standard: its table, or every problem at once.</summary>
public sealed class StandardReading
{
    internal StandardReading(string file) => File = file;

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>Whose table it is and of which birds, from the line <c># name:</c>; null where there is any problem.</summary>
    public string? Name { get; internal init; }

    /// <summary>The year for which it was published, from the line <c># year:</c>; null where there is any problem.</summary>
    public int? Year { get; internal init; }

    /// <summary>The table, named by name and year, with its source and its caution; null where there is any problem.</summary>
    public TabulatedCurve? Standard { get; internal init; }

    /// <summary>Everything that cannot be read, in the order of the file; empty where there is a table.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>standard.csv: Objective for males, 2012</c>, in every culture.</summary>
    public override string ToString() => File + ": "
        + (Standard is null ? NumberText.Counted(Problems.Count, "problem") : Standard.Model.Name);
}
