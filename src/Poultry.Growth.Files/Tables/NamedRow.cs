using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Reads a quantity with its unit, as <see cref="QuantityText"/> does.</summary>
internal delegate bool QuantityReader<T>(ReadOnlySpan<char> text, out T value, [NotNullWhen(false)] out string? problem);

/// <summary>A row whose cells are asked for by name; what cannot be read is a problem and null.</summary>
internal sealed class NamedRow(CsvRow row, IReadOnlyDictionary<string, int> columns, bool isHeaderKnown, ProblemList problems)
{
    /// <summary>The first cell: where a problem of the row as a whole stands.</summary>
    public CsvCell Start => row.Cells[0];

    /// <summary>Whether every column of the header was made out: else what seems missing may stand in one that was not.</summary>
    public bool IsHeaderKnown => isHeaderKnown;

    /// <summary>Whether the table has such a column.</summary>
    public bool Has(string column) => columns.ContainsKey(column);

    /// <summary>The cell of a column, empty or not; an empty one at the start of the row where there is no such column.</summary>
    public CsvCell At(string column) => columns.TryGetValue(column, out int index) ? row.Cells[index] : Start with { Text = "" };

    /// <summary>The cell of a column; null where there is no such column or the cell is empty.</summary>
    public CsvCell? Cell(string column) => At(column) is { Text.Length: > 0 } cell ? cell : null;

    /// <summary>A text that must be there; empty, with a problem, where it is not, and without one where the header lacks the column.</summary>
    public string Text(string column, string expected)
    {
        CsvCell cell = At(column);
        if (cell.Text.Length == 0 && Has(column))
        {
            problems.Add(cell, column, "is empty", expected);
        }

        return cell.Text;
    }

    /// <summary>A quantity with its unit, where there is one.</summary>
    public T? Quantity<T>(string column, QuantityReader<T> read)
        where T : struct
    {
        if (Cell(column) is not { } cell)
        {
            return null;
        }

        if (read(cell.Text, out T value, out string? problem))
        {
            return value;
        }

        // The reader's sentence is: what stands there, what is wrong with it; what was expected.
        string said = problem[FileProblem.Quoted(cell.Text).Length..].TrimStart();
        int parts = said.IndexOf("; ", StringComparison.Ordinal);
        string rest = said[(parts + 2)..];
        problems.Add(cell, column, said[..parts], rest.StartsWith("expected ", StringComparison.Ordinal) ? rest["expected ".Length..] : rest["write ".Length..]);
        return null;
    }

    /// <summary>A number between bounds, where there is one.</summary>
    public double? Number(string column, double low, double high, bool whole = false, string? expected = null)
    {
        if (Cell(column) is not { } cell)
        {
            return null;
        }

        string? fault = NumberText.Fault(cell.Text, out double number)
            ?? (number < low || number > high ? "is out of range" : whole && number != Math.Floor(number) ? "is not whole" : null);
        if (fault is null)
        {
            return number;
        }

        problems.Add(cell, column, fault, expected ?? string.Create(CultureInfo.InvariantCulture, $"a {(whole ? "whole " : "")}number from {low} to {high}"));
        return null;
    }

    /// <summary>Tells of a combination of cells that makes no sense.</summary>
    public void Refuse(CsvCell? at, string field, string fault, string expected) => problems.Add(at ?? Start, field, fault, expected);

    /// <summary>Makes something of the row; what the library refuses is told as a problem of the row.</summary>
    public T? Make<T>(Func<T> make, string field)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException exception)
        {
            (string fault, string expected) = ProblemList.Said(exception);
            problems.Add(Start, field, fault, expected);
            return null;
        }
    }
}
