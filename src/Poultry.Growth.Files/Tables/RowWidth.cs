using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>A row has as many cells as the header; empty ones behind them are a spreadsheet's.</summary>
internal static class RowWidth
{
    /// <summary>Columns of a header: spreadsheets leave empty ones at the end.</summary>
    public static int Of(CsvRow header)
    {
        int width = header.Cells.Count;
        while (width > 0 && header.Cells[width - 1].Text.Length == 0)
        {
            width--;
        }

        return width;
    }

    /// <summary>Whether the row fits; a problem where it does not.</summary>
    public static bool Fits(CsvRow row, int width, ProblemList problems)
    {
        string counted = string.Create(CultureInfo.InvariantCulture, $"has {row.Cells.Count} cells");
        string expected = string.Create(CultureInfo.InvariantCulture, $"{width} cells, as in the header");
        if (row.Cells.Count < width)
        {
            problems.Add(row.Line, row.Cells[0].Column, "row", null, counted, expected);
            return false;
        }

        if (row.Cells.Skip(width).FirstOrDefault(cell => cell.Text.Length > 0) is { Text: not null } extra)
        {
            problems.Add(extra, "row", counted, expected + " (a decimal comma, or a comma in a note without quotes?)");
            return false;
        }

        return true;
    }
}
