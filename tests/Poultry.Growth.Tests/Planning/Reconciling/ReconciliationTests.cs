using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Planning;

/// <summary>A plant's sheet beside the forecast: heads add up or the remainder is told, parts add up to the difference, and what the forecast knew is what was known.</summary>
public sealed class ReconciliationTests
{
    private static readonly DateOnly Killed = HarvestCase.Placed.AddDays(55);
    private static readonly HarvestOptions Few = new() { Draws = 400 };

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
    public void The_forecast_knows_nothing_of_the_last_day()
    {
        WeighIn last = WeighIn.Mean(Age.FromDays(56), Mass.FromKilograms(2.2), 40);
        BatchPlan plan = Plan(weighIns: [.. HarvestCase.Plan().Growth.WeighIns!, last], record: new FeedRecord(Age.FromDays(55), Mass.FromKilograms(1700), Mass.FromKilograms(90)));
        Reconciliation reconciled = Reconciliation.Of(plan, Sheet(265), Few);

        reconciled.Forecast.Growth.WeighIns!.Max(weighIn => weighIn.Age).Days.Should().Be(28);
        reconciled.Forecast.FeedRecord.Should().BeNull();
        reconciled.Knew.Should().EndWith("14 d to 28 d; no deaths written down; no feed record");
        reconciled.Figures.Single(figure => figure.Code == "feed").Actual.Should().Be(1610);
        reconciled.ForHistory(BatchKind.Of()).Weights.WeighIns.Should().HaveCount(4, "it is learned from all the same");
    }

    [Fact]
    public void A_record_of_weeks_before_belongs_to_the_forecast()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(record: new FeedRecord(Age.FromDays(30), Mass.FromKilograms(700), Mass.FromKilograms(90))), Sheet(265), Few);

        reconciled.Forecast.FeedRecord.Should().NotBeNull();
        reconciled.Figures.Single(figure => figure.Code == "feed").Actual.Should().BeNull();
    }

    [Fact]
    public void What_the_batch_teaches_is_what_was_measured()
    {
        BatchPlan plan = Plan(cuttingLoss: 4);
        FarmBatch batch = Reconciliation.Of(plan, new PlantSheet
        {
            Killed = Killed,
            Delivered = 270,
            LiveWeight = Mass.FromKilograms(270 * 2.5),
            FeedEaten = Mass.FromKilograms(1750),
            Missing = 2,
            Packs = [PackedLine.Of("whole", 1, 200, Mass.FromKilograms(350)), PackedLine.Of("breast", 2, 60, Mass.FromKilograms(96))],
            Basis = CarcassBasis.Of(CarcassCondition.Packed, neck: Inclusion.With),
            Opened = 70,
            Lesions = LesionCounts.Of(green: 2),
        }, Few).ForHistory(BatchKind.Of("strain A", "movable shelter"));

        batch.Losses!.ToString().Should().Be("30 of 300 birds, 1 d to 56 d");
        batch.Weights.WeighIns[^1].BirdsWeighed.Should().Be(270);
        batch.Weights.WeighIns[^1].MeanWeight.Kilograms.Should().BeApproximately(2.5 / (1 - 0.03 - (1.5 * 0.0011)), 1e-9, "10 h off feed, 1.5 of them on the road, are put back");
        (LiveWeight live, CarcassWeight carcass) = batch.Dressed!.Value;
        live.Weight.Kilograms.Should().BeApproximately(675, 1e-9);
        carcass.Weight.Kilograms.Should().BeApproximately(350 + (96 / 0.96), 1e-9, "a plan takes the loss in cutting off by itself");
        carcass.Basis.Neck.Should().Be(Inclusion.With);
        (batch.Inspection!.Opened, batch.Inspection.Found, batch.Inspection.Batch).Should().Be((70, 2, "invented"));
        batch.Feed!.Eaten.Kilograms.Should().Be(1750);
        batch.Feed.Ratio.Should().BeInRange(0.8, 1.3);
        batch.Kind.Should().Be(BatchKind.Of("Strain a", "movable shelter"));
    }

    [Fact]
    public void Money_taken_is_the_revenue_where_all_of_it_is_known()
    {
        PlantSheet taken = new() { Killed = Killed, Delivered = 260, Packs = [PackedLine.Of("whole", 1, 258, Mass.FromKilograms(500)).Taking(Money.Of(4321))] };
        PlantSheet priced = new() { Killed = Killed, Delivered = 260, Packs = [PackedLine.Of("whole", 1, 280, Mass.FromKilograms(560))] };

        Actual(taken, "revenue").Should().Be(4321);
        Actual(priced, "revenue").Should().BeApproximately((260 * 2 * 9.50) + (20 * 2 * 6), 1e-9, "260 are likely to sell, the freezer takes the rest");
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

    private static double? Actual(PlantSheet sheet, string code) => Reconciliation.Of(Plan(), sheet, Few).Figures.Single(figure => figure.Code == code).Actual;

    private static PlantSheet Sheet(int delivered, double? live = null, double? packed = null, double? feed = null) => new()
    {
        Killed = Killed,
        Delivered = delivered,
        LiveWeight = live is { } weight ? Mass.FromKilograms(weight) : null,
        FeedEaten = feed is { } eaten ? Mass.FromKilograms(eaten) : null,
        Packs = packed is { } kilograms ? [PackedLine.Of("whole", 1, delivered, Mass.FromKilograms(kilograms))] : [],
    };

    private static BatchPlan Plan(IReadOnlyList<Deaths>? deaths = null, IReadOnlyList<WeighIn>? weighIns = null, FeedRecord? record = null, double cuttingLoss = 0)
    {
        BatchPlan plan = HarvestCase.Plan(dates: HarvestCase.On(56));
        return new()
        {
            Name = plan.Name,
            Placed = plan.Placed,
            Birds = HeadCountPath.Recorded(300, Age.FromDays(1), deaths ?? [], Survival.FastGrowingOutdoor),
            LargeLoss = LargeLoss.Never,
            Growth = weighIns is null ? plan.Growth : Projection.Of(WeighInSeries.Of(weighIns), plan.Growth.Prior),
            Feeds = plan.Feeds,
            Feeding = plan.Feeding,
            FeedRecord = record,
            Plant = new() { Dressing = plan.Plant.Dressing, CuttingLoss = Probability.FromPercent(cuttingLoss) },
            Order = plan.Order,
            Offers = plan.Offers,
            Dates = plan.Dates,
            Costs = plan.Costs,
        };
    }
}
