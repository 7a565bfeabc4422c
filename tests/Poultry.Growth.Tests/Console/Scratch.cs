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

    public string[] Names() => [.. folder.EnumerateFileSystemInfos().Select(file => file.Name).Order(StringComparer.Ordinal)];

    public void Dispose() => folder.Delete(recursive: true);
}
