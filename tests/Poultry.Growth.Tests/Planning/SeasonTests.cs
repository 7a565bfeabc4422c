using CsCheck;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

public class SeasonTests
{
    private static readonly DateOnly Start = new(2027, 4, 1);

    [Fact]
    public void Batches_that_do_not_meet_are_all_raised()
    {
        Season season = Season.Best([Batch("spring", At(0, 1000)), Batch("summer", At(80, 1200))], new() { Shelters = 3 })!;

        season.Margin.Amount.Should().Be(2200);
        season.BindingLimits.Should().BeEmpty();
    }

    [Fact]
    public void Where_two_want_the_same_shelters_the_better_is_raised_and_a_shelter_is_worth_the_other()
    {
        Season season = Season.Best([Batch("early", At(0, 900, shelters: 2)), Batch("late", At(10, 1000, shelters: 2))], new() { Shelters = 3 })!;

        season.Choices.Select(choice => choice.Option is not null).Should().Equal(false, true);
        season.BindingLimits.Should().ContainSingle();
        season.BindingLimits[0].Kind.Should().Be(SeasonLimitKind.Shelters);
        season.BindingLimits[0].Worth.Amount.Should().Be(900);
        season.BindingLimits[0].From.Should().Be(Start.AddDays(31), "the late batch moves out then");
    }

    [Fact]
    public void A_later_date_that_brings_less_is_taken_where_it_lets_both_be_raised()
    {
        SeasonBatch early = Batch("early", At(0, 900));
        SeasonBatch late = Batch("late", At(10, 1000), At(45, 800));

        Season.Best([early, late], new() { Shelters = 2, ShelterRest = Duration.FromDays(7) })!.Choices[1].Option!.Margin.Amount.Should().Be(800);
        Season.Best([early, late], new() { Shelters = 2, ShelterRest = Duration.FromDays(20) })!.Choices[1].Option!.Margin.Amount.Should().Be(1000, "shelters that rest so long are not free in time");
    }

    [Fact]
    public void The_plants_head_the_brooder_the_ground_and_the_hands_bind_too()
    {
        SeasonBatch[] batches = [Batch("one", At(0, 900)), Batch("two", At(0, 700))];
        DateOnly killed = At(0, 1).Killed;

        Season.Best(batches, new() { HeadByDay = new Dictionary<DateOnly, int> { [killed] = 300 } })!.Margin.Amount.Should().Be(900);
        Season.Best(batches, new() { BrooderPlaces = 400 })!.Margin.Amount.Should().Be(900);
        Season.Best(batches, new() { Ground = Area.FromSquareMeters(7000) })!.Margin.Amount.Should().Be(900);
        Season.Best(batches, new() { LabourADay = Duration.FromHours(1.5) })!.Margin.Amount.Should().Be(900);
        Season.Best(batches, new() { LabourADay = Duration.FromHours(2), BrooderPlaces = 600, Ground = Area.FromSquareMeters(8000) })!.Margin.Amount.Should().Be(1600);
    }

    [Fact]
    public void A_batch_at_a_loss_is_left_out_unless_it_is_promised()
    {
        Season.Best([Batch("loss", At(0, -50))], new())!.Choices[0].Option.Should().BeNull();
        Season.Best([SeasonBatch.Promised("loss", [At(0, -50)])], new())!.Margin.Amount.Should().Be(-50);
        Season.Best([SeasonBatch.Promised("too many", [At(0, 50)])], new() { BrooderPlaces = 10 }).Should().BeNull("promised birds do not fit");
    }

    [Fact]
    public void The_search_is_exact() => Gen.Select(
        Gen.Select(Gen.Int[0, 60], Gen.Int[-100, 1000], Gen.Int[1, 3], (day, margin, count) => At(day, margin, count)).Array[1, 3].Array[1, 5], Gen.Int[2, 5]).Sample((drawn, shelters) =>
        {
            SeasonBatch[] batches = [.. drawn.Select((options, at) => Batch(at.ToString(System.Globalization.CultureInfo.InvariantCulture), options))];
            SeasonLimits limits = new() { Shelters = shelters, BrooderPlaces = 700 };
            Season.Best(batches, limits)!.Margin.Amount.Should().Be(ByTryingAll(batches, limits));
        });

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => Season.Best([], new())).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Season.Best([.. Enumerable.Repeat(Batch("b", At(0, 1)), 17)], new())).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*1 to 16*");
        FluentActions.Invoking(() => SeasonOption.Of(Start, Start.AddDays(-1), Start.AddDays(9), Money.Zero, new())).Should().Throw<ArgumentException>().WithMessage("*2027-04-01, 2027-03-31, 2027-04-10 are not in order*");
        FluentActions.Invoking(() => new SeasonLimits { Shelters = -1 }).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static SeasonBatch Batch(string name, params IReadOnlyList<SeasonOption> options) => SeasonBatch.Possible(name, options);

    private static SeasonOption At(int day, double margin, int shelters = 2) => SeasonOption.Of(Start.AddDays(day), Start.AddDays(day + 21), Start.AddDays(day + 56), Money.Of(margin), new()
    {
        BrooderPlaces = 300, Shelters = shelters, Head = 280, Ground = Area.FromSquareMeters(4000), LabourADay = Duration.FromHours(1),
    });

    /// <summary>Every choice of every batch, held against the limits day by day.</summary>
    private static double ByTryingAll(SeasonBatch[] batches, SeasonLimits limits)
    {
        IEnumerable<SeasonOption[]> seasons = batches.Aggregate(
            (IEnumerable<SeasonOption[]>)[[]], (sofar, batch) => sofar.SelectMany(chosen => batch.Options.Select(option => (SeasonOption[])[.. chosen, option]).Append(chosen)));
        return seasons.Where(Fits).Max(season => season.Sum(option => option.Margin.Amount));

        bool Fits(SeasonOption[] season) => Enumerable.Range(0, 200).Select(day => Start.AddDays(day)).All(day =>
            season.Where(option => option.Placed <= day && day < option.MovedOut).Sum(option => option.Needs.BrooderPlaces) <= limits.BrooderPlaces
            && season.Where(option => option.MovedOut <= day && day < option.Killed).Sum(option => option.Needs.Shelters) <= limits.Shelters);
    }
}
