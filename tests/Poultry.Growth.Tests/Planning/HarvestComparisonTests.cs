using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Planning;

public class HarvestComparisonTests
{
    private static readonly HarvestOptions Few = new() { Draws = 1000 };

    private static readonly HarvestComparison Three = HarvestComparison.Of(HarvestCase.Plan(), Few);

    [Fact]
    public void Mean_head_and_weight_and_feed_agree_with_their_closed_forms()
    {
        BatchPlan plan = HarvestCase.Plan();
        foreach (HarvestOption option in Three.Options)
        {
            // Standard errors of a mean of 1000 draws: the bound is four of them.
            option.Head.Value.Should().BeApproximately(plan.Birds.BirdsAt(option.Age), 4 * 14 / Math.Sqrt(1000));

            // A projection tells the median, the draws their mean: nearly log-normal, half the square of the spread above it.
            Interval<Mass> range = plan.Growth.MeanAt(option.Age).Interval;
            double spread = Math.Log(range.High!.Value / range.Low!.Value) / (2 * 1.645);
            option.MeanWeight.Value.Kilograms.Should().BeApproximately(
                plan.Growth.MeanAt(option.Age).Value.Kilograms * Math.Exp(spread * spread / 2), 4 * spread * option.MeanWeight.Value.Kilograms / Math.Sqrt(1000));
        }
    }

    [Fact]
    public void Counting_the_birds_tells_nothing_of_what_they_ate()
    {
        WeighIn[] often = [.. Enumerable.Range(2, 6).Select(week => WeighIn.Mean(Age.FromWeeks(week), HarvestCase.Plan().Growth.MeanAt(Age.FromWeeks(week)).Value, 300))];
        BatchPlan counted = ReconciledCase.Plan(deaths: [Deaths.Of(Age.FromDays(55), 5)], weighIns: often);

        Interval<Mass> feed = HarvestComparison.Of(counted, Few).Options[0].Feed.Interval;

        // By the error of the model alone; the curves come on top.
        Math.Log(feed.High!.Value / feed.Low!.Value).Should().BeGreaterThan(2 * 1.6 * EnergyModel.HeatProduction.CumulativeError);
    }

    [Fact]
    public void Feed_that_a_record_knows_is_in_no_doubt_whatever_the_curve()
    {
        FeedRecord record = new(Age.FromDays(55), Mass.FromKilograms(1700), Mass.FromKilograms(90));

        Interval<Mass> feed = HarvestComparison.Of(ReconciledCase.Plan(record: record), Few).Options[0].Feed.Interval;

        // What is left is the feed of one day, at most 250 g for each of at most 300 birds.
        feed.Low!.Value.Kilograms.Should().BeGreaterThan(1610);
        feed.High!.Value.Kilograms.Should().BeLessThan(1610 + (0.25 * 300));
    }

    [Fact]
    public void A_certain_batch_has_the_margin_of_the_parts_worked_out_by_themselves()
    {
        PackOffer all = PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(9), Demand.Unlimited);
        BatchPlan plan = HarvestCase.Plan(Survival.WithoutLoss, LargeLoss.Never, [all], null, HarvestCase.On(56));
        HarvestOption option = HarvestComparison.Of(plan, Few).Options[0];

        Mass mean = option.MeanWeight.Value;
        PlantReturn back = PlantReturn.Of(
            DeliveredBirds.Of(300, plan.Growth.WeightsAt(option.Age, mean), LiveState.FullFed),
            new() { Dressing = plan.Plant.Dressing, AtKilling = LiveState.OffFeed(plan.Dates[0].OffFeed, plan.Dates[0].Road) },
            plan.Order,
            plan.Offers);
        option.Head.Value.Should().Be(300);
        option.Revenue.Value.Amount.Should().BeApproximately(back.Revenue.Amount, 0.005 * back.Revenue.Amount, "revenue is linear in the mean weight and in the dressing ratio");
        option.Cost.Value.Amount.Should().BeApproximately(600 + 60 + 150 + (18 * 50.0 / 60 * 55) + (5 * 300) + FeedCost(plan, option.Age), 0.01 * option.Cost.Value.Amount);
    }

    [Fact]
    public void Where_nothing_is_lost_and_all_sells_at_one_price_the_batch_has_the_textbook_margin_of_its_birds()
    {
        PackOffer all = PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(9), Demand.Unlimited);
        DressingRatio ratio = DressingRatio.Of("exact", LikelyRange<Probability>.Exactly(Probability.FromPercent(72)), CarcassBasis.NotStated, LiveState.FullFed);
        BatchPlan plan = HarvestCase.Plan(Survival.WithoutLoss, LargeLoss.Never, [all], null, HarvestCase.On(56, new() { PerBird = Money.Of(5) })).With(ratio);
        HarvestOption option = HarvestComparison.Of(plan, new() { Draws = 4000 }).Options[0];

        BirdMargin bird = new()
        {
            Price = UnitPrice.FromAmountPerKilogram(9), Dressing = Probability.FromPercent(72), Feed = UnitPrice.FromAmountPerKilogram(0.70), Chick = Money.Of(2), Slaughter = Money.Of(5),
            Day = Money.Of(18 * 50.0 / 60 / 300),
        };
        Mass ate = option.Feed.Value / 300;
        double feedDearerBefore = 0.10 * Poultry.Growth.Feeding.FeedForecast.For(plan.Growth.Curve, plan.Birds, plan.Feeds, plan.Feeding, option.Age).BatchFeedTo(Age.FromDays(21)).Value.Kilograms;

        // Means of draws: revenue and feed are linear in what was drawn, so that only the table of packs stands between the two.
        double expected = (300 * bird.At(Age.FromDays((option.Age - plan.Birds.AgeAtPlacement).Days), option.MeanWeight.Value, ate).Amount) - 60 - 150 - feedDearerBefore;
        option.Margin.Value.Amount.Should().BeApproximately(expected, 0.003 * option.Revenue.Value.Amount);
    }

    [Fact]
    public void Birds_dead_on_arrival_and_condemned_are_lost_where_they_are_lost()
    {
        PlantTerms terms = new() { PerBird = Money.Of(5), PerCondemnedBird = Money.Of(3), PerMissingBird = Money.Of(100) };
        PackOffer all = PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(9), Demand.Unlimited);
        BatchPlan sound = HarvestCase.Plan(Survival.WithoutLoss, LargeLoss.Never, [all], null, HarvestCase.On(56, terms)).With(dead: 0, condemned: 0);
        HarvestOption none = HarvestComparison.Of(sound, Few).Options[0], some = HarvestComparison.Of(sound.With(dead: 2, condemned: 5), Few).Options[0];

        (none.DeadOnArrival.Value, none.Condemned.Value).Should().Be((0, 0));
        some.Head.Value.Should().Be(300, "they were alive when they were caught");
        some.DeadOnArrival.Value.Should().BeApproximately(6, 1e-9);
        some.Condemned.Value.Should().BeApproximately(0.05 * 294, 1e-9, "of those delivered");
        (some.Revenue.Value.Amount / none.Revenue.Value.Amount).Should().BeApproximately(0.98 * 0.95, 1e-6);
        (some.Cost.Value - none.Cost.Value).Amount.Should().BeApproximately((3 * 0.05 * 294) - (5 * 6), 1e-6, "the plant kills fewer and charges for the condemned; dead birds did come");
    }

    [Fact]
    public void A_range_of_losses_at_the_plant_widens_the_margin_and_is_named_where_it_matters()
    {
        BatchPlan plan = HarvestCase.Plan(dates: HarvestCase.On(56));
        HarvestComparison doubtful = HarvestComparison.Of(plan.With(condemned: 5, mostCondemned: 40), Few);

        doubtful.SpreadDrivers.Single(driver => driver.Name == "birds condemned").Share.Percent.Should().BeGreaterThan(5);
        HarvestComparison.Of(plan, Few).SpreadDrivers.Single(driver => driver.Name == "birds condemned").Share.Percent.Should().Be(0, "without a range it is the same in every fate");
        HarvestComparison.Of(plan, Few).Cautions.Select(caution => caution.Code).Should().Contain("road-loss-elsewhere");
        HarvestComparison.Of(plan.With(dead: 1), Few).Cautions.Select(caution => caution.Code).Should().NotContain("road-loss-elsewhere");
    }

    [Fact]
    public void Orders_are_missed_where_fewer_packs_are_there_than_asked_for()
    {
        Probability Missed(Demand demand) => HarvestComparison.Of(
            HarvestCase.Plan(Survival.WithoutLoss, LargeLoss.Never, [PackOffer.ByWeight(CutOrderLine.WholeBird, 1, UnitPrice.FromAmountPerKilogram(9), demand)], null, HarvestCase.On(56)), Few)
            .Options[0].ChanceOrdersMissed;

        Missed(Demand.Unlimited).Fraction.Should().Be(0);
        Missed(Demand.Of(100, 150, 200)).Fraction.Should().Be(0);
        Missed(Demand.Of(400, 450, 500)).Fraction.Should().Be(1);
        Missed(Demand.Of(200, 300, 400)).Fraction.Should().BeInRange(0.3, 0.7, "nearly 300 packs against a demand even about 300");
        Three.Recommendation.Should().Contain(Three.Doubt);
    }

    [Fact]
    public void Packs_sold_and_left_are_those_of_the_birds_that_pass()
    {
        foreach (HarvestOption option in Three.Options)
        {
            PackOutlook whole = option.Packs.Should().ContainSingle().Subject;
            (whole.Sold.Value + whole.Left.Value).Should().BeApproximately(
                (option.Head.Value - option.DeadOnArrival.Value) * (1 - 0.0024) * (1 - 0.0097), 0.01, "every bird that passes is a pack");
            option.ChanceOrdersMissed.Fraction.Should().BeInRange(0.1, 0.9, "200 to 320 are asked for");
            whole.Sold.Value.Should().BeInRange(whole.Sold.Interval.Low!.Value, whole.Sold.Interval.High!.Value);
        }
    }

    [Fact]
    public void Every_range_of_a_day_holds_its_mean_and_the_share_wanted_is_the_projection_s()
    {
        foreach (HarvestOption option in Three.Options)
        {
            option.MarginPerBird.Value.Should().BeInRange(option.MarginPerBird.Interval.Low!.Value, option.MarginPerBird.Interval.High!.Value);
            option.BreakEvenPrice!.Value.Should().BeInRange(option.BreakEvenPrice.Interval.Low!.Value, option.BreakEvenPrice.Interval.High!.Value);
            option.MarginPerShelterDay.Interval.Low!.Value.Amount.Should().BeApproximately(option.Margin.Interval.Low!.Value.Amount / option.ShelterDays.Days, 1e-9);
            option.ShareWanted!.Value.Should().Be(HarvestCase.Plan().Growth.ShareInBands(option.Age, Mass.FromKilograms(2.2), Mass.FromKilograms(3.2))[1].Share);
            option.ShareWanted.Value.Should().BeInRange(option.ShareWanted.Interval.Low!.Value, option.ShareWanted.Interval.High!.Value);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_bits_on_one_thread_and_on_two()
    {
        HarvestComparison one = HarvestComparison.Of(HarvestCase.Plan(), new() { Draws = 600, Threads = 1 });
        HarvestComparison two = HarvestComparison.Of(HarvestCase.Plan(), new() { Draws = 600, Threads = 2 });

        two.Options.Select(option => option.Margin.Value.Amount).Should().Equal(one.Options.Select(option => option.Margin.Value.Amount));
        two.Recommendation.Should().Be(one.Recommendation);
        HarvestComparison.Of(HarvestCase.Plan(), new() { Draws = 600, Seed = 2 }).Options[0].Margin.Value.Should().NotBe(one.Options[0].Margin.Value);
    }

    [Fact]
    public void The_recommendation_names_the_best_mean_its_doubt_and_the_bad_case()
    {
        Three.Recommended.Margin.Value.Should().Be(Three.Options.Max(option => option.Margin.Value));
        Three.Recommendation.Should().Contain("Kill on " + Three.Recommended.Date).And.Contain("worst tenth").And.Contain("beats it with a chance of").And.Contain("Decide by");
        Three.ChanceBeats(0, 1).Fraction.Should().BeApproximately(1 - Three.ChanceBeats(1, 0).Fraction, 1e-12);
        Three.Recommended.BadCase.Should().BeLessThan(Three.Recommended.Margin.Value);
    }

    [Fact]
    public void Growth_drives_the_spread_and_every_share_is_a_share()
    {
        Three.SpreadDrivers.Should().BeInDescendingOrder(driver => driver.Share);
        Three.SpreadDrivers.Select(driver => driver.Name).Should().Contain(["growth", "birds alive", "feed eaten at the same growth", "dressing", "prices", "demand for whole", "dead tenders"]);
    }

    [Fact]
    public void A_weigh_in_is_worth_nothing_where_only_one_day_is_offered_and_something_where_days_are_close()
    {
        HarvestComparison.Of(HarvestCase.Plan(dates: HarvestCase.On(56)), Few).WeighInValue(Age.FromDays(42), 30).Amount.Should().Be(0);
        Three.WeighInValue(Age.FromDays(42), 30).Amount.Should().BeGreaterThanOrEqualTo(0);
    }

    [Fact]
    public void Moving_a_booked_date_costs_what_the_plant_charges()
    {
        OfferedDate booked = new() { Date = HarvestCase.On(49).Date, IsBooked = true, ChangeCost = Money.Of(75), Terms = new() { Deposit = Money.Of(25) } };
        HarvestComparison with = HarvestComparison.Of(HarvestCase.Plan(dates: [booked, HarvestCase.On(56)]), Few);
        HarvestComparison without = HarvestComparison.Of(HarvestCase.Plan(dates: [HarvestCase.On(49), HarvestCase.On(56)]), Few);

        (with.Options[1].Cost.Value - without.Options[1].Cost.Value).Amount.Should().BeApproximately(100, 1e-6);
    }

    [Fact]
    public void Where_more_come_dead_than_were_booked_none_is_missing()
    {
        Money Cost(int? booked) => HarvestComparison.Of(
            HarvestCase.Plan(dates: new OfferedDate { Date = HarvestCase.On(56).Date, BookedBirds = booked, Terms = new() { PerBird = Money.Of(5), PerMissingBird = Money.Of(40) } }).With(dead: 50), Few).Options[0].Cost.Value;

        Cost(booked: 20).Should().Be(Cost(booked: null));
        Cost(booked: 400).Should().BeGreaterThan(Cost(booked: null));
    }

    [Fact]
    public void Cautions_say_what_is_missing()
    {
        Three.Cautions.Select(caution => caution.Code).Should().Contain("inspection-rules");
        BatchPlan tight = HarvestCase.Plan(dates: HarvestCase.On(56, new() { MostBirds = 250, FewestBirds = 320 }));

        HarvestComparison.Of(tight, Few).Cautions.Select(caution => caution.Code).Should().Contain("plant-head-exceeded").And.Contain("plant-head-too-low");
    }

    private static double FeedCost(BatchPlan plan, Age until) =>
        Poultry.Growth.Feeding.FeedForecast.For(plan.Growth.Curve, plan.Birds, plan.Feeds, plan.Feeding, until).Cost!.Value.Amount;
}
