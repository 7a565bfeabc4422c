using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The chance that a lesion of those found was made around one day. Neighbouring days are not told apart: read them together.</summary>
public sealed class DatedDay
{
    internal DatedDay(int daysBefore, DateOnly date, Probability share) => (DaysBefore, Date, Share) = (daysBefore, date, share);

    /// <summary>Days before killing, 1 to 14; each holds half a day on either side, the first from 0.5 d, the last up to 14 d.</summary>
    public int DaysBefore { get; }

    /// <summary>The date of that day.</summary>
    public DateOnly Date { get; }

    /// <summary>The chance, for one of the lesions found.</summary>
    public Probability Share { get; }

    /// <summary>As in <c>3 d before killing (2027-06-05): 12 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{DaysBefore} d before killing ({Date:yyyy-MM-dd}): {Share}");
}
