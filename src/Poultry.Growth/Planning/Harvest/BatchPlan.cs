using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>All that is decided and known of a batch: what the choice of the day of killing is made on.</summary>
public sealed class BatchPlan
{
    private Projection growth = null!;
    private FeedRecord? feedRecord;
    private IReadOnlyList<OfferedDate> dates = null!;

    /// <summary>As the farm calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The day the chicks came or come.</summary>
    public required DateOnly Placed { get; init; }

    /// <summary>The birds: how many were placed, how old they were, what died so far and is expected to die.</summary>
    public required HeadCountPath Birds { get; init; }

    /// <summary>Rare large losses on top of it.</summary>
    /// <value>One batch in thirty: an assumption, and named as one.</value>
    public LargeLoss LargeLoss { get; init; } = LargeLoss.OneBatchInThirty;

    /// <summary>What the birds will weigh, and how sure that is.</summary>
    public required Projection Growth { get => growth; init => growth = value; }

    /// <summary>The feeds, their energy and their price.</summary>
    public required FeedingPlan Feeds { get; init; }

    /// <summary>How the birds are kept and fed.</summary>
    public required FeedingConditions Feeding { get; init; }

    /// <summary>What they ate so far; null where it was not written down.</summary>
    public FeedRecord? FeedRecord { get => feedRecord; init => feedRecord = value; }

    /// <summary>Dressing, condemnation, loss in cutting.</summary>
    public required PlantConditions Plant { get; init; }

    /// <summary>Birds dead on arrival.</summary>
    /// <value>As in large flocks in Brazil.</value>
    public RoadLoss DeadOnArrival { get; init; } = RoadLoss.Usual;

    /// <summary>The share of the birds delivered that the inspector takes out, alive or killed, with its range; of no account where the dressing ratio includes it.</summary>
    /// <value>Null: as <see cref="PlantConditions.Condemned"/> says, without a range.</value>
    public LikelyRange<Probability>? CondemnedBirds { get; init; }

    /// <summary>Which birds stay whole and which are cut.</summary>
    public required CutOrder Order { get; init; }

    /// <summary>The packs, their prices and what sells.</summary>
    public required IReadOnlyList<PackOffer> Offers { get; init; }

    /// <summary>What cutting and packing cost.</summary>
    public PlantCharges Cutting { get; init; } = PlantCharges.None;

    /// <summary>The days on which the plant would kill the batch; at least one.</summary>
    public required IReadOnlyList<OfferedDate> Dates { get => dates; init => dates = value; }

    /// <summary>What else the batch costs.</summary>
    public required BatchCosts Costs { get; init; }

    /// <summary>How far all selling prices may lie from those stated: 1 is as stated.</summary>
    public LikelyRange<double> Prices { get; init; } = LikelyRange<double>.Exactly(1);

    /// <summary>The floor of the shelters; null where it is not stated.</summary>
    public ShelterSpace? Shelters { get; init; }

    /// <summary>When the birds leave the brooder: shelter-days count from it.</summary>
    public Age MoveOut { get; init; } = Age.FromDays(21);

    /// <summary>The share of birds of which the plant cuts out breast and tenders: only there dead tenders cost meat at the plant.</summary>
    public Probability Deboned { get; init; }

    /// <summary>Weights of single birds that customers want; null where any will do.</summary>
    public (Mass Low, Mass High)? WantedWeights { get; init; }

    /// <summary>Dead tenders: the published planning model or the farm's own rate. The log of disturbances never changes the margin.</summary>
    public PlanningRisk Lesions { get; init; } = PlanningRisk.Published;

    /// <summary>Whether the farm's figures of meat hold lesions already.</summary>
    public TrimRecord LesionsInFigures { get; init; } = TrimRecord.SoundBirds;

    /// <summary>What packs of cut pieces weigh of what the shares of the set say: no spread between batches is published, so it is the user's own range.</summary>
    public LikelyRange<double> CutWeights { get; init; } = LikelyRange<double>.Exactly(1);

    /// <summary>The share of chicks ordered that come dead: it counts for the next order.</summary>
    public Probability ChicksLostInTransit { get; init; }

    /// <summary>What the farm's finished batches taught of this one; null where no history was given.</summary>
    public FarmLearning? Farm { get; init; }

    /// <summary>What came from where: shipped, stated, or learned from own batches.</summary>
    public IReadOnlyList<PlanOrigin> Origins => PlanOrigin.Of(this);

    /// <summary>How old the birds are on a date.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The date lies before hatch.</exception>
    public Age AgeOn(DateOnly date) => Age.On(date, Placed, Birds.AgeAtPlacement);

    /// <summary>How far feed is worked out: to an age, or to a record of feed that is later, as when days before it are compared.</summary>
    internal Age FeedUntil(Age last) => FeedRecord is { } record && record.Age > last
        ? Birds.AgeAtPlacement + Duration.FromDays(Math.Ceiling((record.Age - Birds.AgeAtPlacement).Days))
        : last;

    /// <summary>As in <c>June batch: 500 birds placed 2027-04-27, 3 days offered</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Name}: {Birds.Placed} birds placed {Placed:yyyy-MM-dd}, {CountText.Of(Dates.Count, "day")} offered");

    /// <summary>The same plan as it stood before a day, for that day only.</summary>
    internal BatchPlan Before(OfferedDate day, Projection known, FeedRecord? recorded)
    {
        BatchPlan plan = (BatchPlan)MemberwiseClone();
        (plan.growth, plan.feedRecord, plan.dates) = (known, recorded, [day]);
        return plan;
    }
}
