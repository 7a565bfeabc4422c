using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Flock;

/// <summary>How many birds of a batch are alive at each age: as counted so far, and as expected from then on.</summary>
public sealed class HeadCountPath
{
    private readonly int counted;

    private HeadCountPath(int placed, Age ageAtPlacement, IReadOnlyList<Deaths> deaths, Survival thereafter)
    {
        (Placed, AgeAtPlacement, Deaths, Thereafter) = (placed, ageAtPlacement, deaths, thereafter);
        counted = placed - deaths.Sum(day => day.Birds);
        CountedUntil = deaths.Count == 0 ? ageAtPlacement : deaths[^1].Age;
    }

    /// <summary>The chicks placed alive.</summary>
    public int Placed { get; }

    /// <summary>How old they were.</summary>
    public Age AgeAtPlacement { get; }

    /// <summary>The deaths recorded, by age.</summary>
    public IReadOnlyList<Deaths> Deaths { get; }

    /// <summary>Up to this age the birds were counted; what follows is expected.</summary>
    public Age CountedUntil { get; }

    /// <summary>How birds die off after the last record.</summary>
    public Survival Thereafter { get; }

    /// <summary>A batch of which no bird is lost.</summary>
    /// <param name="birds">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public static HeadCountPath Constant(int birds) => Expected(birds, Age.Hatch, Survival.WithoutLoss);

    /// <summary>A batch as expected.</summary>
    /// <param name="placed">Chicks placed alive, 1 or more.</param>
    /// <param name="ageAtPlacement">How old they were, any.</param>
    /// <param name="survival">How birds die off.</param>
    /// <exception cref="ArgumentOutOfRangeException">No chick was placed.</exception>
    public static HeadCountPath Expected(int placed, Age ageAtPlacement, Survival survival) => Recorded(placed, ageAtPlacement, [], survival);

    /// <summary>A batch whose deaths were written down, and as expected afterwards.</summary>
    /// <param name="placed">Chicks placed alive, 1 or more.</param>
    /// <param name="ageAtPlacement">How old they were, any.</param>
    /// <param name="deaths">Birds dead or culled, in any order; none before placement. Who records that no bird died until a day gives that day with 0 birds.</param>
    /// <param name="thereafter">How birds die off after the last record.</param>
    /// <exception cref="ArgumentOutOfRangeException">No chick was placed, or a death lies before placement.</exception>
    /// <exception cref="ArgumentException">More birds died than were placed.</exception>
    public static HeadCountPath Recorded(int placed, Age ageAtPlacement, IEnumerable<Deaths> deaths, Survival thereafter)
    {
        Require.AtLeast(placed, 1);
        ArgumentNullException.ThrowIfNull(deaths);
        ArgumentNullException.ThrowIfNull(thereafter);
        Deaths[] byAge = [.. deaths.OrderBy(day => day.Age)];
        if (byAge.Length > 0)
        {
            Require.Between(byAge[0].Age.Days, ageAtPlacement.Days, double.MaxValue, "d", nameof(deaths));
        }

        int dead = byAge.Sum(day => day.Birds);
        return dead <= placed
            ? new(placed, ageAtPlacement, byAge, thereafter)
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"{dead} birds died; expected at most the {placed} placed."), nameof(deaths));
    }

    /// <summary>Birds alive: a whole number while they were counted, the expected number afterwards. A bird that died on a day is gone from that age on.</summary>
    /// <param name="age">From placement on.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age lies before placement.</exception>
    public double BirdsAt(Age age)
    {
        Require.Between(age.Days, AgeAtPlacement.Days, double.MaxValue, "d", nameof(age));
        return age <= CountedUntil
            ? Placed - Deaths.TakeWhile(day => day.Age <= age).Sum(day => day.Birds)
            : counted * Thereafter.ShareAlive(CountedUntil, age).Fraction;
    }

    /// <summary>The chance that more than so many birds are alive.</summary>
    /// <param name="birds">0 or more.</param>
    /// <param name="age">Not before placement.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age lies before placement, or the number is negative.</exception>
    public Probability ChanceOfMoreThan(int birds, Age age)
    {
        Require.AtLeast(birds, 0);
        return age <= CountedUntil
            ? Probability.FromFraction(BirdsAt(age) > birds ? 1 : 0)
            : Probability.FromFraction(1 - Thereafter.ChanceAtMost(birds, counted, CountedUntil, age).Fraction);
    }

    /// <summary>As in <c>500 placed at 1 d, 493 alive at 20 d; then …</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Placed} placed at {AgeAtPlacement}") + (Deaths.Count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", {counted} alive at {CountedUntil}")) + "; then " + Thereafter;

    /// <summary>Birds alive in a batch whose losses lie so many standard deviations from the usual.</summary>
    internal double BirdsInBatch(Age age, double standardDeviations) =>
        age <= CountedUntil ? BirdsAt(age) : counted * Thereafter.ShareAliveInBatch(CountedUntil, age, standardDeviations).Fraction;

    /// <summary>The number of birds below which such a batch lies with a probability, each bird living by itself with the given share struck off at once.</summary>
    internal int HeadInBatch(Age age, double standardDeviations, double probability, double kept) => age <= CountedUntil
        ? (int)BirdsAt(age)
        : Distributions.BinomialQuantile(probability, counted, kept * Thereafter.ShareAliveInBatch(CountedUntil, age, standardDeviations).Fraction);
}
