using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Nitrogen of one bird over a time on pasture: what it ate, what it kept, and what it left on the ground.</summary>
/// <remarks>Give feed and gain of the time on pasture only: what a chick left in the brooder is spread elsewhere.</remarks>
public sealed class NitrogenBalance
{
    private const double ProteinPerNitrogen = 6.25;
    private const double ProteinOfGain = 0.175;

    private NitrogenBalance(double eaten, double retained) => (Eaten, Retained, Excreted) =
        (Mass.FromKilograms(eaten), Mass.FromKilograms(retained), Mass.FromKilograms(eaten - retained));

    /// <summary>Equation and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "nitrogen-balance",
        "Nitrogen excreted, by balance",
        "N = F p/6.25 - G 0.175/6.25",
        [new("N", "nitrogen excreted by a bird", "kg"), new("F", "feed eaten", "kg"), new("p", "protein of the feed, as a fraction", "-"), new("G", "live weight gained", "kg")],
        [
            new Citation("Poultry2019Body", "Poultry Science 2019, 98:866-877, body composition of 151 birds to 60 d", HowKnown.ReadInSource, "abstract: protein 154 to 182 g/kg fresh; 175 is taken here"),
            new Citation("Angel2003", "Angel et al. 2003, conference paper of the agricultural engineers", HowKnown.ReadInSource, "abstract: balance against total collection to 2.36 kg"),
        ],
        "A standard's table over-predicted nitrogen by 14 % against total collection to 2.36 kg; a balance stands or falls with feed and protein. Forage and litter are not in it.",
        HowKnown.Derived,
        [new ValidityRange("live weight", 0.056, 4.2, "kg")]);

    /// <summary>Excretion rises with age.</summary>
    public static Caution LateExcretion { get; } = new(
        "late-excretion",
        "This is the mean over the time on pasture. Birds eat and excrete far more late in life, about twice the mean in the last weeks (an assumption): spread the last positions wider, or move oftener.");

    /// <summary>Nitrogen in the feed eaten.</summary>
    public Mass Eaten { get; }

    /// <summary>Nitrogen kept in the body.</summary>
    public Mass Retained { get; }

    /// <summary>Nitrogen left on the ground; part of it is lost to the air as ammonia.</summary>
    public Mass Excreted { get; }

    /// <summary>The balance of one bird.</summary>
    /// <param name="feed">Feed eaten on pasture, above 0.</param>
    /// <param name="protein">Crude protein of the feed, above 0.</param>
    /// <param name="gain">Live weight gained on pasture, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    /// <exception cref="ArgumentException">The gain would hold more nitrogen than the feed: one of the figures is wrong.</exception>
    public static NitrogenBalance Of(Mass feed, Probability protein, Mass gain) =>
        TryOf(feed, protein, gain, out NitrogenBalance? balance, out string? fault) ? balance : throw new ArgumentException(fault, nameof(gain));

    /// <summary>The balance of one bird, or why there is none: the gain would hold more nitrogen than the feed.</summary>
    /// <param name="feed">Feed eaten on pasture, above 0.</param>
    /// <param name="protein">Crude protein of the feed, above 0.</param>
    /// <param name="gain">Live weight gained on pasture, 0 or more.</param>
    /// <param name="balance">The balance, where there is one.</param>
    /// <param name="fault">What does not fit, in one sentence, where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static bool TryOf(Mass feed, Probability protein, Mass gain, [NotNullWhen(true)] out NitrogenBalance? balance, [NotNullWhen(false)] out string? fault)
    {
        double eaten = Require.Positive(feed.Kilograms, "kg", nameof(feed)) * Require.Positive(protein.Fraction, "", nameof(protein)) / ProteinPerNitrogen;
        double retained = Require.NotNegative(gain.Kilograms, "kg", nameof(gain)) * ProteinOfGain / ProteinPerNitrogen;
        balance = retained <= eaten ? new(eaten, retained) : null;
        fault = balance is null
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"A gain of {WeightText.Of(gain.Kilograms)} holds {WeightText.Of(retained)} of nitrogen, the feed only {WeightText.Of(eaten)}; expected feed and gain of the same time.")
            : null;
        return balance is not null;
    }

    /// <summary>The load of one pass from excretion a day: N load = 10 (g a bird and day)/(m² a bird and move), at one move a day.</summary>
    /// <param name="perBirdAndDay">Nitrogen of one bird in a day, 0 or more.</param>
    /// <param name="groundPerBirdAndDay">Fresh ground of each bird in a day, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static AreaDensity LoadOfPass(MassFlow perBirdAndDay, Area groundPerBirdAndDay) => AreaDensity.FromKilogramsPerSquareMeter(
        Require.NotNegative(perBirdAndDay.KilogramsPerDay, "kg/d", nameof(perBirdAndDay)) / Require.Positive(groundPerBirdAndDay.SquareMeters, "m2", nameof(groundPerBirdAndDay)));

    /// <summary>The most birds a year on a hectare under a limit on nitrogen, rounded down.</summary>
    /// <param name="yearlyLimit">As in 170 kg/ha, above 0.</param>
    /// <param name="perBird">Nitrogen of one bird that counts against the limit, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static int BirdsPerHectareAndYear(AreaDensity yearlyLimit, Mass perBird) => (int)Math.Min(int.MaxValue, Math.Floor(
        10_000 * Require.Positive(yearlyLimit.KilogramsPerSquareMeter, "kg/m2", nameof(yearlyLimit)) / Require.Positive(perBird.Kilograms, "kg", nameof(perBird)) * (1 + 1e-12)));

    /// <summary>One line, as in <c>66 g of nitrogen excreted (122.2 g eaten, 56.3 g kept)</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Excreted.Grams:0.#} g of nitrogen excreted ({Eaten.Grams:0.#} g eaten, {Retained.Grams:0.#} g kept)");
}
