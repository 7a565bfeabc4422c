using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Planning.ReconciledCase;

namespace Poultry.Growth.Tests.Planning;

/// <summary>A plant's sheet beside the forecast: heads add up or the remainder is told, parts add up to the difference, and what the forecast knew is what was known.</summary>
public sealed class ReconciliationTests
{
    [Fact]
    public void Heads_add_up_and_what_does_not_is_told()
    {
        BatchPlan plan = Plan(deaths: [Deaths.Of(Age.FromDays(5), 6, culled: 2), Deaths.Of(Age.FromDays(30), 9), Deaths.Of(Age.FromDays(80), 3)]);
        HeadBalance head = Reconciliation.Of(plan, new PlantSheet
        {
            Killed = Killed, Delivered = 270, DeadOnArrival = 2, Condemned = [CondemnedLine.Whole("bruises", 3), CondemnedLine.Parts("wing", 5)], Passed = 264, Kept = 4, Missing = 1, OnHand = 10,
        }, Few).HeadCount;

        (head.Placed, head.Dead, head.Culled, head.Missing, head.DeadOnArrival, head.Condemned, head.Kept, head.Sold, head.OnHand).Should().Be((300, 13, 2, 1, 2, 3, 4, 260, 10));
        (head.RemainderOnFarm, head.RemainderAtPlant, head.Remainder, head.Lost).Should().Be((4, 1, 5, 20));
        head.ToString().Should().EndWith("+ 10 on hand + 5 not accounted for");
    }

    [Fact]
    public void More_birds_than_there_can_be_are_a_remainder_below_zero()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(deaths: [Deaths.Of(Age.FromDays(5), 40)]), Sheet(280), Few);

        reconciled.HeadCount.Remainder.Should().Be(-20);
        reconciled.Cautions.Should().Contain(caution => caution.Code == "birds-not-accounted-for" && caution.Text.Contains("a count is wrong"));
    }

    [Fact]
    public void A_plant_that_counts_more_carcasses_than_chicks_were_placed_is_told_and_has_no_indices()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(), new PlantSheet { Killed = Killed, Delivered = 290, Passed = 301, FeedEaten = Mass.FromKilograms(1900) }, Few);

        reconciled.HeadCount.RemainderAtPlant.Should().Be(-11);
        reconciled.Cautions.Should().Contain(caution => caution.Code == "birds-not-accounted-for");
        reconciled.Indices.Should().BeNull();
    }

    [Fact]
    public void Without_a_count_of_the_plant_nothing_is_missing_there() =>
        Reconciliation.Of(Plan(), Sheet(270), Few).HeadCount.RemainderAtPlant.Should().Be(0);

    [Fact]
    public void A_batch_that_did_as_forecast_lies_inside_everywhere()
    {
        BatchPlan plan = Plan();
        HarvestOption forecast = HarvestComparison.Of(plan, Few).Options[0];
        Reconciliation first = Reconciliation.Of(plan, Sheet(270), Few);
        double packed = first.Figures.Single(figure => figure.Code == "packed").Forecast, yield = first.Figures.Single(figure => figure.Code == "dressing").Forecast;
        Reconciliation reconciled = Reconciliation.Of(plan, new PlantSheet
        {
            Killed = Killed,
            Delivered = (int)Math.Round(forecast.Head.Value),
            LiveWeight = Mass.FromKilograms(100 * packed / yield),
            FeedEaten = forecast.Feed.Value,
            Condemned = [CondemnedLine.Whole("bruises", 3)],
            Packs = [PackedLine.Of("whole", 1, (int)Math.Round(forecast.Head.Value) - 3, Mass.FromKilograms(packed))],
        }, Few);

        reconciled.Figures.Where(figure => figure.Actual is not null).Should().OnlyContain(figure => figure.IsInside == true).And.HaveCountGreaterThan(8);
        reconciled.Figures.Single(figure => figure.Code == "feed").Difference.Should().BeApproximately(0, 1e-9, "the forecast is the plan of that day");
        reconciled.ToString().Should().Be("invented: 10 of 10 figures inside");
    }

    [Fact]
    public void Half_the_birds_lie_outside_and_the_head_explains_it()
    {
        ReconciledFigure packed = Reconciliation.Of(Plan(), Sheet(135, live: 135 * 2.8, packed: 135 * 2.0), Few).Figures.Single(figure => figure.Code == "packed");

        packed.IsInside.Should().BeFalse();
        packed.Parts.Select(part => part.Cause).Should().Equal("head", "weight", "yield");
        packed.Parts[0].Difference.Should().BeLessThan(0.8 * packed.Difference!.Value, "both are below 0, and the head is most of it");
        packed.LeftOpen.Should().BeApproximately(0, 1e-9, "a product of three is explained by the three");
    }

    /// <summary>By hand: forecast 100, actual 80 = 100 x 0.8; of it 0.8 = 0.9 x rest: parts L ln 0.9 and L ln(0.8/0.9), L = -20/ln 0.8.</summary>
    [Fact]
    public void Parts_add_up_to_the_difference()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(), Sheet(250, live: 250 * 2.6, packed: 480, feed: 1500), Few);
        foreach (ReconciledFigure figure in reconciled.Figures.Where(figure => figure.Parts.Count > 0))
        {
            (figure.Parts.Sum(part => part.Difference) + figure.LeftOpen!.Value).Should().BeApproximately(figure.Difference!.Value, 1e-9);
            double mean = figure.Difference!.Value / Math.Log(figure.Actual!.Value / figure.Forecast);
            figure.Parts[0].Cause.Should().Be("head");
            if (figure.Code == "packed")
            {
                double head = reconciled.Figures.Single(one => one.Code == "head").Forecast;
                figure.Parts[0].Difference.Should().BeApproximately(mean * Math.Log(250 / head), 1e-9);
            }
        }

        reconciled.Figures.Single(figure => figure.Code == "feed").Parts.Select(part => part.Cause).Should().Equal("head", "weight");
    }

    [Fact]
    public void Without_a_scale_weight_and_yield_are_not_told_apart()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(), Sheet(250, packed: 480), Few);

        reconciled.Figures.Single(figure => figure.Code == "packed").Parts.Select(part => part.Cause).Should().Equal("head", "weight and yield");
        reconciled.Figures.Single(figure => figure.Code == "dressing").IsInside.Should().BeNull();
        reconciled.ForHistory(BatchKind.Of()).Dressed.Should().BeNull();
        reconciled.Cautions.Should().Contain(caution => caution.Code == "not-weighed-alive").And.Contain(caution => caution.Code == "feed-not-recorded");
        reconciled.Indices.Should().BeNull();
    }

    [Fact]
    public void Lesions_and_losses_beyond_the_forecast_go_to_the_vet()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(), new PlantSheet
        {
            Killed = Killed, Delivered = 150, Condemned = [CondemnedLine.Whole("septicemia", 30)], Opened = 100, Lesions = LesionCounts.Of(red: 40),
        }, Few);

        Caution vet = reconciled.Cautions.Single(caution => caution.Code == "ask-the-vet");
        vet.Text.Should().Contain("lost on the farm").And.Contain("condemned whole").And.Contain("dead tenders");
        reconciled.Cautions.Should().Contain(caution => caution.Code == "inspectors-word");
        Reconciliation.Of(Plan(), Sheet(265), Few).Cautions.Should().NotContain(caution => caution.Code == "ask-the-vet");
    }

    [Fact]
    public void Another_day_than_offered_is_reconciled_with_a_caution()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(), new PlantSheet { Killed = Killed.AddDays(2), Delivered = 265 }, Few);

        (reconciled.WasOffered, reconciled.Age.Days).Should().Be((false, 58));
        reconciled.Cautions.Should().Contain(caution => caution.Code == "another-day");
    }

    [Fact]
    public void One_thread_and_two_give_the_same_bits() =>
        Reconciliation.Of(Plan(), Sheet(260, live: 700, packed: 500), new() { Draws = 600, Threads = 1 }).Figures.Select(figure => figure.Forecast)
            .Should().Equal(Reconciliation.Of(Plan(), Sheet(260, live: 700, packed: 500), new() { Draws = 600, Threads = 2 }).Figures.Select(figure => figure.Forecast));

    [Fact]
    public void Sheets_that_cannot_be_of_this_batch_are_refused()
    {
        FluentActions.Invoking(() => Reconciliation.Of(Plan(), new PlantSheet { Killed = HarvestCase.Placed.AddDays(3), Delivered = 10 })).Should().Throw<ArgumentException>().WithMessage("*at least 15 days later*");
        FluentActions.Invoking(() => Reconciliation.Of(Plan(), Sheet(301))).Should().Throw<ArgumentException>().WithMessage("*at most the 300 placed*");
        FluentActions.Invoking(() => Reconciliation.Of(Plan(deaths: [Deaths.Of(Age.FromDays(3), 1)]), new PlantSheet { Killed = Killed, Delivered = 250, Dead = 4 })).Should().Throw<ArgumentException>().WithMessage("*expected them once*");
        FluentActions.Invoking(() => new PlantSheet { Killed = Killed, Delivered = 0 }).Should().Throw<ArgumentOutOfRangeException>();
    }
}
