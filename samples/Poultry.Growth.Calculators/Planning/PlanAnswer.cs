using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Everything that tables, JSON, chart and calendar show of a plan.</summary>
internal sealed class PlanAnswer
{
    /// <summary>Birds of a weigh-in before the deadline.</summary>
    public const int BirdsWeighed = 30;

    private PlanAnswer(PlanQuestion question, CancellationToken stop)
    {
        (File, Suspicions, Comparison) = (question.File, question.Suspicions, HarvestComparison.Of(question.Plan, question.Options, stop));
        Calendar = question.EveryDay ? Comparison.EveryDay(stop) : null;
        Splits = question.SplitShares.Count > 0 ? Comparison.Split(question.SplitBirds, question.SplitShares, stop) : [];
        Timeline = Growth.Planning.Timeline.Of(new()
        {
            Placed = Plan.Placed,
            AgeAtPlacement = Plan.Birds.AgeAtPlacement,
            Date = Comparison.Recommended.Date,
            MoveOut = Plan.MoveOut,
            Feeds = [.. Plan.Feeds.Phases.Select(phase => (phase.Name, phase.From, phase.DeliveryTime))],
        });
        double dayBefore = Comparison.Options.Min(option => option.DecideBy).DayNumber - Plan.Placed.DayNumber + Math.Floor(Plan.Birds.AgeAtPlacement.Days) - 1;
        double weighed = Plan.Growth.WeighIns?.Max(weighIn => weighIn.Age.Days) ?? 0;
        if (dayBefore >= 14 && dayBefore > weighed && Comparison.Options.Count > 1)
        {
            WeighIn = Age.FromDays(dayBefore);
            WeighInWorth = Comparison.WeighInValue(WeighIn, BirdsWeighed);
        }
    }

    public string File { get; }

    /// <summary>What looks wrong in the weigh-ins, which count all the same.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; }

    public HarvestComparison Comparison { get; }

    /// <summary>What every day between would bring; null where it was not asked for.</summary>
    public CalendarCost? Calendar { get; }

    /// <summary>The batch on two days; none where it was not asked for.</summary>
    public IReadOnlyList<HarvestSplit> Splits { get; }

    public BatchPlan Plan => Comparison.Plan;

    public IReadOnlyList<TimelineEntry> Timeline { get; }

    /// <summary>The day before the first deadline.</summary>
    public Age WeighIn { get; }

    /// <summary>What a weigh-in of thirty birds that day is worth; null where the birds are too young, were weighed later than that, or no choice is left.</summary>
    public Money? WeighInWorth { get; }

    /// <summary>Chicks that would have to be ordered for as many birds as the recommended day has; for the next batch.</summary>
    public ChickOrder Chicks => ChickOrder.Enough(
        Math.Max(1, (int)Math.Round(Comparison.Recommended.Head.Value)),
        Probability.FromFraction(0.8),
        ChickNeed.Of(Plan.ChicksLostInTransit, Plan.Birds.AgeAtPlacement, Comparison.Recommended.Age, Plan.Birds.Thereafter == Survival.WithoutLoss ? Survival.FastGrowingOutdoor : Plan.Birds.Thereafter));

    public IReadOnlyList<Caution> Cautions =>
    [
        .. Comparison.Cautions.Concat(Splits.Count > 0 ? HarvestSplit.Cautions : []).Concat(Timeline.Select(entry => entry.Caution).OfType<Caution>()).DistinctBy(caution => caution.Code),
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. HarvestComparison.Model.Citations.Concat(Plan.Growth.Prior.Model.Citations).Concat(Plan.Birds.Thereafter.Model.Citations).Concat(Plan.Feeding.Model.Model.Citations)
            .Concat(Plan.Plant.Dressing.Model.Citations).Concat(Plan.Plant.Dressing.IncludesCondemned || Plan.CondemnedBirds is not null ? [] : Condemnation.Model.Citations)
            .Concat(Plan.DeadOnArrival == RoadLoss.Usual ? RoadLoss.Model.Citations : []).Concat(Plan.Deboned.Fraction > 0 ? Plan.Lesions.Model.Citations : []).DistinctBy(source => source.Key),
    ];

    public static PlanAnswer To(PlanQuestion question, CancellationToken stop) => new(question, stop);

    public string CalendarText() => CalendarFile.Write(Plan.Name, Timeline, Plan.Placed.ToDateTime(TimeOnly.MinValue));
}
