using System.Globalization;

namespace Poultry.Growth.Calculators.Report;

/// <summary>Days as a reader says them, in every culture.</summary>
internal static class ReportDates
{
    /// <summary>As in <c>8 Jun</c>: where there is little room.</summary>
    public static string Short(DateOnly date) => date.ToString("d MMM", CultureInfo.InvariantCulture);

    /// <summary>As in <c>Tuesday, 2027-06-08</c>: a day that is agreed with others.</summary>
    public static string Full(DateOnly date) => date.ToString("dddd, yyyy-MM-dd", CultureInfo.InvariantCulture);
}
