using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>The cumulative daily mortality rate by which EU law grants its highest stocking density: the sum of daily rates, which is not the share of the placed birds that died.</summary>
public sealed class CumulativeMortality
{
    private const double InterceptPercent = 1;
    private const double SlopePercentPerDay = 0.06;

    private CumulativeMortality(double percent) => Percent = percent;

    /// <summary>Definition, limit and source.</summary>
    public static ModelInfo Model { get; } = new(
        "cumulative-daily-mortality",
        "Cumulative daily mortality rate and its limit",
        "CDM = sum(100 dead/present); limit = 1 + 0.06 age, strictly below",
        [
            new("CDM", "cumulative daily mortality rate", "%"),
            new("dead", "birds that died in the house on a day, those killed for disease or other reasons included; not those taken out for slaughter", "birds"),
            new("present", "birds present that day", "birds"),
            new("limit", "what seven flocks in a row of a house must stay below for 42 kg/m2", "%"),
            new("age", "slaughter age", "d"),
        ],
        [new Citation("Directive2007/43", "Council Directive 2007/43/EC of 28 June 2007, consolidated 14 December 2019", HowKnown.ReadInSource, "Annex V, read in the French and German acts too")],
        "Exact. " + LimitVerdict.NotLegalAdvice,
        HowKnown.ReadInSource);

    /// <summary>The sum of daily rates, in %.</summary>
    public double Percent { get; }

    /// <summary>Adds up daily rates.</summary>
    /// <param name="days">For each day the birds present, 1 or more, and those of them that died; days without a death may be left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">No bird was present, or more died than were.</exception>
    public static CumulativeMortality Of(IEnumerable<(int Present, int Dead)> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        return new(days.Sum(day => 100.0 * Require.Between(day.Dead, 0, day.Present, "birds", nameof(days)) / Require.AtLeast(day.Present, 1, nameof(days))));
    }

    /// <summary>The limit at a slaughter age, in %.</summary>
    /// <param name="slaughterAge">Any: 1 % and 0.06 % more for each day.</param>
    public static double LimitPercent(Age slaughterAge) => InterceptPercent + (SlopePercentPerDay * slaughterAge.Days);

    /// <summary>Whether the flock stays below the limit: a rate at the limit does not.</summary>
    /// <param name="slaughterAge">Any.</param>
    public bool IsBelowLimit(Age slaughterAge) => LimitText.Holds(LimitComparison.Below, Percent, LimitPercent(slaughterAge));

    /// <summary>As in <c>2.41 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:0.##} %");
}
