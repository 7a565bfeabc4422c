using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>A part that comes off beside the carcass, as a share of the live weight at killing: giblets, feet, blood, feathers.</summary>
/// <remarks>
/// No shares of giblets, feet, heads, feathers or blood come with the library: none was to be had from a source read. Weigh them, or leave them in
/// the line "other, by difference". Abdominal fat is known, but mostly counts as carcass already.
/// </remarks>
public sealed class NamedPart
{
    private NamedPart(string name, double share, Citation source) => (Name, ShareFraction, Source) = (name, share, source);

    /// <summary>Abdominal fat as published: four groups of one trial.</summary>
    public static ModelInfo AbdominalFatModel { get; } = new(
        "abdominal-fat",
        "Abdominal fat of broilers",
        "m = q W",
        [
            new ModelSymbol("m", "abdominal fat", "g"),
            new ModelSymbol("q", "males 16.0 (42 d), 10.8 (56 d); females 15.7 (42 d), 18.8 (56 d)", "g/kg"),
            new ModelSymbol("W", "live weight", "kg"),
        ],
        [
            new Citation("Gous1990", "Gous R.M. et al. 1990. Br. Poult. Sci. 31:495-505", HowKnown.ReadInSource, "abstract: live weights 1.93, 2.43 kg (males), 1.60, 2.15 kg (females)"),
            new Citation("BackskinFat", "Prediction of fat and fat-free live weight in broiler chickens using backskin fat, abdominal fat and live body weight", HowKnown.ReadInSource, "abstract: 21.8 g/kg (males, 2372 g) and 28.2 g/kg (females, 1913 g) at 59 d"),
        ],
        "Two studies contradict each other: per weight it falls with age in the males of one and rises in its females, and the other has far more. Strain and diet matter.",
        HowKnown.ReadInSource,
        [new ValidityRange("age", 42, 56, "d"), new ValidityRange("live weight", 1.6, 2.43, "kg")]);

    /// <summary>Abdominal fat of males and females at 42 and 56 d.</summary>
    public static IReadOnlyList<(Sex Sex, Age Age, NamedPart Part)> AbdominalFat { get; } =
    [
        (Sex.Male, Age.FromDays(42), Fat(16.0)), (Sex.Male, Age.FromDays(56), Fat(10.8)), (Sex.Female, Age.FromDays(42), Fat(15.7)), (Sex.Female, Age.FromDays(56), Fat(18.8)),
    ];

    /// <summary>As the trade calls it.</summary>
    public string Name { get; }

    /// <summary>Of the live weight at killing.</summary>
    public Probability ShareOfLive => Probability.FromFraction(ShareFraction);

    /// <summary>Who says so.</summary>
    public Citation Source { get; }

    internal double ShareFraction { get; }

    /// <summary>A part.</summary>
    /// <param name="name">As the trade calls it.</param>
    /// <param name="shareOfLive">Of the live weight at killing; above 0, at most 60 %.</param>
    /// <param name="source">Who says so; one's own records where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of its range.</exception>
    public static NamedPart Of(string name, Probability shareOfLive, Citation? source = null)
    {
        Require.Positive(shareOfLive.Fraction, "", nameof(shareOfLive));
        return new(Require.Text(name), Require.Between(shareOfLive.Fraction, 0, 0.6, "", nameof(shareOfLive)), source ?? DressingSources.OwnRecords.Citations[0]);
    }

    /// <summary>What it weighs in birds of a live weight.</summary>
    /// <param name="live">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public Mass Of(Mass live) => Mass.FromKilograms(ShareFraction * Require.Positive(live.Kilograms, "kg", nameof(live)));

    /// <summary>As in <c>giblets: 4 % of live weight</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name}: {100 * ShareFraction:0.##} % of live weight");

    private static NamedPart Fat(double gramsPerKilogram) => new("abdominal fat", gramsPerKilogram / 1000, AbdominalFatModel.Citations[0]);
}
