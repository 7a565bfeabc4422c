namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>How often the projection is right, on batches that follow the prior's curves and on batches that do not: writes docs/studies/projection.md.</summary>
internal static class ProjectionStudy
{
    /// <summary>No constant of the method was chosen on it.</summary>
    private const long Seed = 20261125;

    public static void Run(int batches)
    {
        string folder = Path.Combine(Root(), "docs", "studies");
        Directory.CreateDirectory(folder);
        List<StudyResult> results = [];
        foreach (StudyRow row in StudyRows.All)
        {
            results.Add(StudyResult.Of(row, Seed, batches));
            Console.WriteLine(StudyPage.Line(results[^1], 56));
        }

        File.WriteAllText(Path.Combine(folder, "projection.md"), StudyPage.Of(results, batches, Seed));
        File.WriteAllLines(
            Path.Combine(folder, "projection-first-cases.csv"),
            [StudyPage.CaseHeader, .. results.SelectMany(result => result.FirstCases)]);
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Poultry.Growth.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("No folder above the program holds Poultry.Growth.sln.");
    }
}
