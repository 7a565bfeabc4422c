namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>A folder for the files of one test.</summary>
public sealed class Scratch : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-growth-console-");

    public string PathOf(string name) => Path.Combine(folder.FullName, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    /// <summary>The demo batch, changed, beside the files that it names.</summary>
    public string Batch(Func<string, string> change)
    {
        string data = Path.GetDirectoryName(ConsoleRun.Demo)!;
        foreach (string file in Directory.EnumerateFiles(data, "meadow-*.csv"))
        {
            File.Copy(file, PathOf(Path.GetFileName(file)), overwrite: true);
        }

        return Write("batch.json", change(File.ReadAllText(Path.Combine(data, "meadow-batch.json"))));
    }

    public string[] Names() => [.. folder.EnumerateFileSystemInfos().Select(file => file.Name).Order(StringComparer.Ordinal)];

    public void Dispose() => folder.Delete(recursive: true);
}
