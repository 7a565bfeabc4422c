using System.Collections.Immutable;

namespace Poultry.Growth.Housing;

/// <summary>Which places lie within which jurisdictions.</summary>
internal static class Places
{
    public const string Everywhere = "general";

    private static readonly ImmutableArray<string> EuropeanUnion =
    [
        "Austria", "Belgium", "Bulgaria", "Croatia", "Cyprus", "Czechia", "Denmark", "Estonia", "Finland", "France", "Germany", "Greece", "Hungary", "Ireland", "Italy", "Latvia",
        "Lithuania", "Luxembourg", "Malta", "Netherlands", "Poland", "Portugal", "Romania", "Slovakia", "Slovenia", "Spain", "Sweden",
    ];

    private static readonly ImmutableArray<(string Part, string Whole)> Parts =
    [
        .. EuropeanUnion.Select(country => (country, "EU")),
        ("England", "Great Britain"), ("Scotland", "Great Britain"), ("Wales", "Great Britain"), ("Great Britain", "United Kingdom"), ("Northern Ireland", "United Kingdom"),
        ("South Australia", "Australia"), ("California", "USA"), ("Quebec", "Canada"), ("EU", "Europe"), ("United Kingdom", "Europe"), ("Switzerland", "Europe"),
    ];

    /// <summary>Whether rules of the jurisdiction reach the place.</summary>
    public static bool Within(string place, string jurisdiction)
    {
        for (string? at = place; at is not null; at = Parts.FirstOrDefault(part => Same(part.Part, at)).Whole)
        {
            if (Same(at, jurisdiction))
            {
                return true;
            }
        }

        return Same(jurisdiction, Everywhere);
    }

    /// <summary>Whether the jurisdiction is a part of the place: asked for a whole country, a rule of one of its parts may or may not hold.</summary>
    public static bool IsPartOf(string jurisdiction, string place) => !Same(jurisdiction, place) && Within(jurisdiction, place);

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
