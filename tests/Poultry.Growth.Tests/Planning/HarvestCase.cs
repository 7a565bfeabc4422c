using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Planning;

/// <summary>An invented batch: 300 chicks, three weigh-ins, three days offered, whole birds and cuts with limited demand.</summary>
internal static class HarvestCase
{
    public static readonly DateOnly Placed = new(2027, 4, 12);

    public static BatchPlan Plan(
        Survival? survival = null, LargeLoss? largeLoss = null, IReadOnlyList<PackOffer>? offers = null, CutOrder? order = null, params IReadOnlyList<OfferedDate> dates) => new()
    {
        Name = "invented",
        Placed = Placed,
        Birds = HeadCountPath.Expected(300, Age.FromDays(1), survival ?? Survival.FastGrowingOutdoor),
        LargeLoss = largeLoss ?? LargeLoss.Never,
        Growth = Projection.Of(
            WeighInSeries.Of(
                WeighIn.Mean(Age.FromDays(14), Mass.FromGrams(390), 20),
                WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(720), 20),
                WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1150), 20)),
            GrowthPrior.FastGrowingOutdoor(Sex.Mixed)),
        Feeds = FeedingPlan.Of(
            new FeedPhase("starter", Age.Hatch, Age.FromDays(21), SpecificEnergy.FromKilocaloriesPerGram(2.95)) { Price = UnitPrice.FromAmountPerKilogram(0.80) },
            new FeedPhase("grower", Age.FromDays(21), null, SpecificEnergy.FromKilocaloriesPerGram(3.05)) { Price = UnitPrice.FromAmountPerKilogram(0.70) }),
        Feeding = new()
        {
            Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(16))), HatchWeight = Mass.FromGrams(42),
        },
        Plant = new() { Dressing = Dressings.For(BirdType.Fast) },
        Order = order ?? CutOrder.AllWhole,
        Offers = offers ?? [PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(9.50), Demand.Of(200, 260, 320)).LeftOver(60, UnitPrice.FromAmountPerKilogram(6))],
        Dates = dates.Count > 0 ? dates : [On(49), On(56), On(63)],
        Costs = new()
        {
            Chick = Money.Of(2), Bedding = Money.Of(60), Fixed = Money.Of(150), LabourHour = Money.Of(18), LabourADay = Duration.FromMinutes(50),
        },
        Shelters = ShelterSpace.Of(Area.FromSquareMeters(45), StockingDensity.FromKilogramsPerSquareMeter(20), Duration.FromDays(7)),
        WantedWeights = (Mass.FromKilograms(2.2), Mass.FromKilograms(3.2)),
    };

    public static OfferedDate On(int days, PlantTerms? terms = null) => new()
    {
        Date = Placed.AddDays(days - 1), Terms = terms ?? new() { PerBird = Money.Of(5), FewestBirds = 100, MostBirds = 320 }, Road = Duration.FromHours(1.5),
    };

    /// <summary>The same batch with another plant.</summary>
    public static BatchPlan With(this BatchPlan plan, DressingRatio ratio) => Copy(plan, new() { Dressing = ratio, Condemned = Condemnation.None }, RoadLoss.None, null);

    /// <summary>The same batch with birds lost on its last day, in percent.</summary>
    public static BatchPlan With(this BatchPlan plan, double? dead = null, double? condemned = null, double? mostCondemned = null) => Copy(
        plan,
        condemned is { } likely ? new() { Dressing = plan.Plant.Dressing, Condemned = Condemnation.Of(default, Probability.FromPercent(likely)) } : plan.Plant,
        dead is { } onRoad ? RoadLoss.Of(LikelyRange<Probability>.Exactly(Probability.FromPercent(onRoad))) : plan.DeadOnArrival,
        condemned is { } share ? LikelyRange<Probability>.Of(Probability.FromPercent(share), Probability.FromPercent(share), Probability.FromPercent(mostCondemned ?? share)) : null);

    private static BatchPlan Copy(BatchPlan plan, PlantConditions plant, RoadLoss dead, LikelyRange<Probability>? condemned) => new()
    {
        Name = plan.Name,
        Placed = plan.Placed,
        Birds = plan.Birds,
        LargeLoss = plan.LargeLoss,
        Growth = plan.Growth,
        Feeds = plan.Feeds,
        Feeding = plan.Feeding,
        Plant = plant,
        DeadOnArrival = dead,
        CondemnedBirds = condemned,
        Order = plan.Order,
        Offers = plan.Offers,
        Dates = plan.Dates,
        Costs = plan.Costs,
        Shelters = plan.Shelters,
    };
}
