// One batch walks through every room of the house, a line a room. The farm, the birds and every figure are invented.
using Poultry.Growth.Carcass;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

string notebook = "age_d,mean_weight_lb,sd_lb,birds\n14,0.75,0.08,20\n21,1.48,0.15,20\n28,2.37,0.26,20\n35,3.40,0.38,20\n";
WeighInSeries weighIns = WeighInFile.ReadText(new StringReader(notebook), "notebook.csv").Series!;
Console.WriteLine($"Files:    {weighIns}");
Console.WriteLine($"Weighing: {Uniformity.ByAge(weighIns)[^1]}");

Age placed = Age.FromDays(1), killed = Age.FromDays(56);
Projection growth = Projection.Of(weighIns, GrowthPrior.FastGrowingOutdoor(Sex.Mixed));
Estimate<Mass> weight = growth.MeanAt(killed);
Console.WriteLine($"Fitting:  {weight} at {killed}; {weight.Cautions[0]}");
IGrowthCurve curve = growth.Curve;
Console.WriteLine($"Curves:   {curve.AgeAt(Mass.FromPounds(5.5))}");
HeadCountPath birds = HeadCountPath.Expected(300, placed, Survival.FastGrowingOutdoor);
Console.WriteLine($"Flock:    more than 270 of 300 at {killed} with a chance of {birds.ChanceOfMoreThan(270, killed)}");

FeedingPlan feeds = FeedingPlan.Of(
    new FeedPhase("starter", Age.Hatch, Age.FromDays(21), SpecificEnergy.FromKilocaloriesPerGram(3.0)) { Price = UnitPrice.FromAmountPerPound(0.36) },
    new FeedPhase("grower", Age.FromDays(21), null, SpecificEnergy.FromKilocaloriesPerGram(3.1)) { Price = UnitPrice.FromAmountPerPound(0.32) });
FeedingConditions outdoors = new() { Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(14))), HatchWeight = Mass.FromGrams(42) };
Console.WriteLine($"Feeding:  {FeedForecast.For(curve, birds, feeds, outdoors, killed).Total.BatchFeed} in all");
Area shelters = Area.FromSquareFeet(480);
Console.WriteLine($"Housing:  {DensityPath.Of(shelters, curve, birds, new Keeping { System = RearingSystem.FreeRange }).At(killed).Verdict.Density} in the shelters");

PlantConditions plant = new() { Dressing = Dressings.For(BirdType.Fast), AtKilling = LiveState.OffFeed(Duration.FromHours(10)) };
PackOffer whole = PackOffer.ByWeight("whole", 1, UnitPrice.FromAmountPerPound(4.50), Demand.Of(180, 240, 300));
CutOrder order = CutOrder.HeaviestFirst(CutOrderLine.Of(null, Probability.FromPercent(100)));
Console.WriteLine($"Carcass:  {PlantReturn.Of(DeliveredBirds.Of(270, WeightDistribution.Of(weight.Value, 0.10), LiveState.FullFed), plant, order, [whole])}");
Console.WriteLine($"Myopathy: {PlanningRisk.Published.For(new BatchAtRisk { KillAge = killed }).Among(270)} with a green tender");

DateOnly day = new(2027, 4, 12);
OfferedDate On(Age age) => new() { Date = day.AddDays((int)(age.Days - placed.Days)), Terms = new() { PerBird = Money.Of(5.25) } };
HarvestComparison dates = HarvestComparison.Of(new BatchPlan
{
    Name = "Meadow 3", Placed = day, Birds = birds, Growth = growth, Feeds = feeds, Feeding = outdoors, Plant = plant, Order = order, Offers = [whole],
    Dates = [On(Age.FromDays(49)), On(killed), On(Age.FromDays(63))], Costs = new() { Chick = Money.Of(1.95), Fixed = Money.Of(300) },
});
Console.WriteLine($"Planning: {dates.Recommendation}");
