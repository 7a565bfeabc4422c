using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The cells of a line of a plant's sheet: those that it needs, and those that make no sense on it.</summary>
internal static class PlantSheetCells
{
    private const double Most = 1_000_000;

    public static void OnlyOnce(NamedRow row, bool again)
    {
        if (again)
        {
            row.Refuse(row.Cell("line"), "line", "stands there a second time", "one such line");
        }
    }

    /// <summary>Cells that a line of this kind has no use for: what stands there would be lost without a word.</summary>
    public static void Nothing(NamedRow row, string kind, params IEnumerable<string> columns)
    {
        foreach (string column in columns)
        {
            if (row.Cell(column) is { } cell)
            {
                row.Refuse(cell, column, "does not belong to a line " + kind, "an empty cell");
            }
        }
    }

    /// <summary>The cell what of a line that needs it, also where the table has no such column.</summary>
    public static string Word(NamedRow row, string expected)
    {
        if (row.Cell("what") is { } cell)
        {
            return cell.Text;
        }

        row.Refuse(null, "what", "is missing", expected);
        return "";
    }

    public static int? Count(NamedRow row, double least = 0)
    {
        if (row.Cell("count") is null)
        {
            row.Refuse(null, "count", "is missing", "a whole number");
            return null;
        }

        return row.Number("count", least, Most, whole: true) is { } number ? (int)number : null;
    }

    public static Mass? Weight(NamedRow row, string expected)
    {
        if (row.Cell("weight") is null)
        {
            row.Refuse(null, "weight", "is missing", expected);
        }

        return row.Quantity<Mass>("weight", QuantityText.TryMass);
    }
}
