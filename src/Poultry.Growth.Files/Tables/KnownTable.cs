using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>A table whose columns have names of ours: unknown, missing and double ones are problems, and so is every cell that does not hold what it should.</summary>
internal sealed class KnownTable
{
    public const int MostBirds = 1_000_000;

    private readonly Dictionary<string, int> columns = new(StringComparer.OrdinalIgnoreCase);
    private readonly ProblemList problems;

    private KnownTable(ProblemList problems) => this.problems = problems;

    /// <summary>Rows that have as many cells as the header; empty where the header is wrong.</summary>
    public IReadOnlyList<CsvRow> Rows { get; private init; } = [];

    /// <param name="rows">The header first.</param>
    /// <param name="required">Columns that must be there.</param>
    /// <param name="optional">Columns that may be.</param>
    /// <param name="problems">Where faults are told.</param>
    public static KnownTable Of(IReadOnlyList<CsvRow> rows, IReadOnlyList<string> required, IReadOnlyList<string> optional, ProblemList problems)
    {
        string expected = "columns " + string.Join(", ", required) + (optional.Count == 0 ? "" : ", and if wanted " + string.Join(", ", optional));
        if (rows.Count < 2)
        {
            problems.Add(rows.Count == 0 ? 1 : rows[0].Line, 1, "file", null, rows.Count == 0 ? "is empty" : "has no rows below the header", expected);
            return new(problems);
        }

        int width = RowWidth.Of(rows[0]);
        KnownTable table = new(problems) { Rows = [.. rows.Skip(1).Where(row => RowWidth.Fits(row, width, problems))] };
        int faults = problems.Count;
        for (int index = 0; index < width; index++)
        {
            CsvCell cell = rows[0].Cells[index];
            if (!required.Concat(optional).Contains(cell.Text, StringComparer.OrdinalIgnoreCase))
            {
                problems.Add(cell, "header", cell.Text.Length == 0 ? "is a column without a name" : "is no column of this table", expected);
            }
            else if (!table.columns.TryAdd(cell.Text, index))
            {
                problems.Add(cell, "header", "stands there twice", "each column once");
            }
        }

        foreach (string missing in required.Where(name => !table.columns.ContainsKey(name)))
        {
            problems.Add(rows[0].Line, 1, missing, null, "is missing from the header", expected);
        }

        return problems.Count > faults ? new(problems) : table;
    }

    /// <summary>A cell; empty where the table has no such column.</summary>
    public CsvCell Cell(CsvRow row, string name) => columns.TryGetValue(name, out int index) ? row.Cells[index] : new("", row.Line, 1);

    /// <summary>A text; a problem where it is empty.</summary>
    public string? Text(CsvRow row, string name, string expected)
    {
        CsvCell cell = Cell(row, name);
        if (cell.Text.Length > 0)
        {
            return cell.Text;
        }

        problems.Add(cell, name, "is empty", expected);
        return null;
    }

    /// <summary>A number within bounds; null without a problem where the cell is empty.</summary>
    public double? Number(CsvRow row, string name, double low, double high, string expected)
    {
        CsvCell cell = Cell(row, name);
        if (cell.Text.Length == 0)
        {
            return null;
        }

        string? fault = NumberText.Fault(cell.Text, out double number) ?? (number < low || number > high ? "is out of range" : null);
        if (fault is not null)
        {
            problems.Add(cell, name, fault, expected);
            return null;
        }

        return number;
    }

    /// <summary>A whole number of birds; a problem where the cell is empty.</summary>
    public int? Birds(CsvRow row, string name, int low)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a whole number of birds, {low} to {MostBirds}");
        CsvCell cell = Cell(row, name);
        if (int.TryParse(cell.Text, NumberStyles.None, CultureInfo.InvariantCulture, out int birds) && birds >= low && birds <= MostBirds)
        {
            return birds;
        }

        problems.Add(cell, name, cell.Text.Length == 0 ? "is empty" : "is no such number", expected);
        return null;
    }

    /// <summary>A date; null without a problem where the cell is empty.</summary>
    public DateOnly? Date(CsvRow row, string name)
    {
        CsvCell cell = Cell(row, name);
        if (cell.Text.Length == 0)
        {
            return null;
        }

        if (QuantityText.TryDate(cell.Text, out DateOnly date, out _))
        {
            return date;
        }

        problems.Add(cell, name, "is not a date", "a date as year, month and day, as in 2027-04-12");
        return null;
    }
}
