using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Reads a standard, a table of weights by age, from a table of text (CSV). The format is in docs/file-formats.md.</summary>
/// <remarks>Every table carries <see cref="GrowthStandard.Target"/>. Nothing in a file makes these methods throw: every problem is found in one pass and told with its line and column.</remarks>
public static class StandardFile
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static StandardReading Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        return Read(TextFile.Read(path, problems), problems);
    }

    /// <summary>Reads a text to its end.</summary>
    /// <param name="reader">The text; it is not closed.</param>
    /// <param name="name">How problems call it.</param>
    public static StandardReading ReadText(TextReader reader, string name)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ProblemList problems = new(name);
        return Read(TextFile.Check(reader.ReadToEnd(), problems), problems);
    }

    private static StandardReading Read(string? text, ProblemList problems)
    {
        if (text is null)
        {
            return new StandardReading(problems.File) { Problems = problems.InOrder };
        }

        Csv csv = Csv.Of(text, problems);
        StandardLabel label = StandardLabel.Of(csv.Statements, problems);
        (Age Age, Mass Weight)[] rows = StandardTable.Read(csv.Rows, problems);
        if (problems.Count > 0)
        {
            return new StandardReading(problems.File) { Problems = problems.InOrder };
        }

        string year = string.Create(CultureInfo.InvariantCulture, $"{label.Year}");
        Citation source = new("Standard" + year, label.Source, HowKnown.Secondary, "as typed into " + problems.File);
        return new StandardReading(problems.File)
        {
            Name = label.Name,
            Year = label.Year,
            Standard = TabulatedCurve.Of(label.Name + ", " + year, source, rows, GrowthStandard.Target),
        };
    }
}
