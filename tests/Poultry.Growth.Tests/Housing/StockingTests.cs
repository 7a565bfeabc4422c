using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Density, the limit that binds, and how many chicks that leaves room for.</summary>
public class StockingTests
{
    private static readonly Keeping Anywhere = new() { Place = "anywhere" };
    private static readonly Keeping OrganicFixed = new() { Place = "Austria", System = RearingSystem.Organic, House = HouseKind.Fixed, Meets = ["older-edition-in-force"] };

    [Theory]
    [InlineData(1.9, "10 birds/m2", 1000)]
    [InlineData(2.3, "21 kg/m2", 913)]
    public void Birds_and_weight_count_together_and_the_binding_one_is_named(double kilograms, string binding, int birds)
    {
        StockingVerdict verdict = StockingVerdict.Of(Area.FromSquareMeters(100), 950, Mass.FromKilograms(kilograms), OrganicFixed);

        (verdict.Binding!.Limit.Printed, verdict.BirdsAtLimit, verdict.IsMet, verdict.BirdsTooMany).Should().Be((binding, birds, birds >= 950, Math.Max(0, 950 - birds)));
        verdict.ToString().Should().Contain(binding).And.EndWith(LimitVerdict.NotLegalAdvice);
    }

    [Fact]
    public void The_mean_of_three_batches_counts_where_light_birds_bring_it_in()
    {
        Keeping keeping = new() { Place = "Germany", System = RearingSystem.Indoor, Meets = ["annex-ii"] };
        (StockingDensity, StockingDensity) earlier = (StockingDensity.FromKilogramsPerSquareMeter(36), StockingDensity.FromKilogramsPerSquareMeter(37));

        StockingVerdict light = StockingVerdict.Of(Area.FromSquareMeters(100), 2300, Mass.FromKilograms(1.5), keeping, earlierBatches: earlier);
        StockingVerdict heavy = StockingVerdict.Of(Area.FromSquareMeters(100), 2300, Mass.FromKilograms(1.6), keeping, earlierBatches: earlier);

        // 3 x 35 - 36 - 37 = 32 kg/m2 for this batch: 3,200 kg of 1.5 kg.
        (light.Binding!.Limit.Printed, light.BirdsAtLimit, light.IsMet).Should().Be(("35 kg/m2", 2133, false));
        (heavy.Binding!.Limit.Printed, heavy.BirdsAtLimit, heavy.IsMet).Should().Be(("39 kg/m2", 2437, true));
    }

    /// <summary>3 x 35 - 30 - 33.4 = 41.6 kg/m2 for this batch, on 50 m2 with birds of 2 kg: 1040, of which the mean is 35.</summary>
    [Theory]
    [InlineData(1040, true)]
    [InlineData(1041, false)]
    public void The_mean_of_three_batches_is_of_all_three(int birds, bool met)
    {
        (StockingDensity, StockingDensity) earlier = (StockingDensity.FromKilogramsPerSquareMeter(30), StockingDensity.FromKilogramsPerSquareMeter(33.4));

        StockingVerdict verdict = StockingVerdict.Of(Area.FromSquareMeters(50), birds, Mass.FromKilograms(2), Anywhere, [MadeUpLimit.On(LimitSubject.MeanStockingDensity, 35)], earlier);

        (verdict.BirdsAtLimit, verdict.IsMet).Should().Be((1040, met));
        verdict.Limits.Single().Value.Should().BeApproximately((30 + 33.4 + (birds / 25.0)) / 3, 1e-9);
    }

    [Fact]
    public void Of_two_limits_the_narrower_binds_at_every_weight()
    {
        StockingVerdict verdict = StockingVerdict.Of(
            Area.FromSquareMeters(50), 10, Mass.FromKilograms(2), Anywhere, [MadeUpLimit.On(LimitSubject.BirdsPerArea, 15), MadeUpLimit.On(LimitSubject.StockingDensity, 20)]);

        (verdict.MostBirds(1), verdict.MostBirds(2)).Should().Be((750, 500));
    }

    /// <summary>The limit is for flocks of 100 at least, or for houses of 60 m2 at the most.</summary>
    [Theory]
    [InlineData(LimitSubject.FlockSize, 100, LimitComparison.AtLeast)]
    [InlineData(LimitSubject.HouseFloor, 60, LimitComparison.AtMost)]
    public void Flock_and_house_are_those_at_hand_unless_stated(LimitSubject subject, double value, LimitComparison comparison)
    {
        Limit limit = MadeUpLimit.On(LimitSubject.BirdsPerArea, 15, when: new LimitClause(subject, comparison, value));
        Keeping stated = Anywhere.With(Measured.Flock(99), Measured.HouseFloor(Area.FromSquareMeters(61)));

        StockingVerdict.Of(Area.FromSquareMeters(60), 99.5, Mass.FromKilograms(2), Anywhere, [limit]).Limits.Single().Applies.Should().Be(Applicability.Yes);
        StockingVerdict.Of(Area.FromSquareMeters(60), 99.5, Mass.FromKilograms(2), stated, [limit]).Limits.Single().Applies.Should().Be(Applicability.No);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(99, false)]
    public void A_path_s_flock_is_the_birds_placed_unless_stated(int? stated, bool applies)
    {
        Limit limit = MadeUpLimit.On(LimitSubject.BirdsPerArea, 15, when: new LimitClause(LimitSubject.FlockSize, LimitComparison.AtLeast, 100));
        Keeping keeping = stated is { } flock ? Anywhere.With(Measured.Flock(flock)) : Anywhere;
        HeadCountPath heads = HeadCountPath.Recorded(100, Age.FromDays(1), [Deaths.Of(Age.FromDays(20), 10)], Survival.WithoutLoss);

        DensityPath path = DensityPath.Of(Area.FromSquareMeters(5), Holding.Curve, heads, keeping, [limit, MadeUpLimit.On(LimitSubject.Ammonia, 20)]);

        LimitVerdict verdict = path.At(Age.FromDays(40)).Verdict.Limits.Should().ContainSingle("air has no say in space").Subject;
        (verdict.Applies == Applicability.Yes).Should().Be(applies);
    }

    [Fact]
    public void A_limit_passed_before_the_first_day_is_passed_from_the_start()
    {
        LimitReached first = Holding.All[3].Path.FirstOver(Age.FromDays(52), Age.FromDays(63))!, later = Holding.All[3].Path.FirstOver(Age.FromDays(40), Age.FromDays(50.5))!;

        (first.Age.Days, first.IsFromTheStart, later.IsFromTheStart).Should().Be((52, true, false));
        later.Age.Days.Should().BeApproximately(50.1, 0.05);
    }

    [Fact]
    public void Where_no_limit_is_known_to_bind_none_is_made_up()
    {
        StockingVerdict verdict = StockingVerdict.Of(Area.FromSquareFeet(120), 80, Mass.FromPounds(5), new());

        (verdict.Binding, verdict.BirdsAtLimit, verdict.IsMet, verdict.BirdsTooMany).Should().Be((null, null, null, 0));
        verdict.ToString().Should().Be("80 birds of 2.268 kg (5 lb): 16.27 kg/m2 (3.33 lb/ft2). No limit is known to bind. Not legal advice; check the current text.");
    }

    [Fact]
    public void Chicks_are_told_safe_and_expected_together()
    {
        ChicksToPlace chicks = ChicksToPlace.For(9900, Probability.FromPercent(5));

        (chicks.SafeWithNoDeaths, chicks.AsExpected).Should().Be((9900, 10_421));
        chicks.ChanceOfTooMany.Percent.Should().BeInRange(40, 60, "in about half of the batches fewer die than in the usual one");
        chicks.ChanceOfTooManyOf(9900).Fraction.Should().Be(0);
        chicks.ToString().Should().StartWith("9900 chicks if none dies; 10421 if deaths are as expected, with a chance of ");
        int cautious = chicks.AtChance(Probability.FromPercent(5));
        cautious.Should().BeInRange(9901, 10_420);
        chicks.ChanceOfTooManyOf(cautious).Percent.Should().BeLessThanOrEqualTo(5);
        chicks.ChanceOfTooManyOf(cautious + 1).Percent.Should().BeGreaterThan(5);
    }

    [Fact]
    public void With_no_chance_of_too_many_there_are_as_many_chicks_as_birds_that_fit() =>
        ChicksToPlace.For(100, Survival.WithoutLoss, Age.Hatch, Age.FromWeeks(1)).AtChance(Probability.FromPercent(0)).Should().Be(100);

    [Fact]
    public void No_more_chicks_are_placed_than_a_number_holds() =>
        ChicksToPlace.For(int.MaxValue, Survival.WithoutLoss, Age.Hatch, Age.FromWeeks(1)).AtChance(Probability.FromPercent(0)).Should().Be(int.MaxValue);

    [Fact]
    public void The_holdings_outgrow_their_floors_where_their_own_limits_say()
    {
        (string, string?, double?)[] reached =
        [
            .. Holding.All.Select(holding => holding.Path.FirstOver(Age.FromDays(7), Age.FromDays(63)) is { } first
                ? (holding.Name, first.Limit.Limit.Printed, Math.Round(first.Age.Days, 1))
                : (holding.Name, (string?)null, (double?)null)),
        ];

        reached.Should().Equal(
            ("hoop shelter, brook", null, null),
            ("hoop shelter, orchard", "2 ft2/bird", 7),
            ("skid shelter, hill", "6 lb/ft2", 59.1),
            ("stone barn", "39 kg/m2", 50.1),
            ("mobile house, organic", "30 kg/m2", 51));
    }

    [Fact]
    public void An_age_just_before_the_limit_is_met_and_one_just_after_is_not()
    {
        DensityPath path = Holding.All[3].Path;
        Age reached = path.FirstOver(Age.FromDays(7), Age.FromDays(63))!.Age;

        path.At(reached).Verdict.IsMet.Should().BeTrue();
        path.At(Age.FromDays(reached.Days + 0.01)).Verdict.IsMet.Should().BeFalse();
    }

    [Fact]
    public void A_recorded_path_counts_the_birds_that_are_left()
    {
        HeadCountPath heads = HeadCountPath.Recorded(100, Age.FromDays(1), [Deaths.Of(Age.FromDays(20), 10)], Survival.WithoutLoss);

        DensityPath.Of(Area.FromSquareMeters(10), Holding.Curve, heads, new()).At(Age.FromDays(40)).Verdict.Birds.Should().Be(90);
    }

    [Fact]
    public void Equipment_of_a_law_that_was_not_read_to_the_end_is_told_and_not_applied() =>
        EquipmentNeed.For(500, Mass.FromKilograms(2), new() { Place = "Switzerland" }).Where(need => need.Verdict.Limit.Instrument.Jurisdiction == "Switzerland")
            .Should().HaveCountGreaterThan(4).And.OnlyContain(need => need.Verdict.Applies == Applicability.Unknown && need.Verdict.Text.Contains("footnote 1"));

    [Theory]
    [InlineData(0, 10, 2, "0 m2")]
    [InlineData(10, -1, 2, "-1 birds")]
    [InlineData(10, 10, 0, "0 kg")]
    public void What_makes_no_sense_is_refused_by_name_value_and_range(double squareMeters, double birds, double kilograms, string value)
    {
        Action verdict = () => StockingVerdict.Of(Area.FromSquareMeters(squareMeters), birds, Mass.FromKilograms(kilograms), new());

        verdict.Should().Throw<ArgumentOutOfRangeException>().WithMessage(value + " is not allowed; expected *");
    }
}
