using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>How many birds go into a crate, by one standard, always rounded down.</summary>
/// <remarks>
/// Classes step the wrong way at their edges. Of unequal birds the count by the text is the smallest over the weights present (5 to 95 % of the birds); the count advised, beside it,
/// never puts more heavier birds into a crate than lighter ones.
/// </remarks>
public sealed class CrateLoading
{
    private CrateLoading(CrateStandard standard, Area crate, Mass weight, Area byStandard, Area advised, Length? height)
    {
        (Standard, Crate, Weight, HeightNeeded) = (standard, crate, weight, height);
        BirdsByStandard = Whole(crate, byStandard);
        Birds = Math.Min(BirdsByStandard, Whole(crate, advised));
    }

    /// <summary>Heat kills on the road.</summary>
    public static Caution Heat { get; } = new(
        "transport-heat",
        "Birds die in crates on hot, still days: load at night or in the cool, leave air between crates, do not stop, and above the temperature that your plant or haulier names load fewer or not at all. "
            + "Ask your vet and your plant; law on transport differs by place.");

    /// <summary>Why the two counts may differ.</summary>
    public static Caution WrongWayStep { get; } = new(
        "crate-class-step",
        "By the text alone more birds of this weight go into a crate than of birds a little lighter, or than the lighter and heavier ones of this flock allow. The smaller count is advised.");

    /// <summary>The standard.</summary>
    public CrateStandard Standard { get; }

    /// <summary>Floor of the crate.</summary>
    public Area Crate { get; }

    /// <summary>Mean live weight of the birds.</summary>
    public Mass Weight { get; }

    /// <summary>Birds to a crate by the text, for unequal birds the smallest count over their weights.</summary>
    public int BirdsByStandard { get; }

    /// <summary>Birds to a crate as advised: never more than by the text.</summary>
    public int Birds { get; }

    /// <summary>Least inner height for the heaviest birds; null where the text says nothing.</summary>
    public Length? HeightNeeded { get; }

    /// <summary>Floor of each bird at the advised count; null where no bird fits.</summary>
    public Area? AreaPerBird => Birds > 0 ? Area.FromSquareMeters(Crate.SquareMeters / Birds) : null;

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions => Birds < BirdsByStandard ? [Heat, WrongWayStep] : [Heat];

    /// <summary>Birds all of one weight.</summary>
    /// <param name="standard">Which one: there is no default.</param>
    /// <param name="crate">Floor of the crate, above 0.</param>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static CrateLoading Of(CrateStandard standard, Area crate, Mass weight)
    {
        ArgumentNullException.ThrowIfNull(standard);
        Require.Positive(crate.SquareMeters, "m2", nameof(crate));
        return new(standard, crate, weight, standard.AreaPerBird(weight), standard.AdvisedAreaPerBird(weight), standard.HeightFor(weight));
    }

    /// <summary>Unequal birds: the smallest count over the weights between 5 and 95 %.</summary>
    /// <param name="standard">Which one: there is no default.</param>
    /// <param name="crate">Floor of the crate, above 0.</param>
    /// <param name="weights">The live weights of the flock.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static CrateLoading Of(CrateStandard standard, Area crate, WeightDistribution weights)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(weights);
        Require.Positive(crate.SquareMeters, "m2", nameof(crate));
        (Mass light, Mass heavy) = (weights.WeightAt(Probability.FromPercent(5)), weights.WeightAt(Probability.FromPercent(95)));
        return new(standard, crate, weights.Mean, standard.LargestBetween(light, heavy), standard.AdvisedAreaPerBird(heavy), standard.HeightFor(heavy));
    }

    /// <summary>Birds to a crate at an outside temperature under a rule for hot days, rounded down.</summary>
    /// <param name="rule">Whose rule: it is the user's own.</param>
    /// <param name="outside">In the shade; any.</param>
    public int BirdsInHeat(HeatRule rule, Temperature outside)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return rule.Birds(Birds, outside);
    }

    /// <summary>Crates for a flock, rounded up.</summary>
    /// <param name="flock">Birds to take, 0 or more.</param>
    /// <param name="birdsPerCrate">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static int Crates(int flock, int birdsPerCrate) => (int)((Require.AtLeast(flock, 0) + (long)Require.AtLeast(birdsPerCrate, 1) - 1) / birdsPerCrate);

    /// <summary>One line, as in <c>16 birds of 2 kg (4.41 lb) to a crate by ...</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Birds} birds of {WeightText.Of(Weight.Kilograms)} to a crate by {Standard}");

    /// <summary>birds = floor(crate/area).</summary>
    private static int Whole(Area crate, Area perBird) => (int)Math.Min(int.MaxValue, Math.Floor(crate.SquareMeters / perBird.SquareMeters * (1 + 1e-12)));
}
