using System.Collections.Immutable;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>Tables of numbers by age or date: what a farm writes down day by day beside its weigh-ins.</summary>
internal sealed class AgedTable
{
    private static readonly ImmutableArray<string> AgeNames = ["age_d", "age_wk", "date"];

    private readonly IReadOnlyList<AgedColumn> columns;
    private readonly DateOnly? placed;
    private readonly Age ageAtPlacement;
    private readonly int fewest;
    private readonly ProblemList problems;

    private AgedTable(IReadOnlyList<AgedColumn> columns, DateOnly? placed, Age ageAtPlacement, int fewest, ProblemList problems) =>
        (this.columns, this.placed, this.ageAtPlacement, this.fewest, this.problems) = (columns, placed, ageAtPlacement, fewest, problems);

    /// <summary>Rows by age, rising, and as few as given; each with a number a column, null where its cell is empty. Meaningful where no problem was found.</summary>
    public static IReadOnlyList<(Age Age, double?[] Values)> Read(
        string path, IReadOnlyList<AgedColumn> columns, DateOnly? placed, Age ageAtPlacement, int fewest, ProblemList problems) =>
        TextFile.Read(path, problems) is { } text ? new AgedTable(columns, placed, ageAtPlacement, fewest, problems).Rows(Csv.Of(text, problems).Rows) : [];

    private List<(Age Age, double?[] Values)> Rows(IReadOnlyList<CsvRow> rows)
    {
        if (rows.Count < 1 + fewest)
        {
            problems.Add(1, 1, "file", null, rows.Count == 0 ? "is empty" : "has no rows below the header", "a header with " + Known() + ", and a row");
            return [];
        }

        if (Header(rows[0]) is not { } places)
        {
            return [];
        }

        List<(Age Age, double?[] Values)> read = [];
        int width = RowWidth.Of(rows[0]);
        foreach (CsvRow row in rows.Skip(1).Where(row => RowWidth.Fits(row, width, problems)))
        {
            CsvCell cell = row.Cells[places.Age];
            double?[] values = [.. columns.Select((column, at) => places.Columns[at] is { } place ? Number(row.Cells[place.Index], column, place.Unit) : null)];
            if (AgeOf(cell, places.IsDate, places.AgeUnit) is not { } age)
            {
                continue;
            }

            if (read.Count > 0 && age <= read[^1].Age)
            {
                problems.Add(cell, places.IsDate ? "date" : "age", "does not come after the row before it", "rows in the order of age, each once");
            }

            read.Add((age, values));
        }

        return read;
    }

    private Places? Header(CsvRow header)
    {
        int before = problems.Count;
        List<(int Index, string Name)> ages = [];
        (int Index, int Unit)?[] places = new (int, int)?[columns.Count];
        for (int index = 0; index < RowWidth.Of(header); index++)
        {
            CsvCell cell = header.Cells[index];
            if (AgeNames.FirstOrDefault(name => Same(name, cell.Text)) is { } ageName)
            {
                if (ages.Count > 0)
                {
                    problems.Add(cell, "header", "is a second column of ages", "one of age_d, age_wk and date");
                }

                ages.Add((index, ageName));
            }
            else if (Find(cell.Text) is var (column, unit))
            {
                if (places[column] is not null)
                {
                    problems.Add(cell, "header", "stands a second time", "each column once");
                }

                places[column] = (index, unit);
            }
            else if (!Same("note", cell.Text))
            {
                problems.Add(cell, "header", "is no known column" + NearestWord.Hint(cell.Text, [.. AgeNames, .. columns.SelectMany(column => column.Units.Select(unit => column.Stem + "_" + unit.Unit)), "note"]), Known());
            }
        }

        foreach ((AgedColumn column, int at) in columns.Select((column, at) => (column, at)))
        {
            if (places[at] is null && !column.IsOptional)
            {
                problems.Add(header.Line, 1, "header", null, "lacks " + column.Names, Known());
            }
        }

        if (ages.Count == 0)
        {
            problems.Add(header.Line, 1, "header", null, "lacks ages", "age_d, age_wk or date");
        }
        else if (ages[0].Name == "date" && placed is null)
        {
            problems.Add(header.Cells[ages[0].Index], "header", WeighInPlacement.NeedsPlacing, "the field placed in the batch file, or ages in place of dates");
        }

        return problems.Count == before ? new(ages[0].Index, ages[0].Name == "date", ages[0].Name == "age_wk" ? 7 : 1, places) : null;
    }

    private (int Column, int Unit)? Find(string name)
    {
        for (int column = 0; column < columns.Count; column++)
        {
            for (int unit = 0; unit < columns[column].Units.Count; unit++)
            {
                if (Same(columns[column].Stem + "_" + columns[column].Units[unit].Unit, name))
                {
                    return (column, unit);
                }
            }
        }

        return null;
    }

    private Age? AgeOf(CsvCell cell, bool isDate, double unit)
    {
        if (!isDate)
        {
            string? fault = NumberText.Fault(cell.Text, out double number) ?? (number < 0 ? "is below 0" : null);
            if (fault is null)
            {
                return Age.FromDays(number * unit);
            }

            problems.Add(cell, "age", fault, "an age of 0 or more");
            return null;
        }

        if (!QuantityText.TryDate(cell.Text, out DateOnly date, out _))
        {
            problems.Add(cell, "date", "is not a date", "year, month and day, as in 2027-04-12");
            return null;
        }

        if (date < placed!.Value)
        {
            problems.Add(cell, "date", "lies before the chicks were placed", "a date of the batch");
            return null;
        }

        return Age.On(date, placed.Value, ageAtPlacement);
    }

    private double? Number(CsvCell cell, AgedColumn column, int unit)
    {
        if (cell.Text.Length == 0 && column.IsOptional)
        {
            return null;
        }

        string? fault = NumberText.Fault(cell.Text, out double number);
        double value = fault is null ? column.Units[unit].Convert(number) : double.NaN;
        fault ??= double.IsNaN(value) ? "is not whole" : value < column.Least || value > column.Most ? "is out of range" : null;
        if (fault is null)
        {
            return value;
        }

        problems.Add(cell, column.Stem + "_" + column.Units[unit].Unit, fault, column.Expected);
        return null;
    }

    private static bool Same(string name, string text) => name.Equals(text, StringComparison.OrdinalIgnoreCase);

    private string Known() => "age_d, age_wk or date; " + string.Join("; ", columns.Select(column => column.Names + (column.IsOptional ? " (may be left out)" : ""))) + "; note";

    private sealed record Places(int Age, bool IsDate, double AgeUnit, (int Index, int Unit)?[] Columns);
}
