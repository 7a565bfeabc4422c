namespace Poultry.Growth.Files;

/// <summary>A small table with named columns: every column known, none twice, the needed ones there.</summary>
internal static class NamedTable
{
    /// <summary>Reads a file of such a table; what makes sense of it may add problems of its own.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="needed">Columns that must be there.</param>
    /// <param name="others">Columns that may be there.</param>
    /// <param name="make">Makes the result of the # lines and the rows; its result counts only where no problem was found.</param>
    public static FileReading<T> ReadFile<T>(
        string path, IReadOnlyList<string> needed, IReadOnlyList<string> others, Func<IReadOnlyList<NamedComment>, IReadOnlyList<NamedRow>, ProblemList, T?> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        T? value = null;
        if (TextFile.Read(path, problems) is { } text)
        {
            Csv csv = Csv.Of(text, problems);
            value = make([.. csv.Statements], Rows(csv.Rows, needed, others, problems), problems);
        }

        return new(problems.File, problems.Count == 0 ? value : null, problems.InOrder);
    }

    /// <summary>The rows that fit the header; cells of a column that the header lacks are read as empty, so that what else is wrong is told too.</summary>
    /// <param name="rows">The header first.</param>
    /// <param name="needed">Columns that must be there.</param>
    /// <param name="others">Columns that may be there.</param>
    /// <param name="problems">Where faults are told.</param>
    public static IReadOnlyList<NamedRow> Rows(IReadOnlyList<CsvRow> rows, IReadOnlyList<string> needed, IReadOnlyList<string> others, ProblemList problems)
    {
        string known = string.Join(", ", needed) + (others.Count == 0 ? "" : "; if wanted " + string.Join(", ", others));
        int before = problems.Count;
        if (rows.Count < 2)
        {
            problems.Add(rows.Count == 0 ? 1 : rows[0].Line, 1, "file", null, rows.Count == 0 ? "is empty" : "has no rows below the header", "a header and at least one row: " + known);
            return [];
        }

        int width = RowWidth.Of(rows[0]);
        Dictionary<string, int> columns = new(StringComparer.OrdinalIgnoreCase);
        foreach ((CsvCell cell, int index) in rows[0].Cells.Take(width).Select((cell, index) => (cell, index)))
        {
            if (!needed.Concat(others).Contains(cell.Text, StringComparer.OrdinalIgnoreCase))
            {
                problems.Add(cell, "header", cell.Text.Length == 0 ? "is a column without a name" : "is no column of this table" + NearestWord.Hint(cell.Text, [.. needed, .. others]), known);
            }
            else if (!columns.TryAdd(cell.Text, index))
            {
                problems.Add(cell, "header", "stands there twice", "each column once");
            }
        }

        // With a column refused it is told once, and not as missing too.
        foreach (string column in needed.Where(column => problems.Count == before && !columns.ContainsKey(column)).ToArray())
        {
            problems.Add(rows[0].Line, 1, column, null, "is missing from the header", known);
        }

        bool isHeaderKnown = problems.Count == before;
        return [.. rows.Skip(1).Where(row => RowWidth.Fits(row, width, problems)).Select(row => new NamedRow(row, columns, isHeaderKnown, problems))];
    }
}
