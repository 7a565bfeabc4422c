using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Where nitrogen and phosphorus of the feed went in one trial in houses: carcass, litter and air.</summary>
public static class FeedNutrients
{
    private const double NitrogenInCarcass = 0.51;
    private const double NitrogenInLitter = 0.31;
    private const double PhosphorusInCarcass = 0.35;

    /// <summary>Shares and source.</summary>
    public static ModelInfo Model { get; } = new(
        "feed-nutrients-houses",
        "Where feed nitrogen and phosphorus go, in houses",
        "excreted = F p/6.25 (1 - 0.51); litter = F p/6.25 x 0.31; phosphorus = F c (1 - 0.35)",
        [
            new("excreted", "nitrogen not kept in the carcass", "kg"),
            new("litter", "nitrogen found in the litter; 18 % of the feed's went off as ammonia", "kg"),
            new("phosphorus", "phosphorus excreted", "kg"),
            new("F", "feed eaten", "kg"),
            new("p", "protein of the feed, as a fraction", "-"),
            new("c", "phosphorus of the feed, as a fraction", "-"),
        ],
        [new Citation("Patterson1998", "Patterson P.H. et al. 1998. J. Appl. Poult. Res. 7:247-252", HowKnown.ReadInSource, "abstract: birds of 44 d, 2.01 kg and 57 d, 2.68 kg")],
        "One trial in houses on litter; birds on pasture leave on the ground what litter and air share here.",
        HowKnown.ReadInSource,
        [new ValidityRange("live weight", 2.01, 2.68, "kg"), new ValidityRange("age", 44, 57, "d")]);

    /// <summary>Nitrogen of the feed that the bird excretes: 49 %.</summary>
    /// <param name="feed">Feed eaten, 0 or more.</param>
    /// <param name="protein">Crude protein of the feed, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The feed is negative.</exception>
    public static Mass NitrogenExcreted(Mass feed, Probability protein) => Nitrogen(feed, protein, 1 - NitrogenInCarcass);

    /// <summary>Nitrogen of the feed that is found in litter: 31 %.</summary>
    /// <param name="feed">Feed eaten, 0 or more.</param>
    /// <param name="protein">Crude protein of the feed, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The feed is negative.</exception>
    public static Mass NitrogenInLitterOf(Mass feed, Probability protein) => Nitrogen(feed, protein, NitrogenInLitter);

    /// <summary>Phosphorus of the feed that the bird excretes: 65 %.</summary>
    /// <param name="feed">Feed eaten, 0 or more.</param>
    /// <param name="phosphorus">Total phosphorus of the feed, from its label or the mill, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The feed is negative.</exception>
    public static Mass PhosphorusExcreted(Mass feed, Probability phosphorus) =>
        Mass.FromKilograms(Require.NotNegative(feed.Kilograms, "kg", nameof(feed)) * phosphorus.Fraction * (1 - PhosphorusInCarcass));

    private static Mass Nitrogen(Mass feed, Probability protein, double share) =>
        Mass.FromKilograms(Require.NotNegative(feed.Kilograms, "kg", nameof(feed)) * protein.Fraction / 6.25 * share);
}
