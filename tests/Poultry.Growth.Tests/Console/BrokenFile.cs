using System.Text;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>One of the files of a new batch, spoilt.</summary>
internal sealed class BrokenFile
{
    private readonly Func<string, byte[]> spoil;

    private BrokenFile(string name, Func<string, byte[]> spoil) => (Name, this.spoil) = (name, spoil);

    public string Name { get; }

    /// <summary>Another text in its place.</summary>
    public static BrokenFile Whole(string name, string text) => new(name, _ => Encoding.UTF8.GetBytes(text));

    /// <summary>The first such words replaced.</summary>
    public static BrokenFile Edited(string name, string words, string others) => new(name, text =>
    {
        int at = text.IndexOf(words, StringComparison.Ordinal);
        at.Should().BeGreaterThanOrEqualTo(0, "the template says {0}", words);
        return Encoding.UTF8.GetBytes(text[..at] + others + text[(at + words.Length)..]);
    });

    public static BrokenFile Unicode(string name) => new(name, text => [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)]);

    /// <summary>As an old spreadsheet saves an umlaut.</summary>
    public static BrokenFile Latin(string name) => new(name, text =>
    {
        int at = text.IndexOf("invented", StringComparison.Ordinal);
        return Encoding.Latin1.GetBytes(text[..at] + "erdächt" + text[(at + "invented".Length)..]);
    });

    public void Spoil(string folder)
    {
        string path = Path.Combine(folder, Name);
        File.WriteAllBytes(path, spoil(File.ReadAllText(path)));
    }
}
