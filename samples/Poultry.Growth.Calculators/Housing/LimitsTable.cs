using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Limits as a table: those that apply, those of which it is unknown, and of the others those worth a look.</summary>
internal static class LimitsTable
{
    public static Caution NotLegalAdvice { get; } = new(
        "not-legal-advice", "Limits are our reading of the texts named, in the editions named. " + LimitVerdict.NotLegalAdvice + " Your authority, inspector, plant and local code have the last word.");

    public static Caution Unverified { get; } = new("unverified-limits", "Figures marked unverified are recalled and nobody has checked them: they bind nobody, and are no ground to act on.");

    /// <summary>What to read with some verdicts.</summary>
    public static IReadOnlyList<Caution> Cautions(IEnumerable<LimitVerdict> verdicts) =>
        verdicts.Any(verdict => verdict.Limit.IsUnverified) ? [NotLegalAdvice, Unverified] : [NotLegalAdvice];

    /// <summary>The texts of the limits that are shown, as sources.</summary>
    public static IReadOnlyList<Citation> Sources(IReadOnlyList<LimitVerdict> verdicts, Keeping keeping) => Texts(Shown(verdicts, keeping).Select(verdict => verdict.Limit));

    /// <summary>Each text once, known as its weakest figure is.</summary>
    public static IReadOnlyList<Citation> Texts(IEnumerable<Limit> limits) =>
    [
        .. limits.GroupBy(limit => limit.Instrument).Select(text => new Citation(
            text.Key.Name, text.Key.ToString(), text.Max(limit => limit.HowKnown), text.Select(limit => limit.Source).FirstOrDefault(source => source is not null))),
    ];

    /// <param name="page">Where to.</param>
    /// <param name="title">As in <c>Limits on space</c>.</param>
    /// <param name="verdicts">Any number.</param>
    /// <param name="keeping">Where and how.</param>
    public static void Print(Page page, string title, IReadOnlyList<LimitVerdict> verdicts, Keeping keeping)
    {
        LimitVerdict[] shown = [.. Shown(verdicts, keeping).OrderBy(verdict => verdict.Applies == Applicability.Yes ? 0 : verdict.Applies == Applicability.Unknown ? 1 : 2)];
        page.Title(title);
        if (shown.Length == 0)
        {
            page.Line(keeping.Place is null ? "None: give --country to see which laws apply, or --standard to hold to one." : "None is known here. That does not mean that there is none: ask the authority.");
            return;
        }

        HousingUnits units = HousingUnits.Of(page.Units);
        page.Table(
            ["<text", "<what", "<limit", "<here", "<applies", "<met", "<how known"],
            shown.Select(verdict => (IReadOnlyList<string>)
            [
                Short(verdict.Limit.Instrument),
                Codes.Of(verdict.Limit.Subject).Replace('-', ' '),
                units.Of(verdict.Limit),
                verdict.Value is { } value ? units.Figure(verdict.Limit.Subject, value, Numbers.Fixed(value, 1) + " " + LimitUnits.Of(verdict.Limit.Subject)) : "-",
                Applies(verdict),
                verdict.Met is not { } met ? "-" : met ? "yes" : "no",
                verdict.Limit.IsUnverified ? "unverified" : Numbers.Words(verdict.Limit.HowKnown),
            ]));
        foreach (string why in shown.Where(verdict => verdict.Applies != Applicability.Yes).Select(verdict => Short(verdict.Limit.Instrument) + ", " + units.Of(verdict.Limit) + ": " + Reason(verdict) + (verdict.Limit.IsUnverified ? " (unverified)" : "")).Distinct())
        {
            page.Line("  " + why);
        }

        if (shown.Length < verdicts.Count)
        {
            page.Line("  " + Numbers.Whole(verdicts.Count - shown.Length) + " more, of other places, kinds of keeping or weights, do not apply: they are in the JSON, and the command standards lists them.");
        }
    }

    /// <summary>
    /// Without a country every law of the world is unknown, and only what was chosen is shown, and advice to compare with. What does not apply is shown where the flock is the reason and not the place.
    /// </summary>
    private static IEnumerable<LimitVerdict> Shown(IReadOnlyList<LimitVerdict> verdicts, Keeping keeping) => verdicts.Where(verdict =>
        verdict.IsChosen || verdict.Applies == Applicability.Yes || IsAdviceWorthALook(verdict)
        || (keeping.Place is not null && (verdict.Applies == Applicability.Unknown || verdict.Why.StartsWith("flock size", StringComparison.Ordinal)) && LimitBook.Reaches(verdict.Limit, keeping.Place)));

    private static bool IsAdviceWorthALook(LimitVerdict verdict) =>
        verdict.Limit.Instrument.Kind == InstrumentKind.Advice && verdict.Why.StartsWith("advice", StringComparison.Ordinal);

    private static string Reason(LimitVerdict verdict) =>
        verdict.Why + (verdict.Limit.Instrument.Kind == InstrumentKind.Advice && verdict.Limit.Scope.Length > 0 ? "; " + verdict.Limit.Scope : "");

    private static string Applies(LimitVerdict verdict) => verdict.Applies switch
    {
        Applicability.Yes when verdict.IsSuperseded => "yes, step passed",
        Applicability.Yes => "yes",
        Applicability.No => "no",
        _ => "unknown",
    };

    private static string Short(Instrument instrument) => instrument.Jurisdiction + ": " + instrument.Name;
}
