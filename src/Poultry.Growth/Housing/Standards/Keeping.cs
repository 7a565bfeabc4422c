namespace Poultry.Growth.Housing;

/// <summary>Where and how birds are kept, and what is known of them in figures: what decides which limits apply. There is no default place.</summary>
public sealed class Keeping
{
    /// <summary>Country, or the part of it that has its own rules, as in <c>Germany</c>, <c>England</c>, <c>California</c>; null while unknown: then no law can be said to apply.</summary>
    public string? Place { get; init; }

    /// <summary>How the birds are kept; null while unknown.</summary>
    public RearingSystem? System { get; init; }

    /// <summary>Whether the house stays where it is; null while unknown.</summary>
    public HouseKind? House { get; init; }

    /// <summary>Conditions that the keeper vouches for, by the codes of <see cref="Limit.Requires"/>: <c>annex-ii</c>.</summary>
    public IReadOnlyList<string> Meets { get; init; } = [];

    /// <summary>Names of instruments that the keeper holds to by choice: schemes joined, advice followed, laws of elsewhere. Their own scope still decides.</summary>
    public IReadOnlyList<string> Chosen { get; init; } = [];

    /// <summary>What is known in figures; of two of one kind the later counts.</summary>
    public IReadOnlyList<Measured> Measured { get; init; } = [];

    /// <summary>The same keeping with more figures.</summary>
    public Keeping With(params IReadOnlyList<Measured> more) =>
        new() { Place = Place, System = System, House = House, Meets = Meets, Chosen = Chosen, Measured = [.. Measured, .. more] };

    /// <summary>Place and system, as in <c>Germany, free range, mobile house</c>; what is unknown is named.</summary>
    public override string ToString() =>
        (Place ?? "place unknown") + (System is { } system ? ", " + LimitText.Words(system) : ", system unknown") + House switch { HouseKind.Fixed => ", fixed house", HouseKind.Mobile => ", mobile house", _ => "" };

    /// <summary>The figure of a subject; null where it is unknown.</summary>
    internal double? Of(LimitSubject subject) => Measured.LastOrDefault(known => known.Subject == subject)?.Value;
}
