namespace Poultry.Growth.Housing;

/// <summary>One limit held against one keeping: whether it applies, whether it binds, and whether it is met.</summary>
public sealed class LimitVerdict
{
    /// <summary>What every verdict says.</summary>
    public const string NotLegalAdvice = "Not legal advice; check the current text.";

    private LimitVerdict(Limit limit, Applicability applies, string why, double? value, bool isChosen, bool isSuperseded)
    {
        (Limit, Applies, Why, Value, IsChosen, IsSuperseded) = (limit, applies, why, value, isChosen, isSuperseded);
    }

    /// <summary>The limit.</summary>
    public Limit Limit { get; }

    /// <summary>Whether it applies.</summary>
    public Applicability Applies { get; }

    /// <summary>The clause that decides whether it applies, or what is missing to tell.</summary>
    public string Why { get; }

    /// <summary>The keeping's figure in the unit of the limit's subject; null where it is unknown.</summary>
    public double? Value { get; }

    /// <summary>Whether the keeper named the instrument as one to hold to.</summary>
    public bool IsChosen { get; }

    /// <summary>Whether a further step of the same text, whose conditions are met, allows more.</summary>
    public bool IsSuperseded { get; }

    /// <summary>Whether the limit counts: it applies, no further step replaces it, and it was read somewhere or was chosen by name. A limit from memory binds nobody unasked.</summary>
    public bool Binds => Applies == Applicability.Yes && !IsSuperseded && (!Limit.IsUnverified || IsChosen);

    /// <summary>Whether the figure keeps the limit, applying or not; null where there is no figure.</summary>
    public bool? Met => Value is { } value && Limit.Value is { } figure ? LimitText.Holds(Limit.Comparison, value, figure) : null;

    /// <summary>The verdict in sentences: the limit, whether it applies and why, whether it is met, and what it is not.</summary>
    public string Text => Limit + ". " + ApplicationText + MeasuredText + (Limit.IsUnverified ? " The figure is unverified." : "") + " " + NotLegalAdvice;

    private string ApplicationText => (Applies, IsSuperseded) switch
    {
        (Applicability.Yes, true) => "Applies, and a further step of the same text allows more.",
        (Applicability.Yes, _) => "Applies: " + Why + ".",
        (Applicability.No, _) => "Does not apply: " + Why + ".",
        _ => "Whether it applies is unknown: " + Why + ".",
    };

    private string MeasuredText => Value is { } value && Met is { } met ? " Here: " + LimitText.Figure(Limit.Subject, value) + (met ? ", met." : ", not met.") : "";

    /// <summary>The text.</summary>
    public override string ToString() => Text;

    /// <summary>Holds limits against a keeping, the steps of one text together.</summary>
    /// <param name="limits">Any limits; those that are judged by nothing known are told with their scope.</param>
    /// <param name="keeping">Where and how the birds are kept.</param>
    /// <returns>One verdict a limit, in the same order.</returns>
    public static IReadOnlyList<LimitVerdict> Of(IEnumerable<Limit> limits, Keeping keeping)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(keeping);
        (Limit Limit, bool IsChosen, Applicability Applies, string Why)[] judged =
        [
            .. from limit in limits
               let isChosen = keeping.Chosen.Contains(limit.Instrument.Name, StringComparer.OrdinalIgnoreCase)
               let scope = LimitScope.Of(limit, keeping, isChosen)
               select (limit, isChosen, scope.Applies, scope.Why),
        ];
        return
        [
            .. judged.Select(one => new LimitVerdict(
                one.Limit,
                one.Applies,
                one.Why,
                keeping.Of(one.Limit.Subject),
                one.IsChosen,
                Array.Exists(judged, other => other.Applies == Applicability.Yes && IsFurtherStep(one.Limit, one.IsChosen, other.Limit)))),
        ];
    }

    /// <summary>A step from memory, which binds nobody unasked, does not stand in place of one that was read.</summary>
    private static bool IsFurtherStep(Limit limit, bool isChosen, Limit other) =>
        (isChosen || !other.IsUnverified) && limit.Step > 0 && other.Step > limit.Step && other.Subject == limit.Subject && other.Instrument == limit.Instrument;
}
