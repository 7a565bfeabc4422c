using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Fresh manure from feed, by one of three rules that disagree because their moisture does: name it, and do not mix them.</summary>
public sealed class FreshManure
{
    private readonly double perFeed;

    private FreshManure(string moisture, double perFeed, ModelInfo model) => (Moisture, this.perFeed, Model) = (moisture, perFeed, model);

    /// <summary>0.5 kg of 75 % water for a kg of feed.</summary>
    public static FreshManure RitzMerka { get; } = new("75 % water", 0.5, Describe(
        "fresh-manure-half", "Fresh manure, half of the feed", "manure = 0.5 feed", "RitzMerka", "Ritz and Merka, University of Georgia", HowKnown.Secondary, "at 75 % moisture"));

    /// <summary>115 % of dry feed, moisture not stated.</summary>
    public static FreshManure OhioState { get; } = new("moisture not stated, of dry feed", 1.15, Describe(
        "fresh-manure-ohio", "Fresh manure, 115 % of dry feed", "manure = 1.15 feed", "OhioB804", "Ohio State University Extension, bulletin 804", HowKnown.ReadInSource, "100 six-week broilers give 14 to 16 kg (30 to 35 lb) a day"));

    /// <summary>As much as the feed, at 80 % water.</summary>
    public static FreshManure Handbook1988 { get; } = new("80 % water", 1, Describe(
        "fresh-manure-equal", "Fresh manure, equal to the feed", "manure = feed", "PoultryHandbook1988", "A poultry handbook of 1988", HowKnown.Secondary, "equal to feed weight at 80 % water"));

    /// <summary>All three rules.</summary>
    public static IReadOnlyList<FreshManure> All { get; } = Array.AsReadOnly([RitzMerka, Handbook1988, OhioState]);

    /// <summary>The moisture that the rule is about.</summary>
    public string Moisture { get; }

    /// <summary>Rule and source.</summary>
    public ModelInfo Model { get; }

    /// <summary>Fresh manure from feed eaten.</summary>
    /// <param name="feed">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Mass From(Mass feed) => Mass.FromKilograms(perFeed * Require.NotNegative(feed.Kilograms, "kg", nameof(feed)));

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Describe(string id, string name, string equation, string key, string reference, HowKnown howKnown, string locator) => new(
        id,
        name,
        equation,
        [new("manure", "fresh manure", "kg"), new("feed", "feed eaten", "kg")],
        [new Citation(key, reference, howKnown, locator)],
        "Three rules give 1.9, 3.8 and 4.4 kg for the same feed of 3.82 kg: moisture and age differ.",
        howKnown);
}
