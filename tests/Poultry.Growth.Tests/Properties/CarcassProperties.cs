using CsCheck;
using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Properties;

/// <summary>What holds for every batch, on 10,000 random ones.</summary>
public sealed class CarcassProperties
{
    private const int Batches = 10_000;

    private static readonly Gen<Batch> Any = Gen.Select(
        Gen.Select(Gen.Int[1, 60], Gen.Double[1, 5], Gen.Double[0, 0.2], Gen.Double[0, 24], Gen.Bool),
        Gen.Select(Gen.Double[60, 78], Gen.Double[0, 24], Gen.Double[0, 4], Gen.Double[0, 4], Gen.Double[0, 8]),
        Gen.Select(Gen.Double[0, 8], Gen.Double[0, 10], Gen.Double[0, 100], Gen.Int[0, 2], Gen.Int[0, 3]),
        (birds, plant, order) => new Batch(birds, plant, order));

    [Fact]
    [Trait("Speed", "Slow")]
    public void The_balance_closes_nothing_is_negative_and_packs_are_the_carcass_less_the_loss() => Any.Sample(
        batch =>
        {
            PlantReturn back = batch.Return();

            // Plain conditions: assertions that build expressions would take longer than the batches.
            back.Balance.Closes.Should().BeTrue();
            back.Balance.Lines.Where(line => line.Weight.Likely.Kilograms < 0).ShouldBeNone();
            Near(back.Balance.FullFed.Kilograms, batch.FullFedKilograms, 1e-9);
            double carcass = back.Balance.Carcass.Weight.Kilograms;
            double pieces = back.Lines.Sum(line => line.Pieces.Sum(piece => piece.Weight.Kilograms));
            double packed = back.Packs.Sum(pack => pack.Packed.Kilograms + pack.Loose.Kilograms) + back.NotPacked.Kilograms;
            double loss = back.Lines.Sum(line => line.CuttingLoss.Kilograms);
            Near(packed, pieces, 1e-6);
            Near(pieces + loss, carcass, 1e-6);
            back.Lines.SelectMany(line => line.Pieces).Where(piece => piece.Weight.Kilograms < 0).ShouldBeNone();
            back.Packs.Where(pack => pack.PacksSold < -1e-9 || pack.PacksLeft < -1e-9 || pack.PacksFrozen > pack.PacksLeft + 1e-9).ShouldBeNone();
            Near(back.Lines.Sum(line => line.ExpectedBirds), batch.Birds, 1e-6);
        },
        iter: Batches);

    /// <summary>The carcass by one line of arithmetic: the ratio times the live weight in the ratio's own state, once.</summary>
    [Fact]
    public void Shrink_counts_once_whatever_the_states() => Any.Sample(
        batch => Near(batch.Balance().Carcass.Weight.Kilograms, batch.CarcassKilograms, 1e-9), iter: Batches);

    [Fact]
    public void A_heavier_bird_never_gives_less_of_any_piece() => Gen.Select(Gen.Double[0.8, 3.5], Gen.Double[1.0, 1.5], Gen.Double[0.6, 1.4].Array[5]).Sample(
        (kilograms, factor, exponents) =>
        {
            if (exponents.Min() <= exponents.Max() - 1)
            {
                return;
            }

            Dictionary<string, double> own = CutSets.Rudn42Days.Pieces.Zip(exponents).ToDictionary(pair => pair.First.Name, pair => pair.Second);
            CutSet set = CutSets.Rudn42Days.Growing(own, CutSets.Rudn42DaysCarcass);
            IReadOnlyList<Probability> light = set.SharesAt(Mass.FromKilograms(kilograms)), heavy = set.SharesAt(Mass.FromKilograms(factor * kilograms));

            heavy.Zip(light).Where(pair => factor * pair.First.Fraction < pair.Second.Fraction * (1 - 1e-12)).ShouldBeNone();
        },
        iter: Batches);

    [Fact]
    public void Pounds_in_equal_kilograms_in() => Gen.Double[0.5, 6].Sample(kilograms =>
    {
        LiveWeight metric = LiveWeight.FullFed(Mass.FromKilograms(kilograms)), pounds = LiveWeight.FullFed(Mass.FromPounds(kilograms / 0.45359237));

        Dressings.For(BirdType.Fast).CarcassOf(pounds, LiveState.FullFed).Weight.Kilograms.Should().BeApproximately(
            Dressings.For(BirdType.Fast).CarcassOf(metric, LiveState.FullFed).Weight.Kilograms, 1e-12);
    });

    private static void Near(double found, double expected, double share) => found.Should().BeInRange(expected * (1 - share), expected * (1 + share));

    /// <summary>A random batch, and its carcass by plain arithmetic.</summary>
    private sealed record Batch(
        (int Birds, double Kilograms, double Cv, double WeighedHours, bool Hot) Flock,
        (double Percent, double RatioHours, double CondemnedLive, double CondemnedCarcass, double Trim) Plant,
        (double Giblets, double CuttingLoss, double CutPercent, int Rule, int Offers) Order)
    {
        public int Birds => Flock.Birds;

        public double FullFedKilograms => Flock.Birds * Flock.Kilograms / Kept(Flock.WeighedHours);

        public double CarcassKilograms => Plant.Percent / 100 * FullFedKilograms * Kept(Plant.RatioHours)
            * (1 - (Plant.CondemnedLive / 100)) * (1 - (Plant.CondemnedCarcass / 100)) * (1 - (Plant.Trim / 100)) * (Flock.Hot ? 1.03 : 1);

        private static double Kept(double hours) => 1 - (0.003 * hours);

        private DeliveredBirds Delivered => DeliveredBirds.Of(
            Flock.Birds, WeightDistribution.Of(Mass.FromKilograms(Flock.Kilograms), Flock.Cv), LiveState.OffFeed(Duration.FromHours(Flock.WeighedHours)));

        private PlantConditions Conditions => new()
        {
            Dressing = DressingRatio.Of(
                "own",
                LikelyRange<Probability>.Exactly(Probability.FromPercent(Plant.Percent)),
                CarcassBasis.Of(Flock.Hot ? CarcassCondition.Hot : CarcassCondition.Packed),
                LiveState.OffFeed(Duration.FromHours(Plant.RatioHours))),
            AtKilling = LiveState.OffFeed(Duration.FromHours(12)),
            Condemned = Condemnation.Of(Probability.FromPercent(Plant.CondemnedLive), Probability.FromPercent(Plant.CondemnedCarcass)),
            Trim = Probability.FromPercent(Plant.Trim),
            CuttingLoss = Probability.FromPercent(Order.CuttingLoss),
            Water = Flock.Hot ? ChillWater.Of(4, 1) : null,
            OtherParts = Order.Giblets > 0 ? [NamedPart.Of("giblets", Probability.FromPercent(Order.Giblets))] : [],
        };

        public CarcassBalance Balance() => CarcassBalance.Of(Delivered.Total, Conditions);

        public PlantReturn Return()
        {
            CutOrderLine cut = CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(Order.CutPercent));
            CutOrderLine whole = CutOrderLine.Of(null, Probability.FromFraction(1 - cut.ShareFraction));
            Mass limit = Mass.FromKilograms(Flock.Kilograms);
            CutOrder order = Order.Rule switch
            {
                0 => CutOrder.HeaviestFirst(cut, whole),
                1 => CutOrder.AsTheyCome(cut, whole),
                _ => CutOrder.ByWeight(CutOrderLine.Of(CutSets.Rudn42Days, limit, null), CutOrderLine.Of(null, null, limit)),
            };
            UnitPrice price = UnitPrice.FromAmountPerKilogram(9);
            PackOffer[] all =
            [
                PackOffer.ByWeight("whole", 1, price, Demand.Of(2, 5, 20)).Weighing(Mass.FromKilograms(1.5), null),
                PackOffer.ByWeight("whole", 1, price, Demand.Of(2, 5, 20)).Weighing(null, Mass.FromKilograms(1.5)).LeftOver(3, price),
                PackOffer.ByWeight("thigh", 4, price, Demand.Ordered(4)).Weighing(null, Mass.FromGrams(200)),
            ];
            return PlantReturn.Of(Delivered, Conditions, order, all[..Order.Offers]);
        }
    }
}
