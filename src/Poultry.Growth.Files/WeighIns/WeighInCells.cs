namespace Poultry.Growth.Files;

/// <summary>Reads the numbers of a weigh-in file, cell by cell; one that is wrong is a problem and null.</summary>
internal sealed class WeighInCells(ProblemList problems)
{
    /// <summary>As far as the library weighs: enough to hold a weight in the wrong unit.</summary>
    public const double LowestKilograms = 1e-6, HighestKilograms = 1e6;

    /// <summary>A weight, in whatever unit its header names.</summary>
    public double? Kilograms(CsvRow row, WeighInColumn column)
    {
        CsvCell cell = row.Cells[column.Index];
        double? kilograms = column.WeightUnit switch
        {
            WeightUnit.Gram => Number(cell, column) / 1000,
            WeightUnit.Kilogram => Number(cell, column),
            WeightUnit.Pound => QuantityText.KilogramsPerPound * Number(cell, column),
            WeightUnit.Ounce => QuantityText.KilogramsPerOunce * Number(cell, column),
            _ => PoundsAndOunces(cell, column),
        };
        if (kilograms is < LowestKilograms or > HighestKilograms)
        {
            problems.Add(cell, column.Name, kilograms > 1 ? "is too large" : "is too small", column.Expected);
            return null;
        }

        return kilograms;
    }

    /// <summary>A number in a cell; above 0 unless a lowest value is given.</summary>
    public double? Number(CsvCell cell, WeighInColumn column, double? lowest = null)
    {
        string? fault = NumberText.Fault(cell.Text, out double number)
            ?? (number < 0 ? "is below 0" : lowest is null && number == 0 ? "is 0" : number < lowest ? "is below 1" : null);
        if (fault is null)
        {
            return number;
        }

        problems.Add(cell, column.Name, fault, fault == "has a decimal comma" ? column.Expected + " with a decimal point" : column.Expected);
        return null;
    }

    private double? PoundsAndOunces(CsvCell cell, WeighInColumn column)
    {
        int colon = cell.Text.IndexOf(':', StringComparison.Ordinal);
        double pounds = 0, ounces = 0;
        string? fault = colon < 0
            ? NumberText.Fault(cell.Text, out _) ?? "has no colon"
            : NumberText.Fault(cell.Text.AsSpan(0, colon).Trim(), out pounds) ?? NumberText.Fault(cell.Text.AsSpan(colon + 1).Trim(), out ounces);
        fault ??= pounds < 0 || ounces < 0 ? "is below 0"
            : pounds != Math.Floor(pounds) ? "has a part of a pound before its ounces"
            : ounces >= QuantityText.OuncesPerPound ? "has 16 ounces or more"
            : pounds + ounces == 0 ? "is 0"
            : null;
        if (fault is null)
        {
            return (QuantityText.KilogramsPerPound * pounds) + (QuantityText.KilogramsPerOunce * ounces);
        }

        problems.Add(cell, column.Name, fault, column.Expected);
        return null;
    }
}
