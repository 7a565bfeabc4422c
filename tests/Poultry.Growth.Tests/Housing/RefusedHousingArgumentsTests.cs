using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Floors, grounds, crates and flocks that cannot be are refused by the name under which they were given.</summary>
public sealed class RefusedHousingArgumentsTests
{
    private static readonly Keeping Any = new();
    private static readonly Area Floor = Area.FromSquareMeters(10);
    private static readonly Mass Two = Mass.FromKilograms(2);
    private static readonly MoveSchedule Daily = MoveSchedule.Steady(1);
    private static readonly HeadCountPath Heads = HeadCountPath.Constant(100);
    private static readonly DensityPath Path = DensityPath.Of(Floor, Holding.Curve, Heads, Any);
    private static readonly PasturePlan Batch = PasturePlan.Of(Floor, 1, 100, Daily, Age.FromDays(21), Age.FromDays(56));
    private static readonly Duration Week = Duration.FromDays(7);

    public static TheoryData<string, Action> Senseless { get; } = new()
    {
        { "movesPerDay", () => MoveSchedule.Steady(24.1) },
        { "to", () => Daily.Positions(Age.FromDays(30), Age.FromDays(29.9)) },
        { "moves", () => PasturePlan.Of(Floor, 1, 100, null!, Age.FromDays(21), Age.FromDays(56)) },
        { "shelter", () => PasturePlan.Of(Area.Zero, 1, 100, Daily, Age.FromDays(21), Age.FromDays(56)) },
        { "shelters", () => PasturePlan.Of(Floor, 0, 100, Daily, Age.FromDays(21), Age.FromDays(56)) },
        { "birds", () => PasturePlan.Of(Floor, 1, 0, Daily, Age.FromDays(21), Age.FromDays(56)) },
        { "to", () => PasturePlan.Of(Floor, 1, 100, Daily, Age.FromDays(21), Age.FromDays(1022)) },
        { "batch", () => PastureSeason.Of(null!, 1, Week, Week) },
        { "batches", () => PastureSeason.Of(Batch, 0, Week, Week) },
        { "batches", () => PastureSeason.Of(Batch, 401, Week, Week) },
        { "interval", () => PastureSeason.Of(Batch, 1, -Week, Week) },
        { "interval", () => PastureSeason.Of(Batch, 1, Duration.FromDays(367), Week) },
        { "rest", () => PastureSeason.Of(Batch, 1, Week, -Week) },
        { "rest", () => PastureSeason.Of(Batch, 1, Week, Duration.FromDays(3661)) },
        { "yearlyLimit", () => NitrogenBalance.BirdsPerHectareAndYear(AreaDensity.Zero, Two) },
        { "perBird", () => NitrogenBalance.BirdsPerHectareAndYear(AreaDensity.FromKilogramsPerSquareMeter(1), Mass.Zero) },
        { "survival", () => ChicksToPlace.For(100, null!, Age.Hatch, Age.FromDays(7)) },
        { "end", () => ChicksToPlace.For(100, Survival.WithoutLoss, Age.FromDays(8), Age.FromDays(7)) },
        { "curve", () => DensityPath.Of(Floor, null!, Heads, Any) },
        { "heads", () => DensityPath.Of(Floor, Holding.Curve, null!, Any) },
        { "keeping", () => DensityPath.Of(Floor, Holding.Curve, Heads, null!) },
        { "floor", () => DensityPath.Of(Area.Zero, Holding.Curve, Heads, Any) },
        { "to", () => Path.FirstOver(Age.FromDays(7), Age.FromDays(6)) },
        { "to", () => Path.FirstOver(Age.FromDays(7), Age.FromDays(1008)) },
        { "draws", () => Path.ChanceOver(null!, 10) },
        { "birds", () => EquipmentNeed.For(0, Two, Any) },
        { "weight", () => EquipmentNeed.For(10, Mass.Zero, Any) },
        { "keeping", () => EquipmentNeed.For(10, Two, null!) },
        { "keeping", () => StockingVerdict.Of(Floor, 10, Two, null!) },
        { "birds", () => StockingVerdict.Of(Floor, int.MaxValue, Two, Any) },
        { "days", () => CumulativeMortality.Of(null!) },
        { "limits", () => LimitVerdict.Of(null!, Any) },
        { "keeping", () => LimitVerdict.Of(LimitBook.Shipped, null!) },
        { "standard", () => CrateLoading.Of(null!, Floor, Two) },
        { "crate", () => CrateLoading.Of(CrateStandard.Eu2005, Area.Zero, Two) },
        { "standard", () => CrateLoading.Of(null!, Floor, WeightDistribution.Of(Two, 0.1)) },
        { "weights", () => CrateLoading.Of(CrateStandard.Eu2005, Floor, (WeightDistribution)null!) },
        { "crate", () => CrateLoading.Of(CrateStandard.Eu2005, Area.Zero, WeightDistribution.Of(Two, 0.1)) },
        { "rule", () => CrateLoading.Of(CrateStandard.Eu2005, Floor, Two).BirdsInHeat(null!, Temperature.FromDegreesCelsius(20)) },
        { "above", () => HeatRule.Of(Temperature.FromDegreesCelsius(-20.1), Probability.FromPercent(0), "the plant's") },
        { "fewer", () => HeatRule.Of(Temperature.FromDegreesCelsius(20), Probability.FromPercent(99.5), "the plant's") },
    };

    [Theory]
    [MemberData(nameof(Senseless), DisableDiscoveryEnumeration = true)]
    public void What_makes_no_sense_is_refused_by_name(string argument, Action call) => call.Should().Throw<ArgumentException>().WithParameterName(argument);

    [Fact]
    public void A_rule_for_frost_is_a_rule() =>
        HeatRule.Of(Temperature.FromDegreesCelsius(-5), Probability.FromPercent(0), "the plant's").Above.DegreesCelsius.Should().BeApproximately(-5, 1e-9);

    [Fact]
    public void A_thousand_days_may_be_asked_for() => Path.FirstOver(Age.FromDays(7), Age.FromDays(1007)).Should().BeNull("no limit is known to bind");
}
