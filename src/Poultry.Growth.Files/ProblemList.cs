namespace Poultry.Growth.Files;

/// <summary>Collects the problems of one file, so that all are told in one pass.</summary>
internal sealed class ProblemList(string file)
{
    private readonly List<FileProblem> problems = [];

    public string File => file;

    public int Count => problems.Count;

    /// <summary>In the order of the file, whichever check found them.</summary>
    public IReadOnlyList<FileProblem> InOrder => [.. problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column)];

    /// <summary>About the file as a whole.</summary>
    public void Add(string field, string? value, string fault, string expected) => problems.Add(new(file, 0, 0, field, value, fault, expected));

    /// <summary>About a place in it.</summary>
    public void Add(int line, int column, string field, string? value, string fault, string expected) =>
        problems.Add(new(file, line, column, field, value, fault, expected));

    /// <summary>About a cell.</summary>
    public void Add(CsvCell cell, string field, string fault, string expected) => Add(cell.Line, cell.Column, field, cell.Text, fault, expected);

    /// <summary>What the library refuses, in the two parts of a problem.</summary>
    public static (string Fault, string Expected) Said(ArgumentException refused, string fault = "makes no sense")
    {
        string[] said = refused.Message.Split(" (Parameter")[0].TrimEnd('.').Split("; expected ");
        return (fault + ": " + said[0], said[^1]);
    }
}
