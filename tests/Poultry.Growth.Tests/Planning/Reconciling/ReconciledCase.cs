using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Planning;

/// <summary>A batch of 300 birds killed at 56 d, and sheets of the plant for it.</summary>
internal static class ReconciledCase
{
    public static readonly DateOnly Killed = HarvestCase.Placed.AddDays(55);

    /// <summary>Enough draws for what is asked here.</summary>
    public static readonly HarvestOptions Few = new() { Draws = 400 };

    public static PlantSheet Sheet(int delivered, double? live = null, double? packed = null, double? feed = null) => new()
    {
        Killed = Killed,
        Delivered = delivered,
        LiveWeight = live is { } weight ? Mass.FromKilograms(weight) : null,
        FeedEaten = feed is { } eaten ? Mass.FromKilograms(eaten) : null,
        Packs = packed is { } kilograms ? [PackedLine.Of("whole", 1, delivered, Mass.FromKilograms(kilograms))] : [],
    };

    public static BatchPlan Plan(IReadOnlyList<Deaths>? deaths = null, IReadOnlyList<WeighIn>? weighIns = null, FeedRecord? record = null, double cuttingLoss = 0)
    {
        BatchPlan plan = HarvestCase.Plan(dates: HarvestCase.On(56));
        return new()
        {
            Name = plan.Name,
            Placed = plan.Placed,
            Birds = HeadCountPath.Recorded(300, Age.FromDays(1), deaths ?? [], Survival.FastGrowingOutdoor),
            LargeLoss = LargeLoss.Never,
            Growth = weighIns is null ? plan.Growth : Projection.Of(WeighInSeries.Of(weighIns), plan.Growth.Prior),
            Feeds = plan.Feeds,
            Feeding = plan.Feeding,
            FeedRecord = record,
            Plant = new() { Dressing = plan.Plant.Dressing, CuttingLoss = Probability.FromPercent(cuttingLoss) },
            Order = plan.Order,
            Offers = plan.Offers,
            Dates = plan.Dates,
            Costs = plan.Costs,
        };
    }
}
