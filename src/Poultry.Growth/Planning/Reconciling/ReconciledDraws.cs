using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>The forecast of everything that a plant's sheet says, draw by draw: the plan's own draws, the weight of its packs, and what follows from them.</summary>
/// <remarks>The plan reckons with shares of birds; here whole birds are counted, so that a count may be held against it.</remarks>
internal sealed class ReconciledDraws(int draws, int offers) : HarvestDraws(draws, 0)
{
    /// <summary>Beyond the purposes of curves and of <see cref="DrawnInputs"/>.</summary>
    private const int FirstPurpose = 61;

    /// <summary>kg of each offer.</summary>
    public double[][] Packs { get; } = [.. Enumerable.Range(0, offers).Select(_ => new double[draws])];

    /// <summary>kg of all offers.</summary>
    public double[] Packed { get; } = new double[draws];

    /// <summary>Packed in percent of live weight at killing.</summary>
    public double[] Yield { get; } = new double[draws];

    /// <summary>Percent of the chicks placed, by what was known before the first of them died.</summary>
    public double[] Losses { get; } = new double[draws];

    /// <summary>Birds dead on arrival.</summary>
    public double[] DeadBirds { get; } = new double[draws];

    /// <summary>Birds condemned whole.</summary>
    public double[] CondemnedBirds { get; } = new double[draws];

    /// <summary>Birds with a lesion among those opened.</summary>
    public double[] LesionsFound { get; } = new double[draws];

    public static ReconciledDraws Of(BatchPlan plan, PlantSheet sheet, HarvestOptions options, CancellationToken stop)
    {
        ReconciledDraws drawn = HarvestWork.Run(plan, 1, at => new HarvestDay(plan, plan.Dates[at]), count => new ReconciledDraws(count, plan.Offers.Count), options, stop, out _)[0];
        drawn.Count(plan, sheet, options.Seed);
        return drawn;
    }

    public override void Set(int draw, in HarvestOutcome outcome, ReadOnlySpan<double> packs)
    {
        base.Set(draw, outcome, packs);
        for (int offer = 0; offer < Packs.Length; offer++)
        {
            Packs[offer][draw] = packs[(2 * offer) + 1];
            Packed[draw] += Packs[offer][draw];
        }
    }

    private static int Birds(long seed, int draw, int which, double birds, double share) =>
        Distributions.BinomialQuantile(new RandomStream(seed, draw, FirstPurpose + which).NextUniform(), (int)Math.Round(birds), Math.Clamp(share, 0, 1));

    private void Count(BatchPlan plan, PlantSheet sheet, long seed)
    {
        OfferedDate date = plan.Dates[0];
        Age age = plan.AgeOn(date.Date);
        HeadCountPath placed = HeadCountPath.Expected(plan.Birds.Placed, plan.Birds.AgeAtPlacement, plan.Birds.Thereafter);
        double killedPerFullFed = LiveWeight.Factor(LiveState.FullFed, LiveState.OffFeed(date.OffFeed, date.Road), plan.Plant.Withdrawal, lost => lost.Likely);
        double usual = plan.CondemnedBirds?.Likely.Fraction ?? 1 - ((1 - plan.Plant.Condemned.LiveShare) * (1 - plan.Plant.Condemned.CarcassShare));
        LesionShares? lesions = sheet.Opened > 0 ? LesionShares.Of(plan, age) : null;
        for (int draw = 0; draw < Head.Length; draw++)
        {
            DrawnInputs inputs = new(seed, draw);
            (double comes, double struck) = inputs.LargeLoss;
            double kept = comes < plan.LargeLoss.Chance.Fraction ? 1 - Triangular.Quantile(plan.LargeLoss.Share, struck) : 1;
            Losses[draw] = 100 * (1 - ((double)placed.HeadInBatch(age, inputs.Survival, inputs.Head, kept) / plan.Birds.Placed));
            double loaded = Math.Max(1, Math.Min(Head[draw], date.Terms.MostBirds ?? double.MaxValue)), arrived = Math.Max(1, loaded - DeadOnArrival[draw]);
            DeadBirds[draw] = Birds(seed, draw, 0, loaded, DeadOnArrival[draw] / loaded);

            // A ratio of the farm's own has what is condemned in it, and the plan then draws none.
            CondemnedBirds[draw] = Birds(seed, draw, 1, arrived, plan.Plant.Dressing.IncludesCondemned ? usual : Condemned[draw] / arrived);
            Yield[draw] = 100 * Packed[draw] / (MeanKilograms[draw] * killedPerFullFed * loaded);
            LesionsFound[draw] = lesions is null ? 0 : Birds(seed, draw, 2, sheet.Opened, lesions.At(inputs.Lesions));
        }
    }
}
