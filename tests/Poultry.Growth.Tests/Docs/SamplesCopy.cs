namespace Poultry.Growth.Tests.Docs;

/// <summary>
/// A copy of samples in a folder of its own, which is the current one until this is disposed: the paths on the pages hold, and a file that a
/// call writes does not end up in the repository. Tests that use it are in the collection <see cref="ProcessWide"/>.
/// </summary>
public sealed class SamplesCopy : IDisposable
{
    private readonly string before = Environment.CurrentDirectory;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-growth-");

    public SamplesCopy()
    {
        foreach (string file in Repository.Files("samples"))
        {
            string copy = Path.Combine(folder.FullName, file);
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(Repository.PathOf(file), copy);
        }

        Environment.CurrentDirectory = folder.FullName;
    }

    public void Dispose()
    {
        Environment.CurrentDirectory = before;
        folder.Delete(recursive: true);
    }
}
