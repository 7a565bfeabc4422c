namespace Poultry.Growth.Housing;

/// <summary>Whether a limit applies to a keeping: place, then way of keeping, house, figures, and what the keeper must vouch for. The first "no" decides.</summary>
internal static class LimitScope
{
    public static (Applicability Applies, string Why) Of(Limit limit, Keeping keeping, bool isChosen)
    {
        // Advice that is out of its own scope says so first: the rest of it is worth a look.
        bool isAdvice = limit.Instrument.Kind == InstrumentKind.Advice;
        IEnumerable<(Applicability, string)> place = InPlace(limit.Instrument, keeping, isChosen);
        List<(Applicability Applies, string Why)> doubts =
        [
            .. isAdvice ? [] : place,
            .. BySystem(limit, keeping),
            .. ByHouse(limit, keeping),
            .. limit.When.SelectMany(clause => ByFigure(clause, keeping)),
            .. Vouched(limit, keeping),
            .. isAdvice ? place : [],
        ];
        (Applicability Applies, string Why) against = doubts.Find(doubt => doubt.Applies == Applicability.No);
        return against.Why is not null ? against
            : doubts.Count > 0 ? (Applicability.Unknown, string.Join("; ", doubts.Select(doubt => doubt.Why)))
            : (Applicability.Yes, isChosen ? "chosen by name" : "within its scope");
    }

    private static IEnumerable<(Applicability, string)> InPlace(Instrument instrument, Keeping keeping, bool isChosen)
    {
        if (isChosen)
        {
            yield break;
        }

        if (instrument.Kind == InstrumentKind.Advice)
        {
            yield return (Applicability.No, "advice binds nobody");
        }
        else if (keeping.Place is null)
        {
            yield return (Applicability.Unknown, "the country is not stated");
        }
        else if (Places.IsPartOf(instrument.Jurisdiction, keeping.Place))
        {
            yield return (Applicability.Unknown, "it holds in " + instrument.Jurisdiction + " only, a part of " + keeping.Place);
        }
        else if (!Places.Within(keeping.Place, instrument.Jurisdiction))
        {
            yield return (Applicability.No, "it holds in " + instrument.Jurisdiction + ", not in " + keeping.Place);
        }
        else if (instrument.Kind == InstrumentKind.Scheme)
        {
            yield return (Applicability.Unknown, "it binds those who joined it");
        }
    }

    private static IEnumerable<(Applicability, string)> BySystem(Limit limit, Keeping keeping)
    {
        if (limit.Systems.Count + limit.UnsettledSystems.Count == 0)
        {
            yield break;
        }

        string reaches = "it is for " + string.Join(", ", limit.Systems.Select(LimitText.Words)) + " keeping";
        if (keeping.System is not { } system)
        {
            yield return (Applicability.Unknown, reaches + ", and how the birds are kept is not stated");
        }
        else if (limit.UnsettledSystems.Contains(system))
        {
            yield return (Applicability.Unknown, reaches + ", and whether it reaches " + LimitText.Words(system) + " keeping is not settled here: ask the authority");
        }
        else if (!limit.Systems.Contains(system))
        {
            yield return (Applicability.No, reaches + ", not " + LimitText.Words(system));
        }
    }

    private static IEnumerable<(Applicability, string)> ByHouse(Limit limit, Keeping keeping)
    {
        if (limit.House is { } house && keeping.House != house)
        {
            string word = house == HouseKind.Fixed ? "fixed" : "mobile";
            yield return keeping.House is null
                ? (Applicability.Unknown, "it is for " + word + " houses, and whether this one is moved is not stated")
                : (Applicability.No, "it is for " + word + " houses");
        }
    }

    private static IEnumerable<(Applicability, string)> ByFigure(LimitClause clause, Keeping keeping)
    {
        if (keeping.Of(clause.Subject) is not { } value)
        {
            yield return (Applicability.Unknown, "its scope is " + clause + ", which is not stated");
        }
        else if (!clause.Holds(value))
        {
            yield return clause.IsSettled ? (Applicability.No, clause.Missed(value)) : (Applicability.Unknown, clause.Missed(value) + " by a neighbouring text; this one was not read on it");
        }
    }

    private static IEnumerable<(Applicability, string)> Vouched(Limit limit, Keeping keeping)
    {
        if (limit.Requires is { } code && !keeping.Meets.Contains(code, StringComparer.OrdinalIgnoreCase))
        {
            yield return (Applicability.Unknown, "only if \"" + code + "\" is met, which is not stated");
        }
    }
}
