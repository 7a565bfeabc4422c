namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>A batch that cannot be read, and all that must be said about it.</summary>
/// <param name="name">In a few words.</param>
/// <param name="isStructural">Whether the schema sees it too: a kind, a name or a unit that cannot be, within JSON.</param>
/// <param name="files">What is spoilt.</param>
/// <param name="problems">Every line.</param>
internal sealed class BrokenBatch(string name, bool isStructural, IReadOnlyList<BrokenFile> files, IReadOnlyList<string> problems)
{
    public static IReadOnlyList<BrokenBatch> All { get; } = [.. BrokenForms.All, .. BrokenFigures.All];

    public string Name => name;

    public bool IsStructural => isStructural;

    public IReadOnlyList<BrokenFile> Files => files;

    public IReadOnlyList<string> Problems => problems;
}
