using CsCheck;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Housing;

namespace Poultry.Growth.Tests.Properties;

/// <summary>What holds for space at any size: capacities keep their limits, more birds are denser, units come back, rounding is to the safe side.</summary>
public class HousingProperties
{
    private static readonly Gen<(double Floor, double Kilograms, double Limit)> Houses = Gen.Select(Gen.Double[0.5, 5000], Gen.Double[0.04, 6], Gen.Double[1, 60]);

    [Fact]
    public void A_capacity_never_exceeds_its_limit_and_one_more_bird_does() => Gen.Select(Houses, Gen.Enum<Space>()).Sample((house, space) =>
    {
        Limit limit = Of(space, house.Limit);
        StockingVerdict verdict = At(house.Floor, 0, house.Kilograms, limit);
        int most = verdict.BirdsAtLimit!.Value;

        // One rounding of the twelfth digit is no bird more.
        return Used(space, house, most) <= house.Limit * (1 + 2e-12) && Used(space, house, most + 1) > house.Limit * (1 - 2e-12);
    });

    [Fact]
    public void Whole_numbers_are_not_lost_to_rounding() => Gen.Select(Gen.Int[1, 5000], Gen.Double[0.1, 900]).Sample((birds, floor) =>
        At(floor, 0, 2, Of(Space.Birds, birds / floor)).BirdsAtLimit == birds);

    [Fact]
    public void A_bird_more_never_lowers_the_density() => Gen.Select(Houses, Gen.Int[0, 100_000]).Sample((house, birds) =>
    {
        (StockingVerdict one, StockingVerdict more) = (At(house.Floor, birds, house.Kilograms), At(house.Floor, birds + 1, house.Kilograms));
        return more.Density > one.Density && more.BirdDensity > one.BirdDensity;
    });

    [Fact]
    public void Units_come_back() => Gen.Double[0.001, 1e4].Sample(value =>
        Near(StockingDensity.FromPoundsPerSquareFoot(StockingDensity.FromKilogramsPerSquareMeter(value).PoundsPerSquareFoot).KilogramsPerSquareMeter, value)
        && Near(BirdDensity.FromAreaPerBird(BirdDensity.FromBirdsPerSquareMeter(value).AreaPerBird!.Value).BirdsPerSquareMeter, value)
        && Near(BirdDensity.FromBirdsPerAcre(BirdDensity.FromBirdsPerHectare(value).BirdsPerAcre).BirdsPerHectare, value));

    [Fact]
    public void Pounds_in_equal_kilograms_in() => Houses.Sample(house =>
        Near(
            StockingVerdict.Of(Area.FromSquareFeet(house.Floor / 0.09290304), 10, Mass.FromPounds(house.Kilograms / 0.45359237), new(), []).Density.KilogramsPerSquareMeter,
            At(house.Floor, 10, house.Kilograms).Density.KilogramsPerSquareMeter));

    [Fact]
    public void Heavier_birds_never_get_less_crate_floor_as_advised() => Gen.Select(Gen.Double[0.05, 9.9], Gen.Double[0, 0.1], Gen.Int[0, 2]).Sample((kilograms, more, which) =>
    {
        CrateStandard standard = CrateStandard.All[which];
        return standard.AdvisedAreaPerBird(Mass.FromKilograms(kilograms + more)) >= standard.AdvisedAreaPerBird(Mass.FromKilograms(kilograms))
            && standard.AdvisedAreaPerBird(Mass.FromKilograms(kilograms)) >= standard.AreaPerBird(Mass.FromKilograms(kilograms));
    });

    [Fact]
    public void A_crate_as_advised_holds_its_birds() => Gen.Select(Gen.Double[0.2, 5], Gen.Double[0.01, 0.15], Gen.Double[500, 20_000]).Sample((kilograms, variation, crate) =>
    {
        WeightDistribution flock = WeightDistribution.Of(Mass.FromKilograms(kilograms), variation);
        CrateLoading loading = CrateLoading.Of(CrateStandard.Germany2009, Area.FromSquareCentimeters(crate), flock);
        return loading.Birds <= loading.BirdsByStandard
            && loading.Birds * CrateStandard.Germany2009.AreaPerBird(flock.Mean).SquareCentimeters <= crate * (1 + 1e-9);
    });

    [Fact]
    public void Placing_more_chicks_never_lowers_the_chance_of_too_many() => Gen.Select(Gen.Int[1, 3000], Gen.Double[0, 30], Gen.Int[0, 200]).Sample(
        (most, percent, more) =>
        {
            ChicksToPlace chicks = ChicksToPlace.For(most, Probability.FromPercent(percent));
            return chicks.AsExpected >= most && chicks.ChanceOfTooManyOf(most + more + 1) >= chicks.ChanceOfTooManyOf(most + more) && chicks.ChanceOfTooManyOf(most).Fraction < 1e-9;
        },
        iter: 30);

    [Fact]
    public void Land_is_never_less_than_a_batch_needs_nor_more_than_the_season_uses() => Gen.Select(Gen.Int[1, 6], Gen.Int[0, 80], Gen.Int[0, 400], Gen.Double[0.2, 3]).Sample(
        (batches, interval, rest, moves) =>
        {
            PasturePlan batch = PasturePlan.Of(Area.FromSquareMeters(11), 2, 150, MoveSchedule.Steady(moves), Age.FromDays(21), Age.FromDays(56));
            PastureSeason season = PastureSeason.Of(batch, batches, Duration.FromDays(interval), Duration.FromDays(rest));
            PastureSeason longer = PastureSeason.Of(batch, batches, Duration.FromDays(interval), Duration.FromDays(rest + 1));
            return season.Land.SquareMeters <= season.GroundPerSeason.SquareMeters * (1 + 1e-9) && longer.Land.SquareMeters >= season.Land.SquareMeters * (1 - 1e-9) && season.Land.SquareMeters > 0;
        });

    private static double Used(Space space, (double Floor, double Kilograms, double Limit) house, int birds) => space switch
    {
        Space.Weight => birds * house.Kilograms / house.Floor,
        Space.Birds => birds / house.Floor,
        _ => birds / house.Floor,
    };

    private static Limit Of(Space space, double limit) => space switch
    {
        Space.Weight => MadeUpLimit.On(LimitSubject.StockingDensity, limit),
        Space.Birds => MadeUpLimit.On(LimitSubject.BirdsPerArea, limit),
        _ => MadeUpLimit.On(LimitSubject.FloorAreaPerBird, 1 / limit, LimitComparison.AtLeast),
    };

    private static StockingVerdict At(double floor, int birds, double kilograms, params Limit[] limits) =>
        StockingVerdict.Of(Area.FromSquareMeters(floor), birds, Mass.FromKilograms(kilograms), new() { Place = "anywhere" }, limits);

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-12 * Math.Max(one, other);

    private enum Space
    {
        Weight,
        Birds,
        FloorOfBird,
    }
}
