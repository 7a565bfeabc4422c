using MathNet.Numerics.Statistics;
using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

/// <summary>Seasons whose batches are drawn: one batch is its plan, two meet the same fates or their own, and freed days count only where somebody uses them.</summary>
public sealed class SeasonComparisonTests
{
    private static readonly HarvestOptions Few = new() { Draws = 100, Threads = 1 };

    private static readonly SeasonPlan Demo = SeasonFile.Read(Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-season.json")).Value!;

    private static readonly Lazy<SeasonComparison> DemoSeason = new(() => SeasonComparison.Of(Demo, Few)!);

    [Fact]
    public void One_batch_is_what_its_plan_says()
    {
        HarvestComparison plan = HarvestComparison.Of(HarvestCase.Plan(), Few);
        SeasonComparison season = Compared([Candidate("one")], new());

        SeasonDay chosen = season.Batches[0].Chosen!;
        chosen.Harvest.Date.Date.Should().Be(plan.Recommended.Date.Date);
        chosen.Should().BeSameAs(season.Batches[0].Alone);
        (season.Margin.Value, season.Margin.Interval).Should().Be((plan.Recommended.Margin.Value, plan.Recommended.Margin.Interval));
        season.MarginApart.Should().Be(season.Margin.Interval, "one batch has no other to differ from");
        season.BadCase.Should().Be(plan.Recommended.BadCase);
        season.Batches[0].ToString().Should().Be("one is raised as it would be alone: the margin of the batch decides.");
    }

    [Fact]
    public void Two_alike_bring_twice_as_much_and_doubt_twice_as_much_only_if_one_fate_meets_both()
    {
        SeasonComparison one = Compared([Candidate("one")], new()), two = Compared([Candidate("one"), Candidate("two")], new());

        two.Margin.Value.Amount.Should().BeApproximately(2 * one.Margin.Value.Amount, 1e-9);
        Width(two.Margin.Interval).Should().BeApproximately(2 * Width(one.Margin.Interval), 1e-9);
        Width(two.MarginApart).Should().BeLessThan(Width(two.Margin.Interval));
        (Width(two.MarginApart) / Width(one.Margin.Interval)).Should().BeApproximately(Math.Sqrt(2), 0.3, "spreads of fates that have nothing to do with each other add in squares");
        two.Cautions.Select(caution => caution.Code).Should().Contain("season-demand-shared");
        one.Cautions.Select(caution => caution.Code).Should().NotContain("season-demand-shared");
    }

    [Fact]
    public void Days_are_given_up_only_for_a_batch_that_uses_them()
    {
        SeasonOutcome summer = DemoSeason.Value.Batches[1];
        SeasonOutcome withoutLate = Compared([.. Demo.Candidates.Take(2)], Demo.Limits).Batches[1];

        summer.FreedDays.Should().Be(7);
        summer.GaveWayTo.Should().Equal("late summer");
        summer.FreedFor.Should().Equal("late summer");
        summer.GivenUp.Amount.Should().BeGreaterThan(0);
        summer.Chosen!.Harvest.Margin.Value.Should().BeLessThan(summer.Alone.Harvest.Margin.Value);
        summer.ToString().Should().Contain("frees its shelters 7 d earlier than alone, and late summer uses them").And.EndWith("Here the margin by shelter-day decides.");
        withoutLate.Chosen!.Option.Killed.Should().Be(summer.Alone.Option.Killed);
        withoutLate.FreedDays.Should().Be(0);
        withoutLate.GaveWayTo.Should().BeEmpty();
    }

    [Fact]
    public void A_day_that_the_plant_has_no_room_on_frees_no_shelters_for_anyone()
    {
        BatchPlan plan = HarvestCase.Plan();
        DateOnly best = HarvestComparison.Of(plan, Few).Recommended.Date.Date;
        SeasonComparison season = Compared([Candidate("one"), Candidate("two")], new() { Shelters = 4, HeadByDay = new Dictionary<DateOnly, int> { [best] = 300 } });

        SeasonOutcome moved = season.Batches.Single(batch => batch.Chosen != batch.Alone);
        moved.GaveWayTo.Should().ContainSingle();
        moved.FreedDays.Should().Be(0);
        moved.ToString().Should().Contain(" gives way to ").And.NotContain("shelter-day");
    }

    [Fact]
    public void A_shelter_more_is_worth_what_was_given_up()
    {
        SeasonComparison season = DemoSeason.Value;

        season.BindingLimits.Should().ContainSingle();
        season.BindingLimits[0].Kind.Should().Be(SeasonLimitKind.Shelters);
        season.BindingLimits[0].Worth.Amount.Should().BeApproximately(season.Batches.Sum(batch => batch.GivenUp.Amount), 1e-9);
        season.Margin.Value.Amount.Should().BeApproximately(season.Batches.Sum(batch => batch.Chosen!.Harvest.Margin.Value.Amount), 1e-9);
    }

    /// <summary>Quantiles by MathNet.Numerics, definition 7 of Hyndman and Fan.</summary>
    [Fact]
    public void What_a_shelter_more_is_worth_and_what_is_given_up_have_the_range_of_their_fates()
    {
        SeasonComparison season = DemoSeason.Value;
        SeasonOutcome gave = season.Batches.Single(batch => batch.GivenUp > Money.Zero);
        double[] fates = [.. gave.Alone.Margins.Zip(gave.Chosen?.Margins ?? new double[gave.Alone.Margins.Length], (alone, chosen) => alone - chosen).Order()];
        Interval<Money> range = season.BindingLimits[0].Range!;

        range.Should().Be(gave.GivenUpRange);
        range.Level.Should().Be(0.9);
        range.Low!.Value.Amount.Should().BeApproximately(SortedArrayStatistics.QuantileCustom(fates, 0.05, QuantileDefinition.R7), 1e-9);
        range.High!.Value.Amount.Should().BeApproximately(SortedArrayStatistics.QuantileCustom(fates, 0.95, QuantileDefinition.R7), 1e-9);
        season.Batches.Where(batch => batch != gave).Should().OnlyContain(batch => batch.GivenUpRange == null);
    }

    [Fact]
    public void A_batch_left_out_says_for_whom_or_why()
    {
        SeasonCandidate poor = Candidate("poor", HarvestCase.Plan(offers: [PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(1), Demand.Unlimited)]));
        SeasonComparison season = Compared([Candidate("one"), Candidate("two"), poor], new() { Shelters = 2 });

        season.Batches.Select(batch => batch.Chosen is not null).Should().Equal(true, false, false);
        season.Batches[1].ToString().Should().StartWith("two is not raised: alone it would come 2027-04-12").And.EndWith("but then one would not fit.");
        season.Batches[2].ToString().Should().Be("poor is not raised: it loses money on every day considered.");
        Compared([Candidate("big")], new() { BrooderPlaces = 100 }).Batches[0].ToString().Should().Be("big is not raised: it does not fit within the limits.");
    }

    [Fact]
    public void Promised_batches_that_do_not_fit_together_give_no_season()
    {
        SeasonCandidate[] promised = [Candidate("one", promised: true), Candidate("two", promised: true)];

        SeasonComparison.Of(new() { Name = "s", Candidates = promised, Limits = new() { Shelters = 2 } }, Few).Should().BeNull();
        Compared(promised, new() { Shelters = 4 }).Batches.Should().OnlyContain(batch => batch.Chosen != null);
    }

    [Fact]
    public void The_same_seed_gives_the_same_bits_on_one_thread_or_two()
    {
        SeasonPlan plan = new() { Name = "s", Candidates = [Candidate("one"), Candidate("two")] };

        SeasonComparison one = SeasonComparison.Of(plan, Few)!, two = SeasonComparison.Of(plan, new() { Draws = Few.Draws, Threads = 2 })!;
        (one.Margin.Value, one.Margin.Interval, one.MarginApart).Should().Be((two.Margin.Value, two.Margin.Interval, two.MarginApart));
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => new SeasonCandidate { Name = " ", Starts = [HarvestCase.Plan()] }).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new SeasonCandidate { Name = "a", Starts = [] }).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new SeasonCandidate { Name = "a", Starts = [HarvestCase.Plan()], Shelters = -1 }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new SeasonPlan { Name = "a", Candidates = [] }).Should().Throw<ArgumentException>();
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        FluentActions.Invoking(() => SeasonComparison.Of(Demo, Few, stopped.Token)).Should().Throw<OperationCanceledException>();
    }

    private static SeasonComparison Compared(IReadOnlyList<SeasonCandidate> candidates, SeasonLimits limits) =>
        SeasonComparison.Of(new() { Name = "invented", Candidates = candidates, Limits = limits }, Few)!;

    private static SeasonCandidate Candidate(string name, BatchPlan? plan = null, bool promised = false) => new()
    {
        Name = name, Starts = [plan ?? HarvestCase.Plan()], Shelters = 2, IsPromised = promised,
    };

    private static double Width(Interval<Money> interval) => interval.High!.Value.Amount - interval.Low!.Value.Amount;
}
