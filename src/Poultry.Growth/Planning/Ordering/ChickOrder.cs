using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>How many chicks to order for a wanted number of birds on the day of killing, and how likely that is too few or too many.</summary>
public sealed class ChickOrder
{
    /// <summary>More than this is no small farm's order and surely a slip.</summary>
    private const int MostChicks = 1_000_000;

    private ChickOrder(int chicks, Probability chanceOfEnough, IReadOnlyList<LimitChance> limits, IReadOnlyList<Caution> cautions) =>
        (Chicks, ChanceOfEnough, Limits, Cautions) = (chicks, chanceOfEnough, limits, cautions);

    /// <summary>Chicks to order.</summary>
    public int Chicks { get; }

    /// <summary>The chance that at least the birds wanted are alive on the day.</summary>
    public Probability ChanceOfEnough { get; }

    /// <summary>The chance of exceeding each limit, were none of them respected.</summary>
    public IReadOnlyList<LimitChance> Limits { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The smallest order that is enough with a wanted chance.</summary>
    /// <param name="birds">Birds wanted alive at killing, 1 or more.</param>
    /// <param name="chance">The chance wanted, between 0.5 and 0.999.</param>
    /// <param name="need">How birds are lost on the way and later, and what limits them.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range, or no order up to a million chicks is enough.</exception>
    public static ChickOrder Enough(int birds, Probability chance, ChickNeed need)
    {
        Require.AtLeast(birds, 1);
        Require.Between(chance.Fraction, 0.5, 0.999, "", nameof(chance));
        ArgumentNullException.ThrowIfNull(need);
        (int low, int high) = (birds - 1, birds);
        while (need.ChanceOfAtLeast(birds, high, need.Killing) < chance.Fraction)
        {
            if (high >= MostChicks)
            {
                throw new ArgumentOutOfRangeException(nameof(need), string.Create(
                    CultureInfo.InvariantCulture, $"No order up to {MostChicks} chicks gives {birds} birds with a chance of {chance}; expected fewer losses or a lower chance."));
            }

            (low, high) = (high, Math.Min(2 * high, MostChicks));
        }

        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            (low, high) = need.ChanceOfAtLeast(birds, middle, need.Killing) < chance.Fraction ? (middle, high) : (low, middle);
        }

        return Of(high, birds, need);
    }

    /// <summary>What an order of so many chicks means.</summary>
    /// <param name="chicks">Chicks ordered, 1 or more.</param>
    /// <param name="birds">Birds wanted alive at killing, 1 or more.</param>
    /// <param name="need">How birds are lost on the way and later, and what limits them.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 1.</exception>
    public static ChickOrder Of(int chicks, int birds, ChickNeed need)
    {
        Require.AtLeast(chicks, 1);
        Require.AtLeast(birds, 1);
        ArgumentNullException.ThrowIfNull(need);
        LimitChance[] limits = [.. need.Limits.Select(limit => new LimitChance(limit, Probability.FromFraction(need.ChanceOfAtLeast(limit.Birds + 1, chicks, limit.Age))))];
        return new(chicks, Probability.FromFraction(need.ChanceOfAtLeast(birds, chicks, need.Killing)), limits, [.. Warnings(limits, need)]);
    }

    /// <summary>As in <c>334 chicks: 90.2 % for enough birds</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Chicks} chicks: {ChanceOfEnough} for enough birds");

    private static IEnumerable<Caution> Warnings(IEnumerable<LimitChance> limits, ChickNeed need)
    {
        yield return new("large-losses", "A predator, a smothering or a fire is not counted: such losses are rare and large, and no order makes up for them.");
        if (need.Survival.Model.HowKnown == HowKnown.Assumption)
        {
            yield return new("survival-assumed", "Losses by week are assumed. The farm's own records of deaths are worth more than any table.");
        }

        foreach (LimitChance over in limits.Where(limit => limit.Exceeded.Fraction > 0.05))
        {
            yield return new("limit-likely-exceeded", string.Create(
                CultureInfo.InvariantCulture, $"{over.Limit.Name}: with a chance of {over.Exceeded} more than {over.Limit.Birds} birds are alive at {over.Limit.Age}. Order fewer, or arrange for the rest beforehand."));
        }
    }
}
