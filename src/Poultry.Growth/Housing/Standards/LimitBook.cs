namespace Poultry.Growth.Housing;

/// <summary>The limits that come with the library.</summary>
public static partial class LimitBook
{
    /// <summary>Every limit, in the order of the table on docs/standards.md. Those from memory are among them, marked, and bind nobody unasked.</summary>
    public static IReadOnlyList<Limit> Shipped { get; } = Array.AsReadOnly(Rows());

    /// <summary>The shipped limits on some subjects.</summary>
    /// <param name="subjects">One or more.</param>
    public static IReadOnlyList<Limit> On(params IReadOnlyList<LimitSubject> subjects)
    {
        ArgumentNullException.ThrowIfNull(subjects);
        return [.. Shipped.Where(limit => subjects.Contains(limit.Subject))];
    }

    /// <summary>The shipped limits that reach a place, and those of its parts.</summary>
    /// <param name="place">Country, or the part of it that has its own rules.</param>
    public static IReadOnlyList<Limit> Of(string place)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        return [.. Shipped.Where(limit => Reaches(limit, place))];
    }

    /// <summary>Whether a limit reaches a place, or a part of it.</summary>
    /// <param name="limit">Any limit.</param>
    /// <param name="place">Country, or the part of it that has its own rules.</param>
    public static bool Reaches(Limit limit, string place)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return Places.Within(place, limit.Instrument.Jurisdiction) || Places.IsPartOf(limit.Instrument.Jurisdiction, place);
    }
}
