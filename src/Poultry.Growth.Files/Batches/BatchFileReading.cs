using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a batch file and the files that it names: its sections, or every problem at once.</summary>
public sealed class BatchFileReading
{
    private readonly Lazy<string?> planMissing;

    internal BatchFileReading(string file) => (File, planMissing) = (file, new(Missing));

    /// <summary>The file, as problems call it.</summary>
    public string File { get; }

    /// <summary>The birds; null where there is any problem.</summary>
    public BatchFlock? Flock { get; internal init; }

    /// <summary>Their weights; null where there is any problem.</summary>
    public BatchWeights? Weights { get; internal init; }

    /// <summary>Their feed; null where there is any problem.</summary>
    public BatchFeeding? Feeding { get; internal init; }

    /// <summary>Plant, packs and costs; null where there is any problem, or the file names no plant.</summary>
    public BatchHarvest? Harvest { get; internal init; }

    /// <summary>What the farm's finished batches of this kind teach; null where no history is named, or there is any problem.</summary>
    public FarmLearning? Farm { get; internal init; }

    /// <summary>The prior that the file states, before what the farm's finished batches make of it; null as that of <see cref="Weights"/> is.</summary>
    public GrowthPrior? StatedPrior => Farm?.Growth.Shipped ?? Weights?.Prior;

    /// <summary>Strain, system and sex, as the file or its weigh-ins state them; null where there is any problem.</summary>
    public BatchKind? Kind => Flock is null ? null : BatchHistorySection.KindOf(Flock, Weights!);

    /// <summary>When the birds leave the brooder, as the temperatures say; else the usual age.</summary>
    internal Age MoveOut => Feeding!.Conditions.Temperatures.MoveOut ?? Age.FromDays(21);

    /// <summary>The plan that the file makes; null where something for it is missing, which <see cref="PlanMissing"/> says.</summary>
    public BatchPlan? Plan => PlanMissing is null ? MadePlan() : null;

    /// <summary>What a plan needs and the file does not say; null where nothing is missing.</summary>
    public string? PlanMissing => planMissing.Value;

    /// <summary>The feed that is not there for birds that come on a day and go on the last of others; null where there is enough. A plan looks a day beyond the last one offered.</summary>
    internal string? FeedMissing(DateOnly placed, IReadOnlyList<OfferedDate> dates)
    {
        IReadOnlyList<FeedPhase> phases = Feeding!.Plan.Phases;
        Age from = Flock!.HeadCount.AgeAtPlacement, to = Age.On(dates.Max(day => day.Date).AddDays(1), placed, from);
        return phases[0].From > from || phases[^1].To < to
            ? "feed phases from " + from + " to " + to + ", a day beyond the last one offered: they go from " + phases[0].From + (phases[^1].To is { } end ? " to " + end : "")
            : null;
    }

    /// <summary>Everything that cannot be read, file by file in the order of each; empty where the sections are there.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>batch.json: 3 problems</c>, in every culture.</summary>
    public override string ToString() => File + ": "
        + (Problems.Count == 0 ? Flock!.Name ?? "a batch" : NumberText.Counted(Problems.Count, "problem"));

    /// <summary>The plan of such a batch as a season raises it; only where nothing is missing.</summary>
    internal BatchPlan PlanFor(BatchStart start) => MadePlan(start);

    private string? Missing() => Problems.Count > 0 ? "the file has problems"
        : Harvest is null ? "sections plant and selling: days offered, dressing, packs and prices"
        : Flock?.Placed is null ? "placed: the day the chicks come"
        : Weights?.Prior is null ? "weights with a prior or weigh-ins: a table says nothing about how sure it is"
        : FeedMissing(Flock.Placed.Value, Harvest.Dates) ?? Unfed(MadePlan());

    /// <summary>Why nothing can be said of the weights of a plan or their feed, as of birds that shrink; null where it can.</summary>
    private static string? Unfed(BatchPlan plan)
    {
        Age last = plan.AgeOn(plan.Dates.Max(date => date.Date).AddDays(1));
        try
        {
            foreach (OfferedDate date in plan.Dates)
            {
                // As wide as a plan looks.
                _ = plan.Growth.MeanAt(plan.AgeOn(date.Date), level: 0.999);
            }

            _ = FeedForecast.For(plan.Growth.Curve, plan.Birds, plan.Feeds, plan.Feeding, last);
            return null;
        }
        catch (ArgumentException refused)
        {
            (string fault, string expected) = ProblemList.Said(refused, "not the weights that are projected");
            return expected + ", and " + fault;
        }
    }

    private BatchPlan MadePlan(BatchStart? start = null) => new()
    {
        Name = Flock!.Name ?? "batch",
        Placed = start?.Placed ?? Flock.Placed!.Value,
        Birds = start is { IsTheFilesOwn: false } ? HeadCountPath.Expected(Flock.HeadCount.Placed, Flock.HeadCount.AgeAtPlacement, Flock.HeadCount.Thereafter) : Flock.HeadCount,
        ChicksLostInTransit = Flock.ChicksLostInTransit,
        Growth = Weights!.WeighIns?.Series is { } weighed && start is not { IsTheFilesOwn: false } ? Projection.Of(weighed, Weights.Prior!) : Projection.Of(Weights.Prior!),
        Feeds = Feeding!.Plan,
        Feeding = start?.Outside is { } outside ? Feeding.Conditions.At(Temperatures.HouseThen(MoveOut, Temperatures.Constant(outside))) : Feeding.Conditions,
        FeedRecord = start is { IsTheFilesOwn: false } ? null : Feeding.Record,
        Plant = Harvest!.Plant,
        CondemnedBirds = Harvest.CondemnedBirds,
        DeadOnArrival = Harvest.DeadOnArrival,
        Order = Harvest.Order,
        Offers = Harvest.Offers,
        Cutting = Harvest.Cutting,
        Dates = start?.Dates ?? Harvest.Dates,
        Costs = Harvest.Costs,
        Prices = Harvest.Prices,
        CutWeights = Harvest.CutWeights,
        Shelters = Harvest.Shelters,
        MoveOut = MoveOut,
        WantedWeights = Harvest.WantedWeights,
        Deboned = Harvest.Deboned,
        Lesions = Farm?.Lesions is { } found ? PlanningRisk.Learned(found) : PlanningRisk.Published,
        Farm = Farm,
    };
}
