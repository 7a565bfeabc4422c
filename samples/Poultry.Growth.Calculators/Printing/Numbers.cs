using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Printing;

/// <summary>Numbers as text, with the digits that are known.</summary>
internal static class Numbers
{
    /// <summary>With so many digits behind the point; what rounds to nothing has no sign.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString(string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture);
        return text.AsSpan().ContainsAnyInRange('1', '9') ? text : text.TrimStart('-');
    }

    public static string Whole(double value) => Fixed(value, 0);

    /// <summary>A bound; one that the data do not give is open.</summary>
    public static string Bound(double? value, int decimals) => value is { } bound ? Fixed(bound, decimals) : "open";

    /// <summary>Money without cents; a bound that the data do not give is open.</summary>
    public static string Amount(Money? money) => Bound(money?.Amount, 0);

    /// <summary>A fraction in percent.</summary>
    public static string Percent(double fraction, int decimals = 0) => Fixed(100 * fraction, decimals);

    public static string Signed(double value, int decimals = 1)
    {
        string digits = decimals == 0 ? "0" : "0." + new string('0', decimals);
        return value.ToString("+" + digits + ";-" + digits + ";" + digits, CultureInfo.InvariantCulture);
    }

    public static string Date(DateOnly? date) => date is { } day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "-";

    /// <summary>An age in days without its unit.</summary>
    public static string Days(Age age) => age.Days.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Digits behind the point so that a doubt of this size shows two figures.</summary>
    public static int Decimals(double doubt, int most) => doubt > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(doubt)), 0, most) : most;

    /// <summary>How a source is known, in words.</summary>
    public static string Words(HowKnown howKnown) => howKnown switch
    {
        HowKnown.ReadInSource => "read in the source",
        HowKnown.Derived => "derived",
        HowKnown.Secondary => "secondary",
        HowKnown.Memory => "from memory, unverified",
        HowKnown.CommonPractice => "common practice, no source",
        _ => "assumption",
    };
}
