using System.Collections.Immutable;
using System.Globalization;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>Reads inspections of tenders from a table of text (CSV): one row a batch, or several rows of a batch, which are added up. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes these methods throw: every problem is found in one pass and told with its line and column.</remarks>
public static class InspectionFile
{
    private const int MostBirds = 1_000_000;

    private static readonly ImmutableArray<string> Required = ["birds_opened", "birds_found"];
    private static readonly ImmutableArray<string> Optional = ["batch", "killed", "detection_percent", "note"];

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static InspectionReading Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        return Reading(problems.File, Rows(TextFile.Read(path, problems), problems), [problems]);
    }

    /// <summary>Reads every table of a folder: all its .csv files must be inspections.</summary>
    /// <param name="folder">Where it is. One that is missing, unreadable or without a table is a problem of the result, not an exception.</param>
    public static InspectionReading ReadFolder(string folder) => ReadFolder(folder, except: null);

    /// <summary>The same but for one file, which is about to be replaced.</summary>
    internal static InspectionReading ReadFolder(string folder, string? except)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ProblemList problems = new(folder);
        List<ProblemList> all = [problems];
        List<(InspectionRow Row, ProblemList Problems)> rows = [];
        foreach (string path in CsvFolder.Paths(folder, "a folder with tables of inspections (.csv)", problems).Where(path => path != except))
        {
            ProblemList own = new(Path.GetFileName(path));
            all.Add(own);
            rows.AddRange(Rows(TextFile.Read(path, own), own));
        }

        return Reading(folder, rows, all);
    }

    /// <summary>Reads a text to its end.</summary>
    /// <param name="reader">The text; it is not closed.</param>
    /// <param name="name">How problems call it.</param>
    public static InspectionReading ReadText(TextReader reader, string name)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ProblemList problems = new(name);
        return Reading(name, Rows(TextFile.Check(reader.ReadToEnd(), problems), problems), [problems]);
    }

    private static List<(InspectionRow Row, ProblemList Problems)> Rows(string? text, ProblemList problems)
    {
        if (text is null)
        {
            return [];
        }

        List<(InspectionRow Row, ProblemList Problems)> read = [];
        foreach (NamedRow row in NamedTable.Rows(Csv.Of(text, problems).Rows, Required, Optional, problems))
        {
            int before = problems.Count;
            CsvCell batch = row.At("batch");
            DateOnly? killed = row.Quantity<DateOnly>("killed", QuantityText.TryDate);
            int? opened = Birds(row, "birds_opened", 1), lesions = Birds(row, "birds_found", 0);
            double? percent = row.Number("detection_percent", 1e-6, 100, expected: "a percentage above 0, at most 100");
            if (lesions > opened)
            {
                row.Refuse(row.At("birds_found"), "birds_found", "is more than were opened", "at most as many as birds_opened");
            }

            // Rows whose batch or day was not made out are held against no other.
            if (row.IsHeaderKnown && problems.Count == before && opened is { } all && lesions is { } found)
            {
                string name = batch.Text.Length > 0 ? batch.Text
                    : Path.GetFileNameWithoutExtension(problems.File) is var stem && !string.IsNullOrWhiteSpace(stem) ? stem
                    : problems.File;
                read.Add((new(name, killed, all, found, percent ?? 100, batch), problems));
            }
        }

        return read;
    }

    private static int? Birds(NamedRow row, string column, int low)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a whole number of birds, {low} to {MostBirds}");
        return row.Text(column, expected).Length == 0 ? null : (int?)row.Number(column, low, MostBirds, whole: true, expected);
    }

    /// <summary>Rows of one batch are one inspection; they must agree on when it was killed and how well lesions were seen.</summary>
    private static InspectionReading Reading(string name, List<(InspectionRow Row, ProblemList Problems)> rows, List<ProblemList> all)
    {
        List<LesionInspection> inspections = [];
        foreach (IGrouping<string, (InspectionRow Row, ProblemList Problems)> batch in rows.GroupBy(row => row.Row.Batch, StringComparer.OrdinalIgnoreCase))
        {
            InspectionRow first = batch.First().Row;
            foreach ((InspectionRow row, ProblemList problems) in batch.Where(other => other.Row.Killed != first.Killed || other.Row.DetectionPercent != first.DetectionPercent))
            {
                problems.Add(row.Cell, "batch", "has another killed or detection_percent than an earlier row of this batch", "the same in all rows of a batch");
            }

            if (batch.Sum(row => (long)row.Row.Opened) > MostBirds)
            {
                batch.First().Problems.Add(first.Cell, "batch", "holds too many birds in all", string.Create(CultureInfo.InvariantCulture, $"at most {MostBirds}"));
                continue;
            }

            inspections.Add(LesionInspection.Of(
                batch.Sum(row => row.Row.Opened), batch.Sum(row => row.Row.Found), first.Batch, first.Killed, Probability.FromPercent(first.DetectionPercent)));
        }

        FileProblem[] found = [.. all.SelectMany(problems => problems.InOrder)];
        return new(name) { Inspections = found.Length == 0 ? inspections : null, Problems = found };
    }

    private sealed record InspectionRow(string Batch, DateOnly? Killed, int Opened, int Found, double DetectionPercent, CsvCell Cell);
}
