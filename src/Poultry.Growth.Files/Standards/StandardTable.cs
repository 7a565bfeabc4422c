using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The rows of a standard: an age and a weight each, by the columns and cells of weigh-in files.</summary>
internal static class StandardTable
{
    private const string KnownNames = "age_d or age_wk, and weight_<unit>; <unit> is g, kg, lb, oz or lb_oz";

    /// <summary>The rows as given; meaningful where no problem was found.</summary>
    public static (Age Age, Mass Weight)[] Read(IReadOnlyList<CsvRow> rows, ProblemList problems)
    {
        if (rows.Count == 0)
        {
            problems.Add(1, 1, "file", null, "is empty", "a header and at least two rows: " + KnownNames);
            return [];
        }

        if (rows.Count < 3)
        {
            problems.Add(rows[0].Line, 1, "file", null, rows.Count == 1 ? "has no rows below the header" : "has one row below the header", "at least two rows");
        }

        if (Columns(rows[0], problems) is not var (age, weight))
        {
            return [];
        }

        WeighInCells cells = new(problems);
        int width = RowWidth.Of(rows[0]);
        List<(CsvCell Cell, double Days, double Kilograms)> read = [];
        foreach (CsvRow row in rows.Skip(1).Where(row => RowWidth.Fits(row, width, problems)))
        {
            double? number = cells.Number(row.Cells[age.Index], age, lowest: 0);
            if (cells.Kilograms(row, weight) is { } kilograms && number is { } found)
            {
                read.Add((row.Cells[weight.Index], age.AgeUnit == AgeUnit.Week ? 7 * found : found, kilograms));
            }
        }

        RefuseTwiceAndFalling(read, weight, problems);
        return [.. read.Select(row => (Age.FromDays(row.Days), Mass.FromKilograms(row.Kilograms)))];
    }

    private static (WeighInColumn Age, WeighInColumn Weight)? Columns(CsvRow header, ProblemList problems)
    {
        int before = problems.Count;
        Dictionary<WeighInRole, WeighInColumn> columns = [];
        for (int index = 0; index < RowWidth.Of(header); index++)
        {
            CsvCell cell = header.Cells[index];
            (WeighInColumn? column, string fault, _) = WeighInColumn.Named(cell.Text, index);
            if (column is not { Role: WeighInRole.Age or WeighInRole.Weight })
            {
                problems.Add(cell, "header", cell.Text.Length == 0 ? "is a column without a name" : column is null ? fault : "is no column of a standard", KnownNames);
            }
            else if (!columns.TryAdd(column.Role, column))
            {
                problems.Add(cell, "header", "says the same as " + columns[column.Role].Name, "one of the two");
            }
        }

        // With a column refused it is told once, and not as missing too.
        if (problems.Count == before && columns.Count < 2)
        {
            string missing = columns.ContainsKey(WeighInRole.Age) ? "weight" : "age";
            problems.Add(header.Line, 1, missing, null, "is missing from the header", KnownNames);
        }

        return problems.Count == before ? (columns[WeighInRole.Age], columns[WeighInRole.Weight]) : null;
    }

    private static void RefuseTwiceAndFalling(List<(CsvCell Cell, double Days, double Kilograms)> rows, WeighInColumn weight, ProblemList problems)
    {
        (CsvCell Cell, double Days, double Kilograms)[] byAge = [.. rows.OrderBy(row => row.Days)];
        foreach (((CsvCell Cell, double Days, double Kilograms) younger, (CsvCell Cell, double Days, double Kilograms) older) in byAge.Zip(byAge.Skip(1)))
        {
            string line = string.Create(CultureInfo.InvariantCulture, $"line {younger.Cell.Line}");
            if (older.Days == younger.Days)
            {
                problems.Add(older.Cell, weight.Name, "is of the same age as " + line, "every age once");
            }
            else if (older.Kilograms < younger.Kilograms)
            {
                problems.Add(older.Cell, weight.Name, "is less than the younger birds weigh in " + line, "a weight that does not fall with age");
            }
        }
    }
}
