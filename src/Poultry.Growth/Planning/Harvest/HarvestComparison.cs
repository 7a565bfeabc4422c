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
        Sample sample = NewSample();
        draws = Draw(plan.Dates, plan.Offers.Count, stop, out IReadOnlyList<HarvestDay> days);
        Options = Results(days, draws, sample);
        int best = Best(draws);
        Recommended = Options[best];
        OfferedDate later = plan.Dates[best].DayLater();
        MarginDraws[] after = HarvestWork.Run(plan, 1, _ => new HarvestDay(plan, later), count => new MarginDraws(count), options, stop, out IReadOnlyList<HarvestDay> _);
        MarginalDay = Difference(sample, after[0], draws[best]);
        SpreadDrivers = HarvestDrivers.Of(draws[best], plan, sample, options.Seed);
        Cautions = [.. HarvestCautions.Of(plan, Recommended, days[best].Cautions).DistinctBy(caution => caution.Code)];
        Doubt = HarvestWords.Doubt(this, best);
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

    /// <summary>How sure the choice is against the next best day, the part of <see cref="Recommendation"/> that says so.</summary>
    public string Doubt { get; }

    /// <summary>What another day would bring at the same plant and terms after the day recommended: what the plant's calendar costs or spares.</summary>
    public Estimate<Money> MarginalDay { get; }

    /// <summary>What the spread of the margin comes from, the largest part first.</summary>
    public IReadOnlyList<SpreadDriver> SpreadDrivers { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

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

    /// <summary>The margin of each fate on one day.</summary>
    internal double[] MarginsOf(int option) => draws[option].Margin;

    /// <summary>The chance that one day brings more than another, as both are in the plan.</summary>
    /// <param name="option">Its place in <see cref="Options"/>.</param>
    /// <param name="other">The other's place in them, from 0.</param>
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

    /// <summary>What it would bring if the plant killed on every day between the first and the last that it offers.</summary>
    /// <param name="stop">Asks to stop.</param>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public CalendarCost EveryDay(CancellationToken stop = default)
    {
        DateOnly first = Options.Min(option => option.Date.Date), last = Options.Max(option => option.Date.Date);
        OfferedDate[] dates = [.. Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(day => Recommended.Date.As(first.AddDays(day), isBooked: true, Recommended.Date.BookedBirds))];
        Sample sample = NewSample();
        HarvestDraws[] all = Draw(dates, offers: 0, stop, out IReadOnlyList<HarvestDay> days);
        HarvestOption[] results = Results(days, all, sample);
        int best = Best(all), recommended = Array.FindIndex(dates, date => date.Date == Recommended.Date.Date);
        return new(results, results[best], Difference(sample, all[best], all[recommended]));
    }

    /// <summary>The batch killed on two of the days offered, a part of it on the earlier: every pair of days, each with every share asked for.</summary>
    /// <param name="birds">Which birds go first.</param>
    /// <param name="shares">Which part of the birds alive goes first, each between 5 and 95 %; at least one.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <returns>The best by mean margin first; none where only one day is offered. The plant has agreed to both days: nothing is charged for birds booked and missing.</returns>
    /// <exception cref="ArgumentException">No share is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is out of its range.</exception>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public IReadOnlyList<HarvestSplit> Split(FirstBirds birds, IReadOnlyList<Probability> shares, CancellationToken stop = default)
    {
        foreach (Probability share in Require.Some(shares))
        {
            Require.Between(share.Percent, 5, 95, "%", nameof(shares));
        }

        OfferedDate[] dates = [.. Plan.Dates.OrderBy(date => date.Date)];
        SplitPlan[] plans =
        [
            .. from first in Enumerable.Range(0, dates.Length)
               from second in Enumerable.Range(first + 1, dates.Length - first - 1)
               from share in shares.Distinct()
               select new SplitPlan(dates[first], dates[second], share, birds),
        ];
        if (plans.Length == 0)
        {
            return [];
        }

        SplitDraws[] all = HarvestWork.Run(Plan, plans.Length, at => new SplitBatch(Plan, plans[at]), draws => new SplitDraws(draws), options, stop, out IReadOnlyList<SplitBatch> _);
        HarvestDraws whole = draws[Best(draws)];
        Sample sample = NewSample();
        return
        [
            .. plans.Zip(all, (plan, outcomes) => new HarvestSplit(
                Plan, plan, outcomes, sample, Difference(sample, outcomes, whole), Sample.Share(options.Draws, draw => outcomes.Margin[draw] > whole.Margin[draw])))
                .OrderByDescending(split => split.Margin.Value),
        ];
    }

    /// <summary>The recommendation.</summary>
    public override string ToString() => Recommendation;

    /// <summary>Draws days of killing by the same fates.</summary>
    private HarvestDraws[] Draw(IReadOnlyList<OfferedDate> dates, int offers, CancellationToken stop, out IReadOnlyList<HarvestDay> days) =>
        HarvestWork.Run(Plan, dates.Count, at => new HarvestDay(Plan, dates[at]), count => new HarvestDraws(count, offers), options, stop, out days);

    private HarvestOption[] Results(IReadOnlyList<HarvestDay> days, HarvestDraws[] outcomes, Sample sample) =>
        [.. days.Zip(outcomes, (day, drawn) => new HarvestOption(Plan, day, drawn, sample))];

    /// <summary>Room for sorting, one each time: a comparison may be asked on several threads.</summary>
    private Sample NewSample() => new(options.Draws, options.Level);

    /// <summary>What one choice brings more than another, fate by fate.</summary>
    private static Estimate<Money> Difference(Sample sample, MarginDraws one, MarginDraws other) =>
        sample.Estimate(Sample.Mean(one.Margin) - Sample.Mean(other.Margin), draw => one.Margin[draw] - other.Margin[draw], Money.Of);

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
