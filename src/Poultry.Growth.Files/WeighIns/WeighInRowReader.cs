using System.Globalization;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>Reads one row after another; every cell that is wrong is a problem of its own.</summary>
internal sealed class WeighInRowReader(WeighInHeader header, WeighInPlacement placement, ProblemList problems)
{
    private const int MostBirds = 1_000_000;

    private readonly WeighInCells cells = new(problems);

    /// <summary>The row, or null where a problem was found in it.</summary>
    public WeighInRow? Read(CsvRow row)
    {
        int before = problems.Count;
        if (!RowWidth.Fits(row, header.Width, problems))
        {
            return null;
        }

        double? days = AgeDays(row);
        Sex? sex = ReadSex(row);
        WeighInColumn? weight = OnlyWeight(row);
        if (weight is null)
        {
            return null;
        }

        double? kilograms = cells.Kilograms(row, weight);
        int? birds = Birds(row, weight);
        double? deviation = StandardDeviation(row, weight, birds);
        CsvCell cell = row.Cells[weight.Index];
        if (problems.Count > before || days is null || sex is null || kilograms is null || birds is null)
        {
            return null;
        }

        if (weight.Role == WeighInRole.TotalWeight && kilograms / birds < WeighInCells.LowestKilograms)
        {
            problems.Add(cell, weight.Name, "is too small for so many birds", weight.Expected);
            return null;
        }

        WeighInKind kind = weight.Role switch
        {
            WeighInRole.Weight => WeighInKind.Birds,
            WeighInRole.MeanWeight => WeighInKind.Mean,
            _ => WeighInKind.Group,
        };
        string note = header.Has(WeighInRole.Note, out WeighInColumn? column) ? row.Cells[column.Index].Text : "";
        return new WeighInRow(cell, kind, Age.FromDays(days.Value), sex.Value, kilograms.Value, birds.Value, deviation, note);
    }

    private double? AgeDays(CsvRow row)
    {
        if (header.Has(WeighInRole.Age, out WeighInColumn? age))
        {
            double? number = cells.Number(row.Cells[age.Index], age, lowest: 0);
            return age.AgeUnit == AgeUnit.Week ? 7 * number : number;
        }

        if (!header.Has(WeighInRole.Date, out WeighInColumn? column))
        {
            return null;
        }

        CsvCell cell = row.Cells[column.Index];
        if (!QuantityText.TryDate(cell.Text, out DateOnly date, out _))
        {
            problems.Add(cell, column.Name, cell.Text.Length == 0 ? "is empty" : "is not a date", column.Expected);
        }
        else if (placement.Placed is { } placed && date < placed)
        {
            string day = placed.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            problems.Add(cell, column.Name, "lies before the chicks were placed", "a date not before " + day);
        }
        else if (placement is { Placed: { } start, AgeAtPlacement: { } age1 })
        {
            return Age.On(date, start, age1).Days;
        }

        return null;
    }

    private Sex? ReadSex(CsvRow row)
    {
        if (!header.Has(WeighInRole.Sex, out WeighInColumn? column))
        {
            return Sex.Mixed;
        }

        CsvCell cell = row.Cells[column.Index];
        switch (cell.Text.ToUpperInvariant())
        {
            case "" or "MIXED":
                return Sex.Mixed;
            case "MALE" or "M":
                return Sex.Male;
            case "FEMALE" or "F":
                return Sex.Female;
            default:
                problems.Add(cell, column.Name, "is no known sex", column.Expected);
                return null;
        }
    }

    /// <summary>The one weight of the row: single bird, mean or total, never two of them.</summary>
    private WeighInColumn? OnlyWeight(CsvRow row)
    {
        WeighInColumn[] weights = [.. header.Weights.OrderBy(column => column.Index)];
        WeighInColumn[] filled = [.. weights.Where(column => row.Cells[column.Index].Text.Length > 0)];
        if (filled.Length == 0 && weights.Length > 0)
        {
            problems.Add(row.Cells[weights[0].Index], weights[0].Name, "is empty", weights[0].Expected);
        }
        else if (filled.Length > 1)
        {
            problems.Add(row.Cells[filled[1].Index], filled[1].Name, "stands beside " + filled[0].Name, "one kind of weight in a row");
        }

        return filled.Length == 1 ? filled[0] : null;
    }

    private int? Birds(CsvRow row, WeighInColumn weight)
    {
        bool hasColumn = header.Has(WeighInRole.Birds, out WeighInColumn? column);
        CsvCell cell = hasColumn ? row.Cells[column!.Index] : default;
        if (weight.Role == WeighInRole.Weight)
        {
            if (hasColumn && cell.Text is not ("" or "1"))
            {
                problems.Add(cell, column!.Name, "stands beside a single bird", "nothing or 1; a mean goes into mean_weight_<unit>, a group into total_weight_<unit>");
            }

            return 1;
        }

        if (!hasColumn || cells.Number(cell, column!, lowest: 1) is not { } number)
        {
            return null;
        }

        if (number != Math.Floor(number) || number > MostBirds)
        {
            problems.Add(cell, column!.Name, number > MostBirds ? "is too many" : "is not a whole number", column.Expected);
            return null;
        }

        return (int)number;
    }

    private double? StandardDeviation(CsvRow row, WeighInColumn weight, int? birds)
    {
        if (!header.Has(WeighInRole.StandardDeviation, out WeighInColumn? column) || row.Cells[column.Index] is not { Text.Length: > 0 } cell)
        {
            return null;
        }

        if (weight.Role != WeighInRole.MeanWeight)
        {
            problems.Add(cell, column.Name, "has no mean beside it", "nothing, or a mean in mean_weight_<unit>");
        }
        else if (birds == 1)
        {
            problems.Add(cell, column.Name, "is the spread of a single bird", "nothing, or 2 birds or more");
        }

        return cells.Kilograms(row, column);
    }
}
