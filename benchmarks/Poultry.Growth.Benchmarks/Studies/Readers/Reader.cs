using System.Text;
using Poultry.Growth.Files;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>A public reader, and a set of files that it reads as they are.</summary>
/// <param name="Name">As the page calls it.</param>
/// <param name="Files">Names within a folder and what stands in them.</param>
/// <param name="Read">Reads the folder.</param>
internal sealed record Reader(string Name, IReadOnlyList<(string Name, byte[] Bytes)> Files, Func<string, ReaderOutcome> Read)
{
    /// <summary>A reader of one file.</summary>
    public static Reader OfText(string name, string file, string text, Func<string, ReaderOutcome> read) =>
        new(name, [(file, Encoding.UTF8.GetBytes(text))], folder => read(Path.Combine(folder, file)));

    /// <summary>A reader of the templates of a new batch, as metric and as American growers get them, and of files beside them.</summary>
    public static Reader OfTemplates(string name, TemplateUnits units, Func<string, ReaderOutcome> read, params (string Name, string Text)[] others)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-templates-");
        try
        {
            BatchTemplates.Write(folder.FullName, units);
            (string, byte[])[] files = [.. folder.GetFiles().OrderBy(file => file.Name, StringComparer.Ordinal).Select(file => (file.Name, File.ReadAllBytes(file.FullName)))];
            return new(name, [.. files, .. others.Select(other => (other.Name, Encoding.UTF8.GetBytes(other.Text)))], read);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
