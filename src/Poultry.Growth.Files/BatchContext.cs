using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>What the sections of a batch file share: where it lies, when the chicks came, and the problems of every file that it names.</summary>
internal sealed class BatchContext(string path, ProblemList own)
{
    private readonly List<FileProblem> others = [];

    public DateOnly? Placed { get; private set; }

    public Age AgeAtPlacement { get; private set; }

    public bool HasProblems => own.Count + others.Count > 0;

    /// <summary>The batch file's own first.</summary>
    public IReadOnlyList<FileProblem> Problems => [.. own.InOrder, .. others];

    public void Place(BatchFlock? flock) => (Placed, AgeAtPlacement) = (flock?.Placed, flock?.HeadCount.AgeAtPlacement ?? default);

    /// <summary>The full name of a file named in the batch file.</summary>
    public string Beside(string name) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, name);

    public void Add(IEnumerable<FileProblem> problems) => others.AddRange(problems);

    /// <summary>A table by age or date beside the batch file.</summary>
    public IReadOnlyList<(Age Age, double?[] Values)> Table(string name, params IReadOnlyList<AgedColumn> columns)
    {
        ProblemList problems = new(name);
        IReadOnlyList<(Age Age, double?[] Values)> rows = AgedTable.Read(Beside(name), columns, Placed, AgeAtPlacement, problems);
        Add(problems.InOrder);
        return problems.Count == 0 ? rows : [];
    }
}
