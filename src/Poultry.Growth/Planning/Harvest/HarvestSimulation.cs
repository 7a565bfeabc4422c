using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Draws of a whole batch: growth, losses, feed, dressing, demand, prices and dead tenders together, the same for every day of killing.</summary>
internal sealed class HarvestSimulation
{
    /// <summary>Draws of a piece of work for one thread; results do not depend on it.</summary>
    private const int Chunk = 250;

    private readonly BatchPlan plan;
    private readonly HarvestDay[] days;
    private readonly CurveDraws curves;
    private readonly FeedOfCurves feed;
    private readonly int[] dayOfAge;
    private readonly long seed;

    public HarvestSimulation(BatchPlan plan, IReadOnlyList<OfferedDate> dates, long seed)
    {
        (this.plan, this.seed) = (plan, seed);
        Age last = plan.AgeOn(dates.Max(date => date.Date));
        IReadOnlyList<Age> ages = FeedForecast.AgesFor(plan.Birds, last);
        curves = plan.Growth.Draws(seed, [.. ages]);
        feed = new(plan, last);
        days = [.. dates.Select(date => new HarvestDay(plan, date, Span(plan.AgeOn(date.Date))))];
        dayOfAge = [.. days.Select(day => (int)Math.Round((day.Age - plan.Birds.AgeAtPlacement).Days))];
    }

    public IReadOnlyList<HarvestDay> Days => days;

    /// <summary>Outcomes of every day, draw by draw.</summary>
    /// <param name="options">How many draws, on how many threads: the outcomes are the same on any number.</param>
    /// <param name="stop">Asks to stop.</param>
    public HarvestDraws[] Run(HarvestOptions options, CancellationToken stop)
    {
        int draws = options.Draws;
        HarvestDraws[] outcomes = [.. days.Select(_ => new HarvestDraws(draws))];
        int finished = 0;
        Parallel.For(0, (draws + Chunk - 1) / Chunk, new ParallelOptions { MaxDegreeOfParallelism = options.Threads, CancellationToken = stop }, chunk =>
        {
            Room room = new(plan, curves.Ages.Count);
            int end = Math.Min(draws, (chunk + 1) * Chunk);
            for (int draw = chunk * Chunk; draw < end; draw++)
            {
                Draw(draw, outcomes, room);
            }

            options.Progress?.Report(Interlocked.Add(ref finished, end - (chunk * Chunk)));
        });
        return outcomes;
    }

    private void Draw(int draw, HarvestDraws[] outcomes, Room room)
    {
        DrawnInputs inputs = new(seed, draw);
        curves.Draw(draw, room.Kilograms);
        double survival = inputs.Survival, even = inputs.Head;
        (double comes, double share) = inputs.LargeLoss;
        double lost = comes < plan.LargeLoss.Chance.Fraction ? Triangular.Quantile(plan.LargeLoss.Share, share) : 0;

        // A large loss strikes at an age evenly spread over what is left of the batch's life: the same even number, stretched.
        double struckDays = lost == 0 ? double.PositiveInfinity : Stretch(comes / plan.LargeLoss.Chance.Fraction);
        feed.Draw(room.Kilograms, survival, lost, struckDays, inputs.Feed, room.Feed, room.FeedCost);
        for (int i = 0; i < days.Length; i++)
        {
            int head = plan.Birds.HeadInBatch(days[i].Age, survival, even, days[i].Age.Days > struckDays ? 1 - lost : 1);
            int at = dayOfAge[i];
            days[i].Draw(draw, outcomes[i], inputs, room.Kilograms[at], head, (room.Feed[at], room.FeedCost[at]), room.Packs);
        }
    }

    private double Stretch(double even)
    {
        double from = plan.Birds.CountedUntil.Days;
        return from + (even * Math.Max(0, plan.AgeOn(plan.Dates.Max(date => date.Date)).Days - from));
    }

    /// <summary>Weights that nearly all draws lie between.</summary>
    private (double Low, double High) Span(Age age)
    {
        Interval<UnitsNet.Mass> wide = plan.Growth.MeanAt(age, level: 0.999).Interval;
        double mean = plan.Growth.MeanAt(age).Value.Kilograms;
        return (wide.Low?.Kilograms ?? mean / 2, wide.High?.Kilograms ?? mean * 2);
    }

    /// <summary>Room that one thread works in.</summary>
    private sealed class Room(BatchPlan plan, int ages)
    {
        public double[] Kilograms { get; } = new double[ages];

        public double[] Feed { get; } = new double[ages];

        public double[] FeedCost { get; } = new double[ages];

        public double[] Packs { get; } = new double[(2 * plan.Offers.Count) + 1];
    }
}
