using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The days of killing offered, side by side: which one, what it brings, what may go wrong, and what would change it.</summary>
public sealed class HarvestComparison
{
    private readonly HarvestDraws[] draws;

    private readonly HarvestOptions options;

    private HarvestComparison(BatchPlan plan, HarvestOptions options, CancellationToken stop)
    {
        (Plan, this.options) = (plan, options);
        HarvestSimulation offered = new(plan, plan.Dates, options.Seed);
        draws = offered.Run(options, stop);
        Options = [.. offered.Days.Zip(draws, (day, outcomes) => new HarvestOption(plan, day, outcomes, options.Level))];
        int best = Best(draws);
        Recommended = Options[best];
        HarvestDraws later = new HarvestSimulation(plan, [plan.Dates[best].DayLater()], options.Seed).Run(options, stop)[0];
        MarginalDay = Sample.Estimate([.. later.Margin.Zip(draws[best].Margin, (after, before) => after - before)], options.Level, Money.Of, []);
        SpreadDrivers = HarvestDrivers.Of(draws[best], plan, options.Seed);
        Cautions = [.. HarvestCautions.Of(plan, Recommended)];
        Recommendation = HarvestWords.Recommend(this, best);
    }

    /// <summary>What the comparison is made of.</summary>
    public static ModelInfo Model { get; } = new(
        "harvest-comparison",
        "Days of killing compared by draws of the whole batch",
        "M = R - C; R = sum over packs of p min(N, D) + p' min(N - D, Z); C = chicks + feed + labour + plant + cutting",
        [
            new("M", "margin of the batch", "money"),
            new("R", "revenue", "money"),
            new("C", "cost", "money"),
            new("p", "price of a pack", "money"),
            new("N", "packs there are", "-"),
            new("D", "packs asked for", "-"),
            new("p'", "what a pack brings that did not sell", "money"),
            new("Z", "packs that the freezer takes", "-"),
        ],
        [
            new Citation("ERS246", "USDA Economic Research Service 1965, ERS-246", HowKnown.ReadInSource, "abstract: margin by age; keep a bird while another day brings more than it costs"),
            new Citation("WholeBatchDraws", "Growth, losses, feed, dressing, demand, prices and dead tenders drawn together, the same fates for every day; own arithmetic", HowKnown.Derived),
        ],
        "As good as its parts and the prices stated. Means of draws agree with closed forms where one exists (tests); packs are read off a grid within half a percent of the exact count.",
        HowKnown.Assumption);

    /// <summary>The plan compared.</summary>
    public BatchPlan Plan { get; }

    /// <summary>One a day offered, in the order given.</summary>
    public IReadOnlyList<HarvestOption> Options { get; }

    /// <summary>The option with the highest mean margin of the batch.</summary>
    public HarvestOption Recommended { get; }

    /// <summary>Which day, why, how sure, what may go wrong and what would change it; in every culture.</summary>
    public string Recommendation { get; }

    /// <summary>What another day would bring at the same plant and terms after the day recommended: what the plant's calendar costs or spares.</summary>
    public Estimate<Money> MarginalDay { get; }

    /// <summary>What the spread of the margin comes from, the largest part first.</summary>
    public IReadOnlyList<SpreadDriver> SpreadDrivers { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>What a kilogram of meat must bring on average for the recommended day to pay; null where no meat is sold.</summary>
    public UnitPrice? BreakEvenPrice => Recommended.Sold.Value.Kilograms > 0
        ? UnitPrice.FromAmountPerKilogram(Recommended.Cost.Value.Amount / Recommended.Sold.Value.Kilograms)
        : null;

    /// <summary>Compares the days that the plan names.</summary>
    /// <param name="plan">The batch.</param>
    /// <param name="options">Draws, seed, level; the usual where null.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <exception cref="ArgumentException">No day is offered, or one lies before the birds are a day on the farm.</exception>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public static HarvestComparison Of(BatchPlan plan, HarvestOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Require.Some(plan.Dates);
        return new(plan, options ?? new(), stop);
    }

    /// <summary>The chance that one day brings more than another, as both are in the plan.</summary>
    /// <param name="option">Its place in <see cref="Options"/>.</param>
    /// <param name="other">The other's place.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public Probability ChanceBeats(int option, int other)
    {
        double[] one = draws[(int)Require.Between(option, 0, draws.Length - 1, "")].Margin, two = draws[(int)Require.Between(other, 0, draws.Length - 1, "")].Margin;
        int wins = 0;
        for (int i = 0; i < one.Length; i++)
        {
            wins += one[i] > two[i] ? 1 : 0;
        }

        return Probability.FromFraction((double)wins / one.Length);
    }

    /// <summary>What a weigh-in before the decision is worth: by how much the mean margin rises when the day is chosen after it.</summary>
    /// <param name="age">When the birds would be weighed, before the earliest day offered.</param>
    /// <param name="birds">How many, 1 or more.</param>
    /// <returns>0 where no result of it would change the day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The age or the number is out of its range.</exception>
    public Money WeighInValue(Age age, int birds)
    {
        Require.Between(age.Days, Plan.Birds.AgeAtPlacement.Days, Options.Min(option => option.Age).Days, "d", nameof(age));
        return draws.Length == 1 ? Money.Zero : Money.Of(WeighInWorthOfChoice.Of(Plan, draws, age, Require.AtLeast(birds, 1), options.Seed));
    }

    /// <summary>The recommendation.</summary>
    public override string ToString() => Recommendation;

    private static int Best(HarvestDraws[] draws)
    {
        int best = 0;
        for (int i = 1; i < draws.Length; i++)
        {
            best = Sample.Mean(draws[i].Margin) > Sample.Mean(draws[best].Margin) ? i : best;
        }

        return best;
    }
}
