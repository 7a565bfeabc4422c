using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>Reads limits on space, air, transport and land from a table of text (CSV): those of the library and one's own alike. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes these methods throw: every problem is found in one pass and told with its line and column.</remarks>
public static class LimitFile
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static LimitReading Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        return Read(TextFile.Read(path, problems), problems);
    }

    /// <summary>Reads a text to its end.</summary>
    /// <param name="reader">The text; it is not closed.</param>
    /// <param name="name">How problems call it.</param>
    public static LimitReading ReadText(TextReader reader, string name)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ProblemList problems = new(name);
        return Read(TextFile.Check(reader.ReadToEnd(), problems), problems);
    }

    private static LimitReading Read(string? text, ProblemList problems)
    {
        IReadOnlyList<Limit> limits = text is null ? [] : new LimitTable(problems).Read(Csv.Of(text, problems).Rows);
        return new LimitReading(problems.File) { Limits = problems.Count == 0 ? limits : [], Problems = problems.InOrder };
    }
}
