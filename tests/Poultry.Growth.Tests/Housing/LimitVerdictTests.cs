using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Whether a limit applies comes before whether it is met.</summary>
public class LimitVerdictTests
{
    private const string Directive = "Council Directive 2007/43/EC";

    [Theory]
    [InlineData(500, RearingSystem.Indoor, "Yes")]
    [InlineData(499, RearingSystem.Indoor, "No")]
    [InlineData(5000, RearingSystem.FreeRange, "No")]
    [InlineData(5000, RearingSystem.Barn, "No")]
    [InlineData(5000, RearingSystem.Organic, "No")]
    [InlineData(5000, RearingSystem.Shelter, "Unknown")]
    [InlineData(300, RearingSystem.Shelter, "No")]
    public void The_EU_directive_applies_from_500_birds_indoors(int birds, RearingSystem system, string applies)
    {
        LimitVerdict verdict = Density(new() { Place = "Poland", System = system }, birds).Single(verdict => verdict.Limit.Instrument.Name == Directive && verdict.Limit.Step == 1);

        verdict.Applies.ToString().Should().Be(applies);
        verdict.Binds.Should().Be(applies == "Yes");
        verdict.Met.Should().Be(birds * 2.0 / 100 <= 33, "what does not apply is shown for comparison");
    }

    [Fact]
    public void The_clause_that_decides_is_named() =>
        Density(new() { Place = "Poland", System = RearingSystem.Indoor }, 320).First(verdict => verdict.Limit.Instrument.Name == Directive).Text.Should().Be(
            "EU: Council Directive 2007/43/EC (28 Jun 2007; consolidated 14 Dec 2019), Art. 3(2); Annex I met: stocking density, live weight per usable area, at any time <= 33 kg/m2. "
            + "Does not apply: flock size is 320 birds, the scope is 500 birds or more. Here: 6.4 kg/m2 (1.31 lb/ft2), met. Not legal advice; check the current text.");

    [Theory]
    [InlineData(null, 33)]
    [InlineData("annex-ii", 39)]
    [InlineData("annex-v", 42)]
    public void Of_the_steps_of_a_text_the_highest_that_is_vouched_for_holds(string? meets, double figure)
    {
        Keeping keeping = new() { Place = "Poland", System = RearingSystem.Indoor, Meets = meets is null ? [] : [meets] };

        Density(keeping, 5000).Where(verdict => verdict.Binds).Select(verdict => verdict.Limit.Value).Should().Equal(figure);
    }

    [Fact]
    public void In_a_country_with_its_own_law_the_EU_s_lower_step_counts_until_its_conditions_are_vouched_for()
    {
        IEnumerable<double?> Binding(params string[] meets) => Density(new() { Place = "Germany", System = RearingSystem.Indoor, Meets = meets }, 5000)
            .Where(verdict => verdict.Binds).Select(verdict => verdict.Limit.Value);

        Binding().Should().Equal(33, 39);
        Binding("annex-ii").Should().Equal(39, 39);
        Binding("annex-v").Should().Equal([42, 39], "Germany has no step of 42");
    }

    [Theory]
    [InlineData("Germany", true)]
    [InlineData("germany", true)]
    [InlineData("France", false)]
    [InlineData("England", false)]
    public void A_national_law_holds_in_its_country(string place, bool holds) => Density(new() { Place = place, System = RearingSystem.Indoor }, 5000)
        .Any(verdict => verdict.Limit.Instrument.Name == "TierSchNutztV" && verdict.Binds).Should().Be(holds);

    [Fact]
    public void A_law_of_a_part_of_the_country_leaves_open_whether_it_applies() => LimitVerdict.Of(LimitBook.On(LimitSubject.CarcassTemperature), new() { Place = "USA" })
        .First(verdict => verdict.Limit.Instrument.Jurisdiction == "California").Should().Match<LimitVerdict>(verdict => verdict.Applies == Applicability.Unknown && verdict.Why.Contains("a part of USA"));

    [Fact]
    public void Advice_binds_nobody_and_a_scheme_those_who_joined()
    {
        Keeping free = new() { Place = "USA", System = RearingSystem.Shelter, Measured = [Measured.BirdAge(Age.FromDays(40))] };
        Keeping bound = new() { Place = "USA", System = RearingSystem.Shelter, Measured = free.Measured, Chosen = ["Certified Naturally Grown (private)", "Producer-association leaflet (advice)"] };

        Density(free, 80).Where(verdict => verdict.Binds).ShouldBeNone();
        Density(free, 80).First(verdict => verdict.Limit.Instrument.Kind == InstrumentKind.Advice).Why.Should().Be("advice binds nobody");
        Density(bound, 80).Where(verdict => verdict.Binds).Select(verdict => verdict.Limit.Printed).Should().BeEquivalentTo("1.5 ft2/bird", "2 ft2/bird", "2 ft2/bird");
    }

    [Fact]
    public void What_is_chosen_by_name_must_still_be_within_its_scope() =>
        Density(new() { Place = "USA", System = RearingSystem.Shelter, Chosen = [Directive] }, 300).Where(verdict => verdict.IsChosen && verdict.Binds).ShouldBeNone();

    [Fact]
    public void A_further_step_from_memory_does_not_lift_a_limit_that_was_read_unless_it_is_chosen()
    {
        Instrument text = new("Atlantis", "Invented act", "2026", InstrumentKind.Law);
        Limit Step(int step, double figure, HowKnown known) => new()
        {
            Instrument = text, Scope = "", Quantity = "stocking density", Printed = "as said", Comparison = LimitComparison.AtMost, Subject = LimitSubject.StockingDensity, Value = figure, HowKnown = known, Step = step,
        };
        Limit[] steps = [Step(1, 30, HowKnown.ReadInSource), Step(2, 40, HowKnown.Memory)];

        LimitVerdict.Of(steps, new() { Place = "Atlantis" }).Select(verdict => verdict.Binds).Should().Equal(true, false);
        LimitVerdict.Of(steps, new() { Place = "Atlantis", Chosen = [text.Name] }).Select(verdict => verdict.Binds).Should().Equal(false, true);
    }

    [Fact]
    public void A_figure_from_memory_binds_only_who_names_it_and_stays_unverified()
    {
        const string Recalled = "Regulation 543/2008 Annex V";
        Keeping keeping = new() { Place = "France", System = RearingSystem.FreeRange };

        Density(keeping, 5000).Where(verdict => verdict.Binds).ShouldBeNone();
        LimitVerdict[] binding = [.. Density(new() { Place = "France", System = RearingSystem.FreeRange, Chosen = [Recalled] }, 5000).Where(verdict => verdict.Binds)];
        binding.Select(verdict => verdict.Limit.Printed).Should().BeEquivalentTo("13 birds/m2", "27.5 kg/m2");
        binding.Should().OnlyContain(verdict => verdict.Text.Contains("unverified"));
    }

    [Fact]
    public void Air_limits_of_the_EU_count_above_33_only_and_of_Germany_at_any_density()
    {
        Keeping keeping = new Keeping { Place = "Germany", System = RearingSystem.Indoor, Measured = [Measured.Flock(1000), Measured.Density(StockingDensity.FromKilogramsPerSquareMeter(30))] }
            .With(Measured.Ammonia(VolumeConcentration.FromPartsPerMillion(25)))
            .With(Measured.Temperatures(Temperature.FromDegreesCelsius(32), Temperature.FromDegreesCelsius(36)));

        LimitVerdict[] verdicts = [.. LimitVerdict.Of(LimitBook.On(LimitSubject.Ammonia, LimitSubject.InsideMinusOutside), keeping).Where(verdict => verdict.Applies == Applicability.Yes)];

        verdicts.Select(verdict => (verdict.Limit.Instrument.Jurisdiction, verdict.Limit.Subject, verdict.Met)).Should().Equal(
            ("Germany", LimitSubject.Ammonia, (bool?)false), ("Germany", LimitSubject.InsideMinusOutside, false));
    }

    [Theory]
    [InlineData(3099, true)]
    [InlineData(3100, false)]
    public void The_mortality_condition_is_strict_and_sums_daily_rates(int deadOf100000, bool below)
    {
        CumulativeMortality.Of([(100, 1), (50, 1)]).Percent.Should().BeApproximately(3, 1e-12, "1 of 100 and 1 of 50 are 1 % and 2 %, not 2 of 150");
        CumulativeMortality.Of([(100_000, deadOf100000)]).IsBelowLimit(Age.FromDays(35)).Should().Be(below, "the limit at 35 d is 3.10 %");
    }

    [Fact]
    public void More_deaths_than_birds_are_refused()
    {
        Action dead = () => CumulativeMortality.Of([(10, 11)]);

        dead.Should().Throw<ArgumentOutOfRangeException>().WithMessage("11 birds is not allowed; expected 0 to 10 birds*");
    }

    [Fact]
    public void Advice_that_misses_its_own_scope_says_so_first_and_a_law_s_place_comes_before_its_scope()
    {
        LimitClause large = new(LimitSubject.FlockSize, LimitComparison.AtLeast, 500);
        Keeping small = new() { Place = "Poland", Measured = [Measured.Flock(300)] };

        Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20, kind: InstrumentKind.Advice, when: large), small).Why.Should().Be("flock size is 300 birds, the scope is 500 birds or more");
        Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20, kind: InstrumentKind.Advice), small).Why.Should().Be("advice binds nobody");
        Judged(LimitBook.On(LimitSubject.Ammonia).First(limit => limit.Instrument.Jurisdiction == "Germany"), new() { Place = "USA", System = RearingSystem.Organic }).Why
            .Should().Be("it holds in Germany, not in USA");
    }

    [Fact]
    public void What_is_not_stated_is_asked_for_once()
    {
        Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20), new()).Why.Should().Be("the country is not stated");
        Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20, when: new LimitClause(LimitSubject.FlockSize, LimitComparison.AtLeast, 500)), new() { Place = "Poland" }).Why
            .Should().Be("its scope is flock size 500 birds or more, which is not stated");
        Density(new() { Place = "Poland" }, 5000).First(verdict => verdict.Limit.Instrument.Name == Directive).Why.Should().EndWith(" keeping, and how the birds are kept is not stated");
    }

    [Theory]
    [InlineData(HouseKind.Fixed, null, Applicability.Unknown, "it is for fixed houses, and whether this one is moved is not stated")]
    [InlineData(HouseKind.Mobile, null, Applicability.Unknown, "it is for mobile houses, and whether this one is moved is not stated")]
    [InlineData(HouseKind.Fixed, HouseKind.Mobile, Applicability.No, "it is for fixed houses")]
    [InlineData(HouseKind.Mobile, HouseKind.Fixed, Applicability.No, "it is for mobile houses")]
    [InlineData(HouseKind.Mobile, HouseKind.Mobile, Applicability.Yes, "within its scope")]
    public void Some_limits_are_for_houses_that_move_and_some_for_those_that_do_not(HouseKind limit, HouseKind? house, Applicability applies, string why)
    {
        LimitVerdict verdict = Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20, house: limit), new() { Place = "Poland", House = house });

        (verdict.Applies, verdict.Why).Should().Be((applies, why));
    }

    [Theory]
    [InlineData(true, Applicability.No, "flock size is 300 birds, the scope is 500 birds or more")]
    [InlineData(false, Applicability.Unknown, "flock size is 300 birds, the scope is 500 birds or more by a neighbouring text; this one was not read on it")]
    public void A_clause_that_was_not_read_leaves_open_what_it_would_settle(bool isSettled, Applicability applies, string why)
    {
        LimitClause clause = new(LimitSubject.FlockSize, LimitComparison.AtLeast, 500, isSettled);

        LimitVerdict verdict = Judged(MadeUpLimit.On(LimitSubject.Ammonia, 20, when: clause), new() { Place = "Poland", Measured = [Measured.Flock(300)] });

        (verdict.Applies, verdict.Why).Should().Be((applies, why));
    }

    [Fact]
    public void A_lower_step_gives_way_to_a_higher_one_that_applies()
    {
        Keeping keeping = new() { Place = "Poland", Chosen = ["a limit"] };
        Limit none = MadeUpLimit.On(LimitSubject.Ammonia, 20), first = MadeUpLimit.On(LimitSubject.Ammonia, 30, step: 1), second = MadeUpLimit.On(LimitSubject.Ammonia, 40, step: 2);

        IReadOnlyList<LimitVerdict> verdicts = LimitVerdict.Of([none, first, second], keeping);

        verdicts.Select(verdict => verdict.IsSuperseded).Should().Equal(false, true, false);
        verdicts[0].Text.Should().Be("general: A limit (2027): space <= made up. Applies: chosen by name. Not legal advice; check the current text.");
        verdicts[1].Text.Should().Be("general: A limit (2027): space <= made up. Applies, and a further step of the same text allows more. Not legal advice; check the current text.");
    }

    private static LimitVerdict Judged(Limit limit, Keeping keeping) => LimitVerdict.Of([limit], keeping).Single();

    private static IReadOnlyList<LimitVerdict> Density(Keeping keeping, int birds) => StockingVerdict.Of(Area.FromSquareMeters(100), birds, Mass.FromKilograms(2), keeping).Limits;
}
