using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>How chicks ordered become birds for the plant: lost on the way, lost later, and limited by places.</summary>
public sealed class ChickNeed
{
    private ChickNeed(Probability lostInTransit, Age arrival, Age killing, Survival survival, IReadOnlyList<BirdLimit> limits) =>
        (LostInTransit, Arrival, Killing, Survival, Limits) = (lostInTransit, arrival, killing, survival, limits);

    /// <summary>The share of chicks that are dead on arrival.</summary>
    public Probability LostInTransit { get; }

    /// <summary>How old chicks are when they come.</summary>
    public Age Arrival { get; }

    /// <summary>How old birds are when they are killed.</summary>
    public Age Killing { get; }

    /// <summary>How they die off in between.</summary>
    public Survival Survival { get; }

    /// <summary>The limits that an order is held against.</summary>
    public IReadOnlyList<BirdLimit> Limits { get; }

    /// <summary>What an order has to reckon with.</summary>
    /// <param name="lostInTransit">The share of chicks dead on arrival, 0 to 99 %.</param>
    /// <param name="arrival">How old chicks are when they come.</param>
    /// <param name="killing">How old birds are when they are killed; older.</param>
    /// <param name="survival">How they die off in between.</param>
    /// <param name="limits">The limits that an order is held against; each at an age from arrival on.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is above 99 %, or the ages are not in order.</exception>
    public static ChickNeed Of(Probability lostInTransit, Age arrival, Age killing, Survival survival, params IReadOnlyList<BirdLimit> limits)
    {
        Require.Between(lostInTransit.Fraction, 0, 0.99, "", nameof(lostInTransit));
        Require.Above(killing.Days, arrival.Days, "d", nameof(killing));
        ArgumentNullException.ThrowIfNull(survival);
        ArgumentNullException.ThrowIfNull(limits);
        foreach (BirdLimit limit in limits)
        {
            Require.Between(limit.Age.Days, arrival.Days, double.MaxValue, "d", nameof(limits));
        }

        return new(lostInTransit, arrival, killing, survival, limits);
    }

    /// <summary>As in <c>chicks of 2 d, 1 % dead on arrival, killed at 56 d; …</c>, in every culture.</summary>
    public override string ToString() => "chicks of " + Arrival + ", " + LostInTransit + " dead on arrival, killed at " + Killing + "; " + Survival;

    /// <summary>The chance that at least so many birds of an order are alive at an age.</summary>
    internal double ChanceOfAtLeast(int birds, int chicks, Age age) =>
        1 - Survival.ChanceAtMost(birds - 1, chicks, Arrival, age, alive: Probability.FromFraction(1 - LostInTransit.Fraction)).Fraction;
}
