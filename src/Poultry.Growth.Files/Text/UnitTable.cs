using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>The units of one kind of quantity, and how its text is read: a number, then a unit, a space between them or not.</summary>
/// <param name="what">As in <c>a weight</c>.</param>
/// <param name="example">As in <c>2.6kg or 5lb11oz</c>.</param>
/// <param name="units">What may follow the number.</param>
/// <param name="smallerIn">Where two units may follow each other (5lb11oz): how many of the smaller make one of the larger.</param>
/// <param name="belowZero">Whether a number below 0 makes sense.</param>
internal sealed class UnitTable(
    string what, string example, UnitTable.Unit[] units, (string Larger, string Smaller, int Count)? smallerIn = null, bool belowZero = false)
{
    /// <summary>The longest first, so that m2 is not taken for m.</summary>
    private readonly Unit[] byLength = [.. units.OrderByDescending(unit => unit.Symbol.Length)];

    private string Expected => "expected " + what + " with " + Accepted + ", as in " + example;

    private string Accepted => units.Length == 1
        ? units[0].Symbol
        : string.Join(", ", units[..^1].Select(unit => unit.Symbol)) + " or " + units[^1].Symbol;

    /// <summary>Reads a quantity, or says in one line what is wrong and what was expected.</summary>
    public bool TryRead<T>(ReadOnlySpan<char> text, Func<double, T> make, out T value, [NotNullWhen(false)] out string? problem)
        where T : struct
    {
        problem = Problem(text, out double number);
        value = problem is null ? make(number) : default;
        return problem is null;
    }

    /// <summary>Reads the number in the unit that is returned, or says in one line what is wrong and what was expected.</summary>
    private string? Problem(ReadOnlySpan<char> text, out double value)
    {
        value = double.NaN;
        ReadOnlySpan<char> rest = text.Trim();
        string? fault = Part(ref rest, out double number, out string symbol);
        if (fault is not null)
        {
            return Quoted(text) + " " + fault + "; " + (fault == "has a decimal comma" ? "write " + Quoted(text.Trim().ToString().Replace(',', '.')) : Expected);
        }

        if (rest.IsEmpty)
        {
            Unit unit = Array.Find(units, unit => unit.Symbol == symbol);
            value = (number - unit.Zero) * unit.Size;
            return null;
        }

        if (smallerIn is not var (larger, smaller, count) || symbol != larger)
        {
            return Quoted(text) + " goes on after its unit; " + Expected;
        }

        fault = Part(ref rest, out double small, out string smallSymbol);
        bool whole = number == Math.Floor(number);
        if (fault is not null || smallSymbol != smaller || !rest.IsEmpty || !whole || small >= count)
        {
            return Quoted(text) + " is not whole " + larger + " and " + smaller
                + string.Create(CultureInfo.InvariantCulture, $" below {count}; ") + Expected;
        }

        value = (number * Size(larger)) + (small * Size(smaller));
        return null;
    }

    private static string Quoted(ReadOnlySpan<char> text) => FileProblem.Quoted(text.ToString());

    /// <summary>Takes a number and its unit off the front of the text.</summary>
    private string? Part(ref ReadOnlySpan<char> rest, out double number, out string symbol)
    {
        (number, symbol) = (double.NaN, "");
        int length = rest.IndexOfAnyExcept(NumberText.NumberLetters);
        ReadOnlySpan<char> digits = length < 0 ? rest : rest[..length];
        if (digits.IsEmpty)
        {
            return rest.IsEmpty ? "is empty" : NumberText.StartsNotFinite(rest) ? "is not a finite number" : "does not start with a number";
        }

        if (NumberText.Fault(digits, out number) is { } fault)
        {
            return fault;
        }

        if (number < 0 && !belowZero)
        {
            return "is below 0";
        }

        rest = rest[digits.Length..].TrimStart();
        if (rest.IsEmpty)
        {
            return "has no unit";
        }

        if (rest[0] is 'e' or 'E' && rest.Length > 1 && (char.IsAsciiDigit(rest[1]) || rest[1] is '-' or '+'))
        {
            return "has an exponent";
        }

        foreach (Unit unit in byLength)
        {
            if (rest.StartsWith(unit.Symbol, StringComparison.OrdinalIgnoreCase) && !GoesOn(rest[unit.Symbol.Length..]))
            {
                symbol = unit.Symbol;
                rest = rest[unit.Symbol.Length..].TrimStart();
                return null;
            }
        }

        return "has an unknown unit";
    }

    /// <summary>Whether what follows belongs to the unit's word.</summary>
    private static bool GoesOn(ReadOnlySpan<char> rest) => rest is [var next, ..] && (char.IsLetter(next) || next is '/' or '%' or '^' or '_' or '*');

    private double Size(string symbol) => Array.Find(units, unit => unit.Symbol == symbol).Size;

    /// <summary>A unit: one of it is <paramref name="Size"/> of what the reader returns, counted from <paramref name="Zero"/> of it.</summary>
    internal readonly record struct Unit(string Symbol, double Size, double Zero = 0);
}
