using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Pounds whose decimals read as ounces: 5.11 for 5 lb 11 oz, 5.03 or 5.3 for 5 lb 3 oz, and never more than 15.</summary>
/// <remarks>
/// Only the text of the file shows it. A scale in hundredths of a pound shows 10 to 15 behind the point in one reading of fifteen or less, so
/// three readings with two digits, all of them at most 15, are a chance of 1 in 3,000; and five readings at most .15, not all alike, of 1 in 10,000.
/// </remarks>
internal static class OuncesAsDecimals
{
    private const int FewestTwoDigits = 3;
    private const int FewestInAll = 5;
    private const int MostOunces = 15;

    /// <summary>The lines of weights in pounds, where every one of them looks like that; otherwise none.</summary>
    public static IReadOnlyList<int> Suspected(IEnumerable<CsvRow> rows, WeighInHeader header)
    {
        int[] columns = [.. header.Weights.Where(column => column.WeightUnit == WeightUnit.Pound).Select(column => column.Index)];
        CsvCell[] cells = [.. rows.SelectMany(row => columns.Select(column => row.Cells[column])).Where(cell => cell.Text.Length > 0)];
        string[] decimals = [.. cells.Select(cell => cell.Text.Split('.') is [_, var digits] ? digits : "")];
        bool asOunces = Array.TrueForAll(
            decimals, digits => digits.Length <= 2 && (digits.Length == 0 || int.Parse(digits, CultureInfo.InvariantCulture) <= MostOunces));
        bool small = decimals.Length >= FewestInAll && Array.TrueForAll(decimals, digits => digits.Length == 0 || digits[0] is '0' or '1')
            && decimals.Distinct().Count() > 1;
        return asOunces && (small || decimals.Count(digits => digits.Length == 2) >= FewestTwoDigits) ? [.. cells.Select(cell => cell.Line)] : [];
    }

    public static FileSuspicion Suspicion(string file, IReadOnlyList<int> lines)
    {
        const string Text = "All pounds have decimals from .0 to .15, as if ounces had been typed behind the point; expected decimals up to .99, or pounds:ounces in a column weight_lb_oz.";
        return new FileSuspicion(file, lines, FileSuspicion.OuncesAsDecimals, Text, origin: null, excluded: false);
    }
}
