using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Everything that tables, JSON, chart and calendar show of a plan.</summary>
internal sealed class PlanAnswer
{
    private const int BirdsWeighed = 30;

    private PlanAnswer(string file, HarvestComparison comparison)
    {
        (File, Comparison) = (file, comparison);
        BatchPlan plan = comparison.Plan;
        HarvestOption best = comparison.Recommended;
        Timeline = Growth.Planning.Timeline.Of(new()
        {
            Placed = plan.Placed,
            AgeAtPlacement = plan.Birds.AgeAtPlacement,
            Date = best.Date,
            MoveOut = plan.MoveOut,
            Feeds = [.. plan.Feeds.Phases.Select(phase => (phase.Name, phase.From, phase.DeliveryTime))],
        });
        Age deadline = plan.AgeOn(comparison.Options.Min(option => option.DecideBy));
        WeighIn = Age.FromDays(Math.Floor(deadline.Days) - 1);
        WeighInWorth = WeighIn.Days >= 14 && comparison.Options.Count > 1 ? comparison.WeighInValue(WeighIn, BirdsWeighed) : null;
    }

    public string File { get; }

    public HarvestComparison Comparison { get; }

    public BatchPlan Plan => Comparison.Plan;

    public IReadOnlyList<TimelineEntry> Timeline { get; }

    /// <summary>The day before the first deadline.</summary>
    public Age WeighIn { get; }

    /// <summary>What a weigh-in of thirty birds that day is worth; null where the birds are too young or no choice is left.</summary>
    public Money? WeighInWorth { get; }

    /// <summary>Chicks that would have to be ordered for as many birds as the orders of the recommended day ask for; for the next batch.</summary>
    public ChickOrder Chicks => ChickOrder.Enough(
        Math.Max(1, (int)Math.Round(Comparison.Recommended.Head.Value)),
        Probability.FromFraction(0.8),
        ChickNeed.Of(default, Plan.Birds.AgeAtPlacement, Comparison.Recommended.Age, Plan.Birds.Thereafter == Survival.WithoutLoss ? Survival.FastGrowingOutdoor : Plan.Birds.Thereafter));

    public IReadOnlyList<Caution> Cautions => [.. Comparison.Cautions.Concat(Timeline.Select(entry => entry.Caution).OfType<Caution>()).DistinctBy(caution => caution.Code)];

    public static IReadOnlyList<Citation> Sources => [.. HarvestComparison.Model.Citations];

    public static PlanAnswer To(BatchPlan plan, string file, HarvestOptions options) => new(file, HarvestComparison.Of(plan, options));

    public string Calendar() => CalendarFile.Write(Plan.Name, Timeline, Plan.Placed.ToDateTime(TimeOnly.MinValue));
}
