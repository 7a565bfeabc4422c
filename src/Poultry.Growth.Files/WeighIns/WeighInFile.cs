using Poultry.Growth.Fitting;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>Reads weigh-ins from a table of text (CSV). The format is in docs/file-formats.md.</summary>
/// <remarks>
/// Nothing in a file makes these methods throw: every problem is found in one pass and told with its line and column. A column whose name
/// is unknown is a problem, since a misspelt <c>sd_g</c> would otherwise go unnoticed; where the options name a column, the file is somebody
/// else's and its other columns are passed over, by name.
/// </remarks>
public static class WeighInFile
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    /// <param name="options">How to read it; null for a file that says everything itself.</param>
    public static WeighInReading Read(string path, WeighInFileOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        return Read(TextFile.Read(path, problems), problems, options ?? new());
    }

    /// <summary>Reads a text to its end.</summary>
    /// <param name="reader">The text; it is not closed.</param>
    /// <param name="name">How problems call it.</param>
    /// <param name="options">How to read it; null for a text that says everything itself.</param>
    public static WeighInReading ReadText(TextReader reader, string name, WeighInFileOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ProblemList problems = new(name);
        return Read(TextFile.Check(reader.ReadToEnd(), problems), problems, options ?? new());
    }

    private static WeighInReading Read(string? text, ProblemList problems, WeighInFileOptions options)
    {
        if (text is null)
        {
            return new WeighInReading(problems.File) { Problems = problems.InOrder };
        }

        Csv csv = Csv.Of(text, problems);
        WeighInPlacement placement = WeighInPlacement.Of(csv.Statements, options, problems);
        BatchTags tags = BatchTags.Of(csv.Statements, problems);
        if (csv.Rows.Count == 0)
        {
            problems.Add(1, 1, "file", null, "is empty", "a header and at least one row: " + WeighInColumn.KnownNames);
            return new WeighInReading(problems.File) { Problems = problems.InOrder };
        }

        WeighInHeader header = WeighInHeader.Of(csv.Rows[0], options, problems);
        if (header.Has(WeighInRole.Date, out WeighInColumn? date))
        {
            placement.RefuseDatesWithoutPlacement(header.NameOf(date), problems);
        }

        RowFilter filter = RowFilter.Of(options.Where, header, problems);
        CsvRow[] wanted = [.. csv.Rows.Skip(1).Where(filter.Fits)];
        if (csv.Rows.Count == 1 && options.MayBeEmpty)
        {
            return new WeighInReading(problems.File) { Problems = problems.InOrder };
        }

        if (wanted.Length == 0)
        {
            string fault = csv.Rows.Count == 1 ? "has no rows below the header" : "has no row that fits " + string.Join(" and ", options.Where);
            problems.Add(csv.Rows[0].Line, 1, "file", null, fault, "at least one row");
        }

        WeighInRowReader reader = new(header, placement, problems);
        WeighInRow[] rows = [.. wanted.Select(reader.Read).OfType<WeighInRow>()];
        WeighInAssembly assembly = WeighInAssembly.Of(rows, problems);
        List<FileSuspicion> suspicions = [];
        WeighInSeries? series = problems.Count > 0 ? null : assembly.Series(options.ExcludeFlagged, suspicions, problems);
        BatchKind? kind = series is null ? null : tags.KindOf(series, problems);
        if (problems.Count == 0 && OuncesAsDecimals.Suspected(wanted, header) is { Count: > 0 } lines)
        {
            suspicions.Add(OuncesAsDecimals.Suspicion(problems.File, lines));
        }

        return new WeighInReading(problems.File)
        {
            Series = problems.Count > 0 ? null : series,
            Kind = problems.Count > 0 ? null : kind,
            Problems = problems.InOrder,
            Suspicions = problems.Count > 0 ? [] : suspicions,
            Placed = placement.Placed,
            AgeAtPlacement = placement.AgeAtPlacement,
            RowsPassedOver = csv.Rows.Count - 1 - wanted.Length,
            IgnoredColumns = header.Ignored,
        };
    }
}
