using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

/// <summary>Packs read off a table against the exact count of the same birds, for the demo's bands of weight and cuts.</summary>
public class PackSurfaceTests
{
    private static readonly BatchPlan Plan = BatchFile.Read(Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-batch.json")).Plan!;
    private static readonly Age Killing = Age.FromDays(58);
    private static readonly LiveState State = LiveState.OffFeed(Duration.FromHours(10), Duration.FromHours(1.5));
    private static readonly (double Low, double High) Means = (2.55, 3.75), Heads = (184, 300);
    private static readonly PackSurface Surface = new(Plan, State, Flock, Means, Heads);

    [Theory]
    [InlineData(2.62, 211)]
    [InlineData(2.79, 297)]
    [InlineData(2.91, 268)]
    [InlineData(3.04, 242)]
    [InlineData(3.11, 263)]
    [InlineData(3.22, 271)]
    [InlineData(3.38, 229)]
    [InlineData(3.66, 255)]
    public void All_meat_and_its_worth_are_within_half_a_percent_of_the_exact_count(double kilograms, int head)
    {
        PlantReturn exact = PlantReturn.Of(
            DeliveredBirds.Of(head, Flock(kilograms), LiveState.FullFed),
            new() { Dressing = Plan.Plant.Dressing, AtKilling = State, CuttingLoss = Plan.Plant.CuttingLoss },
            Plan.Order,
            Plan.Offers,
            Plan.Cutting);
        double[] read = new double[(2 * Plan.Offers.Count) + 1];
        Surface.At(kilograms, head, read);
        double Worth(Func<int, double> packs, Func<int, double> weight) => Plan.Offers.Select((offer, at) =>
            packs(at) * (offer.PricePerPack?.Amount ?? (weight(at) * offer.Price!.Value.AmountPerKilogram))).Sum();

        double worth = Worth(at => exact.Packs[at].ExpectedPacks, at => exact.Packs[at].PackWeight.Kilograms);
        Worth(at => read[2 * at], at => read[(2 * at) + 1]).Should().BeApproximately(worth, 0.005 * worth);
        read[^1].Should().BeApproximately((exact.Revenue - exact.Value).Amount, Plan.Cutting.CuttingPerBird.Amount, "40 % of the birds are a whole number of birds");
        double birds = exact.Packs.Where(pack => pack.Offer.Piece == CutOrderLine.WholeBird).Sum(pack => pack.ExpectedPacks);
        Plan.Offers.Select((offer, at) => offer.Piece == CutOrderLine.WholeBird ? read[2 * at] : 0).Sum().Should().BeApproximately(birds, 1, "as many are whole birds");
        foreach ((PackSale pack, int at) in exact.Packs.Select((pack, at) => (pack, at)))
        {
            read[2 * at].Should().BeApproximately(pack.ExpectedPacks, 0.01 * head, "no kind of pack is off by more than a bird in a hundred");
        }
    }

    [Fact]
    public void A_batch_of_thousands_is_read_off_the_line_of_a_small_one()
    {
        double[] read = new double[(2 * Plan.Offers.Count) + 1];
        new PackSurface(Plan, State, Flock, Means, (1800, 3000)).At(3.03, 2650, read);
        PlantReturn exact = PlantReturn.Of(
            DeliveredBirds.Of(2650, Flock(3.03), LiveState.FullFed),
            new() { Dressing = Plan.Plant.Dressing, AtKilling = State, CuttingLoss = Plan.Plant.CuttingLoss },
            Plan.Order,
            Plan.Offers,
            Plan.Cutting);

        foreach ((PackSale pack, int at) in exact.Packs.Select((pack, at) => (pack, at)))
        {
            read[2 * at].Should().BeApproximately(pack.ExpectedPacks, Math.Max(3, 0.006 * pack.ExpectedPacks), pack.Offer.ToString());
        }

        read[^1].Should().BeApproximately((exact.Revenue - exact.Value).Amount, 0.002 * (exact.Revenue - exact.Value).Amount);
    }

    private static WeightDistribution Flock(double kilograms) => Plan.Growth.WeightsAt(Killing, Mass.FromKilograms(kilograms));
}
