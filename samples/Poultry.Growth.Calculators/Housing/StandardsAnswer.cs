using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The limits asked for.</summary>
internal sealed class StandardsAnswer
{
    private StandardsAnswer(IReadOnlyList<Limit> limits) => Limits = limits;

    public IReadOnlyList<Limit> Limits { get; }

    public IReadOnlyList<Caution> Cautions => Limits.Any(limit => limit.IsUnverified) ? [LimitsTable.NotLegalAdvice, LimitsTable.Unverified] : [LimitsTable.NotLegalAdvice];

    public IReadOnlyList<Citation> Sources => LimitsTable.Texts(Limits);

    public static StandardsAnswer To(string? place, string? about, HowKnown? howKnown) => new(
    [
        .. (place is null ? LimitBook.Shipped : LimitBook.Of(place)).Where(limit =>
            (howKnown is null || limit.HowKnown == howKnown)
            && (about is null || (limit.Quantity + " " + limit.Scope + " " + limit.Instrument.Name).Contains(about, StringComparison.OrdinalIgnoreCase))),
    ]);
}
