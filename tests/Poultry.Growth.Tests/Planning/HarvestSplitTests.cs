using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

/// <summary>Every day between those offered, and a batch killed on two of them, on the same fates.</summary>
public class HarvestSplitTests
{
    private static readonly HarvestOptions Few = new() { Draws = 500 };
    private static readonly HarvestComparison Two = HarvestComparison.Of(HarvestCase.Plan(dates: [HarvestCase.On(49), HarvestCase.On(60)]), Few);
    private static readonly IReadOnlyList<HarvestSplit> Largest = Two.Split(FirstBirds.Largest, [Probability.FromPercent(30), Probability.FromPercent(60)]);
    private static readonly HarvestSplit Caught = Two.Split(FirstBirds.AsCaught, [Probability.FromPercent(60)])[0];

    [Fact]
    public void Birds_go_on_two_days_and_none_is_lost_or_counted_twice()
    {
        foreach (HarvestSplit split in Largest)
        {
            split.FirstHead.Value.Should().BeApproximately(split.Share.Fraction * Two.Options[0].Head.Value, 0.5);
            split.SecondHead.Value.Should().BeApproximately((1 - split.Share.Fraction) * Two.Options[1].Head.Value, 0.5, "those left die as all would have");
            split.Head.Value.Should().BeApproximately(split.FirstHead.Value + split.SecondHead.Value, 1e-9);
        }
    }

    [Fact]
    public void The_largest_go_first_and_the_lighter_ones_grow_on()
    {
        HarvestSplit split = Largest.Single(one => one.Share == Probability.FromPercent(60));

        split.FirstWeight.Value.Should().BeGreaterThan(Two.Options[0].MeanWeight.Value);
        split.SecondWeight.Value.Should().BeLessThan(Two.Options[1].MeanWeight.Value);
        Caught.FirstWeight.Value.Kilograms.Should().BeApproximately(Two.Options[0].MeanWeight.Value.Kilograms, 1e-12, "caught as they come");
        Caught.SecondWeight.Value.Kilograms.Should().BeApproximately(Two.Options[1].MeanWeight.Value.Kilograms, 1e-12);
    }

    [Fact]
    public void Feed_lies_between_that_of_the_two_days_and_the_floor_is_relieved()
    {
        Caught.Feed.Value.Kilograms.Should().BeApproximately(
            Two.Options[0].Feed.Value.Kilograms + (0.4 * (Two.Options[1].Feed.Value - Two.Options[0].Feed.Value).Kilograms), 3, "those left eat their part");
        Largest[0].ChanceDensityMet!.Value.Fraction.Should().BeGreaterThan(Two.Options[1].ChanceDensityMet!.Value.Fraction);
        Largest[0].Feed.Value.Should().BeInRange(Two.Options[0].Feed.Value, Two.Options[1].Feed.Value);
    }

    [Fact]
    public void The_fees_of_both_days_are_paid()
    {
        PlantTerms terms = new() { LeastCharge = Money.Of(2000) };
        HarvestComparison dear = HarvestComparison.Of(HarvestCase.Plan(dates: [HarvestCase.On(49, terms), HarvestCase.On(60, terms)]), Few);
        HarvestComparison free = HarvestComparison.Of(HarvestCase.Plan(dates: [HarvestCase.On(49, new()), HarvestCase.On(60, new())]), Few);
        Probability half = Probability.FromPercent(50);

        (dear.Split(FirstBirds.AsCaught, [half])[0].Cost.Value - free.Split(FirstBirds.AsCaught, [half])[0].Cost.Value).Amount.Should().BeApproximately(4000, 1e-6);
        (dear.Options[0].Cost.Value - free.Options[0].Cost.Value).Amount.Should().BeApproximately(2000, 1e-6);
    }

    [Fact]
    public void Splits_are_compared_with_the_single_day_on_the_same_fates_best_first()
    {
        Largest.Should().BeInDescendingOrder(split => split.Margin.Value);
        Largest[0].Gain.Value.Amount.Should().BeApproximately((Largest[0].Margin.Value - Two.Recommended.Margin.Value).Amount, 1e-9);
        (Largest[0].Gain.Interval.High!.Value - Largest[0].Gain.Interval.Low!.Value).Should().BeLessThan(Largest[0].Margin.Interval.High!.Value - Largest[0].Margin.Interval.Low!.Value);
        Two.Split(FirstBirds.Largest, [Probability.FromPercent(30)])[0].Margin.Value.Should().Be(Largest.Single(one => one.Share == Probability.FromPercent(30)).Margin.Value);
        HarvestSplit.Cautions.Select(caution => caution.Code).Should().Equal("repeat-catching", "split-feed-off");
        Caught.ToString().Should().StartWith("60 % (as caught) on 2027-05-30, the rest on 2027-06-10: margin ");
    }

    [Fact]
    public void What_makes_no_sense_is_refused_and_one_day_cannot_be_split()
    {
        FluentActions.Invoking(() => Two.Split(FirstBirds.Largest, [])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Two.Split(FirstBirds.Largest, [Probability.FromPercent(97)])).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*5 to 95*");
        HarvestComparison.Of(HarvestCase.Plan(dates: HarvestCase.On(56)), Few).Split(FirstBirds.Largest, [Probability.FromPercent(50)]).Should().BeEmpty();
    }

    [Fact]
    public void Every_day_holds_the_days_offered_and_its_best_is_no_worse()
    {
        CalendarCost calendar = Two.EveryDay();

        calendar.Days.Should().HaveCount(12);
        calendar.Days[0].Margin.Value.Amount.Should().BeApproximately(Two.Options[0].Margin.Value.Amount, 1e-9);
        calendar.Days[^1].Margin.Value.Amount.Should().BeApproximately(Two.Options[1].Margin.Value.Amount, 1e-9);
        calendar.Best.Margin.Value.Should().Be(calendar.Days.Max(day => day.Margin.Value));
        calendar.Cost.Value.Amount.Should().BeGreaterThanOrEqualTo(0).And.BeApproximately((calendar.Best.Margin.Value - Two.Recommended.Margin.Value).Amount, 1e-9);
        calendar.ToString().Should().StartWith("best of every day 2027-0");
    }

    [Fact]
    public void Nothing_is_counted_for_moving_a_booked_date_in_the_calendar()
    {
        OfferedDate booked = new() { Date = HarvestCase.On(49).Date, IsBooked = true, ChangeCost = Money.Of(75), Terms = HarvestCase.On(49).Terms, Road = HarvestCase.On(49).Road };
        HarvestComparison moved = HarvestComparison.Of(HarvestCase.Plan(dates: [booked, HarvestCase.On(60)]), Few);

        moved.EveryDay().Days.Select(day => day.Margin.Value).Should().Equal(Two.EveryDay().Days.Select(day => day.Margin.Value));
        moved.Split(FirstBirds.AsCaught, [Probability.FromPercent(60)])[0].Margin.Value.Should().Be(Caught.Margin.Value, "the booked day is one of the two");
    }

    [Fact]
    public void Progress_runs_from_0_to_1_and_a_stop_is_heard()
    {
        Told told = new();
        HarvestComparison comparison = HarvestComparison.Of(HarvestCase.Plan(dates: [HarvestCase.On(49), HarvestCase.On(56)]), new() { Draws = 1500, Threads = 2, Progress = told });

        told.Parts.Should().OnlyContain(part => part > 0 && part <= 1);
        told.Parts.Take(told.Parts.IndexOf(1) + 1).Should().BeInAscendingOrder("threads take turns in telling");
        CancellationToken stopped = new(canceled: true);
        FluentActions.Invoking(() => HarvestComparison.Of(comparison.Plan, Few, stopped)).Should().Throw<OperationCanceledException>();
        FluentActions.Invoking(() => comparison.EveryDay(stopped)).Should().Throw<OperationCanceledException>();
        FluentActions.Invoking(() => comparison.Split(FirstBirds.Largest, [Probability.FromPercent(50)], stopped)).Should().Throw<OperationCanceledException>();
    }

    private sealed class Told : IProgress<double>
    {
        public List<double> Parts { get; } = [];

        public void Report(double value) => Parts.Add(value);
    }
}
