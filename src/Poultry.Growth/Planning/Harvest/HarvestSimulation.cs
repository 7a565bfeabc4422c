using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Draws of a whole batch: growth, losses, feed, dressing, demand, prices and dead tenders together, the same for every choice of days of killing.</summary>
/// <typeparam name="TDraws">What is kept of a choice.</typeparam>
internal sealed class HarvestSimulation<TDraws>
    where TDraws : MarginDraws
{
    /// <summary>Draws of a piece of work for one thread; results do not depend on it.</summary>
    private const int Chunk = 250;

    private readonly BatchPlan plan;
    private readonly IReadOnlyList<IHarvestChoice> choices;
    private readonly CurveDraws curves;
    private readonly FeedOfCurves feed;
    private readonly double strikesFrom, strikesFor;
    private readonly long seed;

    public HarvestSimulation(BatchPlan plan, IReadOnlyList<IHarvestChoice> choices, long seed)
    {
        (this.plan, this.choices, this.seed) = (plan, choices, seed);
        Age last = plan.FeedUntil(choices.Max(choice => choice.LastAge));
        curves = plan.Growth.Draws(seed, [.. FeedForecast.AgesFor(plan.Birds, last)]);
        feed = new(plan, last);

        // A large loss strikes at an age evenly spread over what is left of the batch's life, which does not depend on the choice.
        strikesFrom = plan.Birds.CountedUntil.Days;
        strikesFor = Math.Max(0, plan.AgeOn(plan.Dates.Max(date => date.Date)).Days - strikesFrom);
    }

    /// <summary>Outcomes of every choice, draw by draw.</summary>
    /// <param name="make">Room for the outcomes of one choice.</param>
    /// <param name="options">How many draws, on how many threads: the outcomes are the same on any number.</param>
    /// <param name="work">Told of what is done.</param>
    public TDraws[] Run(Func<int, TDraws> make, HarvestOptions options, HarvestWork work)
    {
        int draws = options.Draws;
        TDraws[] outcomes = [.. choices.Select(_ => make(draws))];
        work.Each(Chunks(draws), options, chunk =>
        {
            Room room = new(plan, curves.Ages.Count);
            int end = Math.Min(draws, (chunk + 1) * Chunk);
            for (int draw = chunk * Chunk; draw < end; draw++)
            {
                Draw(draw, outcomes, room);
            }

            work.Done(1);
        });
        return outcomes;
    }

    /// <summary>Pieces of work that so many draws are.</summary>
    public static int Chunks(int draws) => (draws + Chunk - 1) / Chunk;

    private void Draw(int draw, TDraws[] outcomes, Room room)
    {
        DrawnInputs inputs = new(seed, draw);
        curves.Draw(draw, room.Kilograms);
        (double comes, double size) = inputs.LargeLoss;
        double chance = plan.LargeLoss.Chance.Fraction;

        // The same even number says whether it comes and, stretched, when.
        (double Share, double AtDays) lost = comes < chance ? (Triangular.Quantile(plan.LargeLoss.Share, size), strikesFrom + (comes / chance * strikesFor)) : (0, double.PositiveInfinity);
        feed.Draw(room.Kilograms, inputs.Survival, lost.Share, lost.AtDays, inputs.Feed, room.Feed, room.FeedCost);
        BatchFate fate = new(plan.Birds, inputs, room.Kilograms, room.Feed, room.FeedCost, lost);
        for (int i = 0; i < outcomes.Length; i++)
        {
            outcomes[i].Set(draw, choices[i].Of(fate, room.Packs), room.Packs);
        }
    }

    /// <summary>Room that one thread works in.</summary>
    private sealed class Room(BatchPlan plan, int ages)
    {
        public double[] Kilograms { get; } = new double[ages];

        public double[] Feed { get; } = new double[ages];

        public double[] FeedCost { get; } = new double[ages];

        public double[] Packs { get; } = new double[4 * plan.Offers.Count];
    }
}
