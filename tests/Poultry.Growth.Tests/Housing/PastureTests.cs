using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Shelters that are moved: ground, land, rest, and what is left on it.</summary>
public class PastureTests
{
    private static readonly PasturePlan Batch = PasturePlan.Of(Area.FromSquareFeet(120), 2, 160, MoveSchedule.ByAge((Age.FromDays(21), 1), (Age.FromDays(42), 2)), Age.FromDays(21), Age.FromDays(56));

    [Fact]
    public void Moves_follow_the_birds_age()
    {
        // 21 days of one move and 14 of two, on 240 ft2.
        Batch.GroundPerBatch.SquareFeet.Should().BeApproximately((21 + 28) * 240, 1e-6);
        Batch.GroundPerBird.SquareFeet.Should().BeApproximately(49 * 1.5, 1e-6);
        Batch.GroundPerBirdAndDay(Age.FromDays(30)).SquareFeet.Should().BeApproximately(1.5, 1e-9);
        Batch.GroundPerBirdAndDay(Age.FromDays(45)).SquareFeet.Should().BeApproximately(3, 1e-9);
        Batch.Density.AreaPerBird!.Value.SquareFeet.Should().BeApproximately(1.5, 1e-9);
    }

    [Theory]
    [InlineData(0.25, 28, 7)]
    [InlineData(0.25, 29, 8)]
    [InlineData(1, 28, 28)]
    [InlineData(2, 27.5, 55)]
    public void A_position_begun_is_a_position_used(double movesPerDay, double days, int positions) =>
        MoveSchedule.Steady(movesPerDay).Positions(Age.FromDays(21), Age.FromDays(21 + days)).Should().Be(positions);

    [Fact]
    public void Stages_may_be_told_in_any_order_and_the_first_reaches_back()
    {
        MoveSchedule schedule = MoveSchedule.ByAge((Age.FromDays(42), 2), (Age.FromDays(21), 1));

        schedule.ToString().Should().Be("1 from 21 d, 2 from 42 d: moves a day");
        (schedule.MovesPerDay(Age.FromDays(10)), schedule.MovesPerDay(Age.FromDays(41.9)), schedule.MovesPerDay(Age.FromDays(42))).Should().Be((1, 1, 2));
        schedule.Positions(Age.FromDays(14), Age.FromDays(49)).Should().Be(28 + 14);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.01, 1)]
    public void Birds_that_are_there_stand_somewhere(double days, int positions) =>
        MoveSchedule.Steady(1e-8).Positions(Age.FromDays(21), Age.FromDays(21 + days)).Should().Be(positions);

    [Fact]
    public void A_plan_says_what_ground_it_takes()
    {
        PasturePlan one = PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.Steady(1), Age.FromDays(21), Age.FromDays(56));

        one.ToString().Should().Be("50 birds in 1 shelter, 35 d: 350 m2 (3767 ft2) of fresh ground, 7 m2 (75.3 ft2) a bird");
        Batch.ToString().Should().StartWith("160 birds in 2 shelters, 35 d: ");
        PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.Steady(1), Age.FromDays(21), Age.FromDays(1021)).Time.Days.Should().Be(1000);
    }

    [Theory]
    [InlineData(1.5, 1)]
    [InlineData(1.6, 2)]
    [InlineData(3, 2)]
    [InlineData(0.75, 0.5)]
    [InlineData(0.6, 0.5)]
    public void Moves_for_so_much_ground_are_rounded_to_the_safe_side(double squareFeet, double movesPerDay) =>
        Batch.MovesPerDay(Area.FromSquareFeet(squareFeet)).Should().BeApproximately(movesPerDay, 1e-12);

    [Theory]
    [InlineData(1, 49, 0, 1)]
    [InlineData(3, 49, 365, 3)]
    [InlineData(3, 49, 49, 1.1)]
    public void Land_gives_every_spot_its_rest(int batches, double intervalDays, double restDays, double batchesOfGround)
    {
        PastureSeason season = PastureSeason.Of(Batch, batches, Duration.FromDays(intervalDays), Duration.FromDays(restDays));

        season.GroundPerSeason.SquareMeters.Should().BeApproximately(batches * Batch.GroundPerBatch.SquareMeters, 1e-9);
        season.Land.SquareMeters.Should().BeLessThanOrEqualTo(batchesOfGround * Batch.GroundPerBatch.SquareMeters * (1 + 1e-12));
        season.Land.SquareMeters.Should().BeLessThanOrEqualTo(season.GroundPerSeason.SquareMeters * (1 + 1e-12));
        season.BirdsOnLand.BirdsPerHectare.Should().BeApproximately(batches * 160 / season.Land.Hectares, 1e-6);
    }

    /// <summary>One shelter of 10 m², moved once in so many days, four weeks out, a batch every five weeks: the spots in use or at rest on the worst day.</summary>
    [Theory]
    [InlineData(1, 0, 1)]
    [InlineData(1, 6, 7)]
    [InlineData(1, 6.5, 8)]
    [InlineData(1, 27, 28)]
    [InlineData(1, 34, 28)]
    [InlineData(1, 35, 29)]
    [InlineData(1, 62, 56)]
    [InlineData(7, 0, 1)]
    [InlineData(7, 1, 2)]
    [InlineData(7, 7, 2)]
    [InlineData(7, 8, 3)]
    [InlineData(3.5, 4, 3)]
    public void A_spot_rests_from_the_day_the_shelter_leaves_it(double daysASpot, double restDays, int spots)
    {
        PasturePlan batch = PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.Steady(1 / daysASpot), Age.FromDays(21), Age.FromDays(49));

        PastureSeason.Of(batch, 2, Duration.FromDays(35), Duration.FromDays(restDays)).Land.SquareMeters.Should().BeApproximately(10 * spots, 1e-9);
    }

    /// <summary>
    /// A position is taken while birds are on it (a day, or four) and for its rest. Slow first: on day 14 three positions of a day and the last of four days; fast first: three of a day.
    /// In the slow part alone, positions four days apart are taken for 4 + 10 days: four of them.
    /// </summary>
    [Theory]
    [InlineData(0.25, 1, 2, 4)]
    [InlineData(1, 0.25, 2, 3)]
    [InlineData(0.25, 0.25, 10, 4)]
    public void Every_spot_is_taken_for_as_long_as_birds_stand_on_it_and_for_its_rest(double first, double then, double restDays, int positions)
    {
        PasturePlan batch = PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.ByAge((Age.Hatch, first), (Age.FromDays(35), then)), Age.FromDays(21), Age.FromDays(56));

        PastureSeason.Of(batch, 1, Duration.FromDays(40), Duration.FromDays(restDays)).Land.SquareMeters.Should().BeApproximately(10 * positions, 1e-9);
    }

    [Fact]
    public void A_shelter_that_hardly_moves_needs_its_one_spot()
    {
        PasturePlan batch = PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.Steady(1e-12), Age.FromDays(21), Age.FromDays(56));

        PastureSeason.Of(batch, 1, Duration.Zero, Duration.FromDays(60)).Land.SquareMeters.Should().Be(10);
        PastureSeason.Paddocks(Duration.FromDays(1e-12), Duration.FromDays(60)).Should().Be(int.MaxValue);
    }

    [Fact]
    public void The_last_spot_is_free_when_the_birds_are_gone()
    {
        // Nine days, moved after seven: the second spot is left on the ninth day, and the next batch needs no other.
        PasturePlan batch = PasturePlan.Of(Area.FromSquareMeters(10), 1, 60, MoveSchedule.Steady(1 / 7.0), Age.FromDays(21), Age.FromDays(30));

        PastureSeason.Of(batch, 2, Duration.FromDays(9), Duration.Zero).Land.SquareMeters.Should().Be(10);
        PastureSeason.Of(batch, 2, Duration.FromDays(9), Duration.FromDays(1)).Land.SquareMeters.Should().Be(20);
    }

    [Fact]
    public void New_ground_for_every_batch_carries_each_load_once()
    {
        PastureSeason season = PastureSeason.Of(Batch, 3, Duration.FromDays(49), Duration.FromDays(365));
        Mass nitrogen = Mass.FromGrams(50);

        season.PassesPerYear.Should().BeApproximately(1, 1e-12);
        season.LoadPerYear(nitrogen).KilogramsPerSquareMeter.Should().BeApproximately(Batch.LoadOfPass(nitrogen).KilogramsPerSquareMeter, 1e-12);
        (10_000 * Batch.LoadOfPass(nitrogen).KilogramsPerSquareMeter).Should().BeApproximately(0.050 * 10_000 / (73.5 * 0.09290304), 1e-6);
    }

    [Theory]
    [InlineData(4, 28, 8)]
    [InlineData(4, 29, 9)]
    [InlineData(7, 0, 1)]
    public void Paddocks_rest_while_one_is_in_use(double stayDays, double restDays, int paddocks) =>
        PastureSeason.Paddocks(Duration.FromDays(stayDays), Duration.FromDays(restDays)).Should().Be(paddocks);

    [Fact]
    public void Nitrogen_is_what_was_eaten_less_what_was_kept()
    {
        NitrogenBalance bird = NitrogenBalance.Of(Mass.FromKilograms(4.5), Probability.FromPercent(19), Mass.FromKilograms(2.2));

        bird.Eaten.Grams.Should().BeApproximately(136.8, 1e-9);
        bird.Retained.Grams.Should().BeApproximately(61.6, 1e-9);
        bird.Excreted.Grams.Should().BeApproximately(75.2, 1e-9);
        bird.ToString().Should().Be("75.2 g of nitrogen excreted (136.8 g eaten, 61.6 g kept)");
    }

    [Fact]
    public void A_gain_that_the_feed_cannot_have_made_is_refused()
    {
        Action balance = () => NitrogenBalance.Of(Mass.FromKilograms(1), Probability.FromPercent(20), Mass.FromKilograms(2));

        balance.Should().Throw<ArgumentException>().WithMessage("A gain of 2 kg (4.41 lb) holds 56 g (1.98 oz) of nitrogen, the feed only 32 g (1.13 oz); expected feed and gain of the same time.*");
    }

    [Fact]
    public void A_table_is_refused_outside_its_own_age()
    {
        Action other = () => ManureTable.Asae2005.NitrogenOfBird(Age.FromDays(56));

        ManureTable.Asae2005.NitrogenOfBird(Age.FromDays(48)).Grams.Should().BeApproximately(53, 1e-9);
        other.Should().Throw<ArgumentOutOfRangeException>().WithMessage("56 d is not allowed; the table holds at 48 d only: use a feed balance.*");
    }

    [Fact]
    public void Birds_may_keep_all_that_they_ate_and_no_more()
    {
        // 17.5 % of the gain is protein: 2 kg of feed with 17.5 % make 2 kg at the most.
        NitrogenBalance.TryOf(Mass.FromKilograms(2), Probability.FromPercent(17.5), Mass.FromKilograms(2), out NitrogenBalance? all, out string? none).Should().BeTrue();

        (all!.Excreted, none).Should().Be((Mass.Zero, null));
    }

    [Fact]
    public void A_production_says_its_figure() => SpreadableNitrogen.All[0].ToString().Should().Be("coquelet: 13 g (0.46 oz) of nitrogen a bird");

    /// <summary>17 g/m² are 170 kg/ha: at 0.05 kg a bird 3400 birds.</summary>
    [Theory]
    [InlineData(0.05, 3400)]
    [InlineData(0.0501, 3393)]
    public void A_yearly_limit_is_so_many_birds(double kilogramsPerBird, int birds) =>
        NitrogenBalance.BirdsPerHectareAndYear(AreaDensity.FromKilogramsPerSquareMeter(0.017), Mass.FromKilograms(kilogramsPerBird)).Should().Be(birds);

    [Fact]
    public void Phosphorus_that_the_carcass_does_not_hold_is_excreted() =>
        FeedNutrients.PhosphorusExcreted(Mass.FromKilograms(4), Probability.FromPercent(0.6)).Grams.Should().BeApproximately(15.6, 1e-9);

    [Fact]
    public void Nonsense_is_refused()
    {
        Action noMoves = () => MoveSchedule.Steady(0), twice = () => MoveSchedule.ByAge((Age.Hatch, 1), (Age.Hatch, 2));
        Action noTime = () => PasturePlan.Of(Area.FromSquareMeters(10), 1, 50, MoveSchedule.Steady(1), Age.FromDays(30), Age.FromDays(30));

        noMoves.Should().Throw<ArgumentOutOfRangeException>().WithMessage("0 moves/d is not allowed; expected above 0 moves/d*");
        twice.Should().Throw<ArgumentException>().WithMessage("An age stands twice; expected each once.*");
        noTime.Should().Throw<ArgumentOutOfRangeException>().WithMessage("30 d is not allowed; expected above 30 d*");
    }
}
