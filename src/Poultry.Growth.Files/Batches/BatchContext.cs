using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>What the sections of a batch file share: where it lies, when the chicks came, and the problems of every file that it names.</summary>
internal sealed class BatchContext(string path, JsonValue root, ProblemList own)
{
    private readonly List<FileProblem> others = [];

    public DateOnly? Placed { get; private set; }

    public Age AgeAtPlacement { get; private set; }

    /// <summary>What the farm's finished batches teach; null where no history is named.</summary>
    public FarmLearning? Farm { get; set; }

    /// <summary>The dressing ratio as the file states it, before what the farm's past makes of it.</summary>
    public DressingRatio? Dressing { get; set; }

    public bool HasProblems => own.Count + others.Count > 0;

    /// <summary>The batch file's own first.</summary>
    public IReadOnlyList<FileProblem> Problems => [.. own.InOrder, .. others];

    public void Place(BatchFlock? flock) => (Placed, AgeAtPlacement) = (flock?.Placed, flock?.HeadCount.AgeAtPlacement ?? default);

    /// <summary>The full name of a file named in the batch file.</summary>
    public string Beside(string name) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, name);

    /// <summary>
    /// Problems of a file that this one names. One that cannot be read as a whole is told where it is named; and dates are not held against a day of placement that is
    /// itself wrong.
    /// </summary>
    public void Add(IEnumerable<FileProblem> problems)
    {
        foreach (FileProblem problem in problems)
        {
            if (problem is { Line: 0, Field: "file" } && Named(root, problem.File) is { } name)
            {
                own.Add(name.Line, name.Column, name.Path, name.Text, problem.Fault, problem.Expected);
            }
            else if (problem.Fault != WeighInPlacement.NeedsPlacing || root.Members.All(member => member.Name != "placed" || member.Value.Kind == JsonKind.Nothing))
            {
                others.Add(problem);
            }
        }
    }

    /// <summary>A table by age or date beside the batch file, with as many rows as given or more: a diary begins empty.</summary>
    public IReadOnlyList<(Age Age, double?[] Values)> Table(string name, int fewest, params IReadOnlyList<AgedColumn> columns)
    {
        ProblemList problems = new(name);
        IReadOnlyList<(Age Age, double?[] Values)> rows = AgedTable.Read(Beside(name), columns, Placed, AgeAtPlacement, fewest, problems);
        Add(problems.InOrder);
        return problems.Count == 0 ? rows : [];
    }

    /// <summary>Where a file is named.</summary>
    private static JsonValue? Named(JsonValue value, string file) => value.Kind == JsonKind.Text
        ? value.Text == file || Path.GetFileName(value.Text) == file ? value : null
        : value.Members.Select(member => member.Value).Concat(value.Items).Select(inner => Named(inner, file)).FirstOrDefault(found => found is not null);
}
