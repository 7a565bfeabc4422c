using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>The feeds of a batch, one after the other without a gap.</summary>
public sealed class FeedingPlan
{
    private FeedingPlan(IReadOnlyList<FeedPhase> phases, Caution? caution) => (Phases, Caution) = (phases, caution);

    /// <summary>Usual energy by age where the bags do not say: 3000 kcal/kg to 10 d, 3100 to 24 d, 3200 after. 100 kcal/kg are 3 % of the feed: read the label.</summary>
    public static FeedingPlan UsualDiets { get; } = new(
        [
            new FeedPhase("starter", Age.Hatch, Age.FromDays(10), Calories.PerKilogram(3000)),
            new FeedPhase("grower", Age.FromDays(10), Age.FromDays(24), Calories.PerKilogram(3100)),
            new FeedPhase("finisher", Age.FromDays(24), null, Calories.PerKilogram(3200)),
        ],
        new("diet-assumed", "The energy of the feed was not given: 3000, 3100 and 3200 kcal/kg are assumed at 0 to 10, 10 to 24 d and after. Each 100 kcal/kg is 3 % of the feed: ask the mill."));

    /// <summary>The feeds by age.</summary>
    public IReadOnlyList<FeedPhase> Phases { get; }

    /// <summary>Says that the feeds are assumed; null where they were given.</summary>
    public Caution? Caution { get; }

    /// <summary>Feeds in the order of age.</summary>
    /// <param name="phases">At least one; each begins where the one before it ends. A phase without an end that is not the last ends where the next begins.</param>
    /// <exception cref="ArgumentException">There is none, or phases overlap or leave a gap.</exception>
    public static FeedingPlan Of(params IReadOnlyList<FeedPhase> phases)
    {
        Require.Some(phases);
        FeedPhase[] byAge = [.. phases.OrderBy(phase => phase.From)];
        for (int i = 1; i < byAge.Length; i++)
        {
            if (byAge[i].From == byAge[i - 1].From || (byAge[i - 1].To is { } end && end != byAge[i].From))
            {
                throw new ArgumentException(byAge[i] + " does not begin where " + byAge[i - 1] + " ends; expected phases without gap or overlap.", nameof(phases));
            }
        }

        return new(byAge, null);
    }

    /// <summary>One feed all life.</summary>
    /// <param name="energy">Metabolizable energy, 1000 to 5000 kcal/kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">The energy is out of range.</exception>
    public static FeedingPlan OneFeed(SpecificEnergy energy) => Of(new FeedPhase("feed", Age.Hatch, null, energy));

    /// <summary>The feeds in their order, and whether they are assumed.</summary>
    public override string ToString() => string.Join("; ", Phases) + (Caution is null ? "" : " (assumed)");

    /// <summary>The place of the phase that is fed at an age; the plan covers it.</summary>
    internal int IndexAt(double ageDays)
    {
        int index = Phases.Count - 1;
        while (index > 0 && Phases[index].From.Days > ageDays)
        {
            index--;
        }

        return index;
    }

    /// <summary>Refuses a plan that begins too late or ends too early.</summary>
    internal void RequireCovers(Age from, Age to, string name)
    {
        if (Phases[0].From > from || Phases[^1].To < to)
        {
            throw new ArgumentException("The feeds cover " + Phases[0].From + " to " + Phases[^1].To + "; expected " + from + " to " + to + ".", name);
        }
    }
}
