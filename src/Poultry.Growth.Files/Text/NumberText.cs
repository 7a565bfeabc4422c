using System.Buffers;
using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Plain decimal numbers: digits with a point. No exponent, no thousands separator, nothing of the reader's culture.</summary>
internal static class NumberText
{
    /// <summary>More of anything is a slip of the keys, and its conversions would leave what a double holds.</summary>
    private const double Most = 1e15;

    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789");
    private static readonly SearchValues<char> LikeDigits = SearchValues.Create("OolI");

    /// <summary>What a number is made of, decimal commas included.</summary>
    internal static readonly SearchValues<char> NumberLetters = SearchValues.Create("0123456789.,+-");

    /// <summary>As in <c>1 problem</c> or <c>3 problems</c>.</summary>
    public static string Counted(int count, string one) => string.Create(CultureInfo.InvariantCulture, $"{count} {one}") + (count == 1 ? "" : "s");

    /// <summary>Reads a number, or says what is wrong with it as the end of a sentence.</summary>
    public static string? Fault(ReadOnlySpan<char> text, out double number)
    {
        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (double.TryParse(text, Plain, CultureInfo.InvariantCulture, out number) && text.ContainsAny(Digits))
        {
            return Math.Abs(number) <= Most ? null : "is too large";
        }

        number = double.NaN;
        return text.IsEmpty ? "is empty"
            : StartsNotFinite(text) ? "is not a finite number"
            : HasDecimalComma(text) ? "has a decimal comma"
            : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? "has an exponent"
            : text[0] is (>= '0' and <= '9') && char.IsAsciiLetter(text[^1]) && !text[1..].ContainsAny(LikeDigits) ? "carries a unit"
            : "is not a number";
    }

    /// <summary>NaN, infinity and their abbreviations, which programs write and no scale shows.</summary>
    public static bool StartsNotFinite(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> name = text.TrimStart("+-");
        return name.StartsWith("nan", StringComparison.OrdinalIgnoreCase) || name.StartsWith("inf", StringComparison.OrdinalIgnoreCase) || name.StartsWith("∞");
    }

    private static bool HasDecimalComma(ReadOnlySpan<char> text) =>
        text.Contains(',') && !text.ContainsAnyExcept(NumberLetters) && text.ContainsAny(Digits);
}
