using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>What is missing or makes no sense is refused where it is given, by name, and not found out later.</summary>
public sealed class RefusedCarcassArgumentsTests
{
    private static readonly DressingRatio Ratio = SaleCase.Plant.Dressing;
    private static readonly LiveWeight Live = LiveWeight.FullFed(Mass.FromKilograms(1000));
    private static readonly Mass TwoKilograms = Mass.FromKilograms(2);

    public static TheoryData<string, Action> Missing => new()
    {
        { "live", () => CarcassBalance.Of(null!, SaleCase.Plant) },
        { "plant", () => CarcassBalance.Of(Live, null!) },
        { "exponents", () => CutSets.Rudn42Days.Growing(null!, TwoKilograms) },
        { "basis", () => CarcassWeight.Of(TwoKilograms, null!) },
        { "ratio", () => DressingRatio.Of("own", null!, Ratio.Basis, LiveState.FullFed) },
        { "basis", () => DressingRatio.Of("own", Ratio.Ratio, null!, LiveState.FullFed) },
        { "measuredOn", () => DressingRatio.Of("own", Ratio.Ratio, Ratio.Basis, null!) },
        { "live", () => Ratio.CarcassOf(null!) },
        { "own", () => Ratio.PooledWith(null!) },
        { "state", () => LiveWeight.Of(TwoKilograms, null!) },
        { "state", () => Live.In(null!) },
        { "set", () => CutAdvice.Of(SaleCase.Alike(10), SaleCase.Plant, null!, SaleCase.Limited) },
        { "weights", () => DeliveredBirds.Of(10, null!, LiveState.FullFed) },
        { "demand", () => PackOffer.ByPack("front", 2, Money.Of(1), null!) },
        { "birds", () => PlantReturn.Of(null!, SaleCase.Plant, CutOrder.AllWhole, []) },
        { "plant", () => PlantReturn.Of(SaleCase.Alike(10), null!, CutOrder.AllWhole, []) },
        { "order", () => PlantReturn.Of(SaleCase.Alike(10), SaleCase.Plant, null!, []) },
        { "offers", () => PlantReturn.Of(SaleCase.Alike(10), SaleCase.Plant, CutOrder.AllWhole, null!) },
    };

    public static TheoryData<string, Action> Senseless => new()
    {
        { "pieces", () => CutSet.Of("one", BackCut.InThePieces, [CutPiece.Of("whole", 1, Probability.FromFraction(1))]) },
        { "reference", () => CutSets.Rudn42Days.Growing(CutSets.TwoPointExponents, Mass.Zero) },
        { "carcass", () => CutSets.Rudn42Days.SharesAt(Mass.Zero) },
        { "ratio", () => Dressing(39.9, 70) },
        { "ratio", () => Dressing(70, 95.1) },
        { "price", () => PackOffer.ByPack("front", 2, Money.Of(-0.01), Demand.Unlimited) },
        { "to", () => SaleCase.Limited[0].Weighing(TwoKilograms, TwoKilograms) },
        { "cuttingPerBird", () => PlantCharges.Of(Money.Of(-0.01), Money.Zero) },
        { "perPack", () => PlantCharges.Of(Money.Zero, Money.Of(-0.01)) },
        { "plant", () => PlantReturn.Of(SaleCase.Alike(10), SaleCase.SeventyPercent(cuttingLossPercent: 50.1), CutOrder.AllWhole, []) },
    };

    [Theory]
    [MemberData(nameof(Missing))]
    public void What_is_missing_is_named(string name, Action call) => call.Should().Throw<ArgumentNullException>().WithParameterName(name);

    [Theory]
    [MemberData(nameof(Senseless))]
    public void What_makes_no_sense_is_named(string name, Action call) => call.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(name);

    private static DressingRatio Dressing(double low, double high) => DressingRatio.Of(
        "own", LikelyRange<Probability>.Of(Probability.FromPercent(low), Probability.FromPercent(70), Probability.FromPercent(high)), Ratio.Basis, LiveState.FullFed);
}
