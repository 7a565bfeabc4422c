using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>An invented batch and its buyers, for the tests of packs and sales.</summary>
internal static class SaleCase
{
    public static readonly LiveState TwelveHours = LiveState.OffFeed(Duration.FromHours(12));

    public static readonly PlantConditions Plant = new()
    {
        Dressing = DressingRatio.Of("own", LikelyRange<Probability>.Exactly(Probability.FromPercent(72)), CarcassBasis.Of(CarcassCondition.Packed), LiveState.FullFed),
        AtKilling = TwelveHours,
        Condemned = Condemnation.Of(Probability.FromPercent(1), Probability.FromPercent(2)),
        CuttingLoss = Probability.FromPercent(1),
    };

    public static readonly PlantCharges Charges = PlantCharges.Of(Money.Of(1.50), Money.Of(0.20));

    public static DeliveredBirds Flock(int birds = 300, double cv = 0.12) =>
        DeliveredBirds.Of(birds, WeightDistribution.OfSexes(Mass.FromKilograms(3.2), Mass.FromKilograms(2.7), Probability.FromFraction(0.5), cv), LiveState.FullFed);

    /// <summary>Birds of 3 kg alike: what becomes of them is arithmetic.</summary>
    public static DeliveredBirds Alike(int birds) => DeliveredBirds.Of(birds, WeightDistribution.Of(Mass.FromKilograms(3), 0), LiveState.FullFed);

    /// <summary>Carcasses are 70 % of the birds as they come: 2.1 kg of 3 kg.</summary>
    public static PlantConditions SeventyPercent(double condemnedPercent = 0, double cuttingLossPercent = 0, bool includesCondemned = false) => new()
    {
        Dressing = DressingRatio.Of(
            "own",
            LikelyRange<Probability>.Exactly(Probability.FromPercent(70)),
            CarcassBasis.Of(CarcassCondition.Packed),
            LiveState.FullFed,
            includesCondemned: includesCondemned),
        Condemned = Condemnation.Of(Probability.FromFraction(0), Probability.FromPercent(condemnedPercent)),
        CuttingLoss = Probability.FromPercent(cuttingLossPercent),
    };

    /// <summary>Two kinds of piece, two of each a bird.</summary>
    public static CutSet InTwo(string name, string first, double firstPercent, string second) => CutSet.Of(
        name,
        BackCut.InThePieces,
        [CutPiece.Of(first, 2, Probability.FromPercent(firstPercent)), CutPiece.Of(second, 2, Probability.FromPercent(100 - firstPercent))]);

    public static CutOrder CutHeaviest(double percent) => CutOrder.HeaviestFirst(
        CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(percent)), CutOrderLine.Of(null, Probability.FromPercent(100 - percent)));

    /// <summary>Every piece sells at its price without limit, drumsticks and frames above their worth too: what a price list alone says.</summary>
    public static IReadOnlyList<PackOffer> Unlimited =>
    [
        ByKilogram("whole", 1, 9, Demand.Unlimited), ByKilogram("breast", 2, 18, Demand.Unlimited), ByKilogram("thigh", 4, 11, Demand.Unlimited),
        ByKilogram("drumstick", 4, 9, Demand.Unlimited), ByKilogram("wing", 6, 9, Demand.Unlimited), ByKilogram("frame", 1, 3, Demand.Unlimited),
    ];

    /// <summary>The same prices where whole birds, breasts and thighs sell well, drumsticks and frames hardly.</summary>
    public static IReadOnlyList<PackOffer> Limited =>
    [
        ByKilogram("whole", 1, 9, Demand.Of(150, 200, 250)), ByKilogram("breast", 2, 18, Demand.Of(80, 120, 160)), ByKilogram("thigh", 4, 11, Demand.Of(40, 60, 80)),
        ByKilogram("drumstick", 4, 9, Demand.Of(10, 20, 30)), ByKilogram("wing", 6, 9, Demand.Of(10, 20, 40)), ByKilogram("frame", 1, 3, Demand.Of(5, 15, 40)),
    ];

    public static PackOffer ByKilogram(string piece, int perPack, double price, Demand demand) =>
        PackOffer.ByWeight(piece, perPack, UnitPrice.FromAmountPerKilogram(price), demand);
}
