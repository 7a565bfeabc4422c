using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

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
    public void Cautions_say_what_is_missing()
    {
        Three.Cautions.Select(caution => caution.Code).Should().Contain("inspection-rules");
        BatchPlan tight = HarvestCase.Plan(dates: HarvestCase.On(56, new() { MostBirds = 250, FewestBirds = 320 }));

        HarvestComparison.Of(tight, Few).Cautions.Select(caution => caution.Code).Should().Contain("plant-head-exceeded").And.Contain("plant-head-too-low");
    }

    private static double FeedCost(BatchPlan plan, Age until) =>
        Poultry.Growth.Feeding.FeedForecast.For(plan.Growth.Curve, plan.Birds, plan.Feeds, plan.Feeding, until).Cost!.Value.Amount;
}
