using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>A forecast is its parts, follows diet and weather the right way, and tells how sure it is.</summary>
public class FeedForecastTests
{
    public static TheoryData<string> Models => new(EnergyModel.All.Select(model => model.Model.Id));

    [Theory]
    [MemberData(nameof(Models))]
    public void Energy_is_the_sum_of_its_parts_and_feed_holds_it(string id)
    {
        FeedingConditions conditions = new()
        {
            Temperatures = FeedCases.Meadow,
            Model = EnergyModel.All.Single(model => model.Model.Id == id),
            Ranging = Probability.FromPercent(8),
            Pasture = PastureIntake.RiveraFerre2007,
            Waste = Probability.FromPercent(5),
        };
        FeedForecast forecast = FeedCases.Forecast(conditions, FeedingPlan.OneFeed(FeedCases.Kilocalories(3000)));

        double sum = 0;
        foreach (FeedDay day in forecast.ByDay)
        {
            double parts = (double)(day.Maintenance + day.TemperatureTerm + day.Gain + day.Ranging).Watts;
            parts.Should().BeApproximately((double)day.Energy.Watts, 1e-9);
            bool outside = day.Age.Days > 21.5;
            ((double)day.Ranging.Watts).Should().BeApproximately(outside ? 0.08 * (double)day.Maintenance.Watts : 0, 1e-9);
            double eaten = day.Feed.Value.Kilograms * 3000 * 0.95 / (outside ? 0.97 : 1);
            eaten.Should().BeApproximately(Calories.PerDay(day.Energy), 1e-6);
            sum += day.Feed.Value.Kilograms;
            day.CumulativeFeed.Value.Kilograms.Should().BeApproximately(sum, 1e-9);
        }

        forecast.Phases.Sum(phase => phase.Feed.Value.Kilograms).Should().BeApproximately(forecast.Total.BatchFeed.Value.Kilograms, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Daily_steps_agree_with_steps_of_an_hour(string id)
    {
        EnergyModel model = EnergyModel.All.Single(model => model.Model.Id == id);
        FeedForecast forecast = FeedForecast.For(
            FeedCases.Curve, HeadCountPath.Constant(1), FeedingPlan.OneFeed(FeedCases.Kilocalories(3000)), new FeedingConditions { Temperatures = FeedCases.Meadow, Model = model, Sex = Sex.Male }, FeedCases.Eight);

        double fine = 0;
        for (int hour = 0; hour < 56 * 24; hour++)
        {
            double from = hour / 24.0, middle = from + (0.5 / 24), to = from + (1 / 24.0);
            double Grams(double days) => FeedCases.Curve.WeightAt(Age.FromDays(days)).Grams;
            EnergyParts parts = model.On(new(true, Grams(from), Grams(middle), Grams(to), FeedCases.Meadow.Celsius(middle), middle));
            fine += (((parts.Maintenance + parts.TemperatureTerm) / 24) + parts.Gain) / 3000;
        }

        forecast.Total.CumulativeFeed.Value.Kilograms.Should().BeApproximately(fine, 0.003 * fine);
    }

    [Fact]
    public void Feed_falls_as_the_energy_of_the_diet_rises()
    {
        double[] kilograms = [.. new double[] { 2700, 3000, 3300 }.Select(energy => FeedCases.Forecast(plan: FeedingPlan.OneFeed(FeedCases.Kilocalories(energy))).Total.BatchFeed.Value.Kilograms)];

        kilograms.Should().BeInDescendingOrder();
        (kilograms[0] / kilograms[2]).Should().BeApproximately(3300.0 / 2700, 1e-9);
    }

    [Fact]
    public void Cold_costs_feed_and_pasture_saves_its_energy_only()
    {
        FeedForecast At(double celsius, PastureIntake? pasture = null) => FeedCases.Forecast(new()
        {
            Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(celsius))),
            Pasture = pasture ?? PastureIntake.None,
        });
        double cold = Kilograms(At(5)), mild = Kilograms(At(18));
        cold.Should().BeInRange(1.05 * mild, 1.2 * mild);
        (Kilograms(At(18, PastureIntake.RiveraFerre2007)) / mild).Should().BeInRange(0.97, 0.98, "3 % from three weeks on");
    }

    [Fact]
    public void No_jump_beyond_that_of_the_diet()
    {
        FeedDay[] days = [.. FeedCases.Forecast(new() { Temperatures = Temperatures.StandardHouse }).ByDay.SkipWhile(day => day.Age.Days < 10)];

        for (int i = 1; i < days.Length; i++)
        {
            (Calories.PerDay(days[i].Energy) / Calories.PerDay(days[i - 1].Energy)).Should().BeInRange(1, 1.12, "{0}", days[i].Age);
        }
    }

    [Fact]
    public void Curve_error_widens_the_model_s_own()
    {
        Projection projection = Projection.Of(Fitting.Demo.Series(), GrowthPrior.FastGrowingOutdoor(Sex.Mixed));
        CurveDraws draws = projection.Draws(1, [.. FeedForecast.AgesFor(FeedCases.Birds, FeedCases.Eight)]);
        FeedingConditions conditions = new() { Temperatures = FeedCases.Meadow, HatchWeight = Mass.FromGrams(42) };
        FeedForecast Forecast(CurveDraws? curves) => FeedForecast.For(projection.Curve, FeedCases.Birds, FeedingPlan.UsualDiets, conditions, FeedCases.Eight, new() { Curves = curves });

        Estimate<Mass> sure = Forecast(null).Total.BatchFeed, unsure = Forecast(draws).Total.BatchFeed;

        unsure.Value.Should().Be(sure.Value);
        LogWidth(sure).Should().BeApproximately(2 * 1.6449 * 0.05, 1e-3, "the model's standard error of cumulative feed");
        LogWidth(unsure).Should().BeInRange(1.02 * LogWidth(sure), 2 * LogWidth(sure));
        Forecast(null).Cautions.Select(caution => caution.Code).Should().Contain("curve-taken-as-right");
        Forecast(draws).Cautions.Select(caution => caution.Code).Should().NotContain("curve-taken-as-right");
    }

    [Fact]
    public void A_record_of_three_weeks_moves_the_rest_and_is_met_itself()
    {
        FeedForecast plain = FeedCases.Forecast();
        double expected = plain.BatchFeedTo(Age.FromDays(28)).Value.Kilograms;
        FeedRecord record = new(Age.FromDays(28), Mass.FromKilograms((1.05 * expected) + 40), Mass.FromKilograms(40));

        FeedForecast corrected = FeedCases.Forecast(options: new() { Record = record });

        corrected.FarmFactor!.IsApplied.Should().BeTrue();
        corrected.FarmFactor.Ratio.Should().BeApproximately(1.05, 1e-9);
        corrected.BatchFeedTo(Age.FromDays(28)).Value.Kilograms.Should().BeApproximately(record.Eaten.Kilograms, 1e-9);
        corrected.Total.BatchFeed.Value.Kilograms.Should().BeApproximately(1.05 * plain.Total.BatchFeed.Value.Kilograms, 1e-9);
        LogWidth(corrected.Total.BatchFeed).Should().BeLessThan(LogWidth(plain.Total.BatchFeed));
        LogWidth(corrected.Total.BatchFeed).Should().BeGreaterThan(0);
    }

    [Theory]
    [InlineData(14, BirdType.Fast, false, "before three weeks")]
    [InlineData(28, BirdType.Slow, false, "slow birds")]
    [InlineData(28, BirdType.Fast, true, "slides")]
    public void A_record_that_would_not_help_is_compared_and_not_used(double days, BirdType type, bool otherModel, string reason)
    {
        FeedingConditions conditions = new() { Temperatures = FeedCases.Meadow, Type = type, Model = otherModel ? EnergyModel.Sakomura2005 : EnergyModel.DefaultFor(type) };
        FeedRecord record = new(Age.FromDays(days), Mass.FromKilograms(900), Mass.Zero);

        FeedForecast forecast = FeedCases.Forecast(conditions, options: new() { Record = record });

        forecast.FarmFactor!.IsApplied.Should().BeFalse();
        forecast.FarmFactor.Reason.Should().Contain(reason);
        forecast.FarmFactor.Interval.Should().BeNull();
        forecast.Total.BatchFeed.Value.Should().Be(FeedCases.Forecast(conditions).Total.BatchFeed.Value);
    }

    [Fact]
    public void Bags_are_full_orders_are_in_time_and_cost_is_that_of_bags()
    {
        FeedPhase starter = new("starter", Age.Hatch, Age.FromDays(21), FeedCases.Kilocalories(3000))
        {
            Bag = Mass.FromPounds(50), Price = UnitPrice.FromAmountPerKilogram(0.7), DeliveryTime = Duration.FromDays(5),
        };
        FeedPhase grower = new("grower", Age.FromDays(21), null, FeedCases.Kilocalories(3100));
        FeedForecast forecast = FeedCases.Forecast(plan: FeedingPlan.Of(starter, grower));

        PhaseFeed bought = forecast.Phases[0];
        bought.Bags.Should().Be((int)Math.Ceiling(bought.Feed.Value.Pounds / 50));
        bought.BagsAtMost.Should().BeGreaterThan(bought.Bags!.Value);
        bought.Cost!.Value.Amount.Should().BeApproximately(0.7 * bought.Bags.Value * Mass.FromPounds(50).Kilograms, 1e-9);
        bought.OrderBy.Days.Should().Be(-5, "it must be there when the chicks come");
        forecast.Phases[1].OrderBy.Days.Should().Be(20, "21 d of age is 20 d after chicks of a day were placed");
        forecast.Phases[1].Bags.Should().BeNull();
        forecast.Cost.Should().BeNull("the grower has no price");
        (forecast.CostInterval, forecast.Phases[1].CostInterval).Should().Be((null, null));
    }

    [Fact]
    public void What_feed_costs_lies_as_wide_as_the_feed()
    {
        FeedPhase starter = new("starter", Age.Hatch, Age.FromDays(21), FeedCases.Kilocalories(3000)) { Bag = Mass.FromKilograms(25), Price = UnitPrice.FromAmountPerKilogram(0.8) };
        FeedPhase grower = new("grower", Age.FromDays(21), null, FeedCases.Kilocalories(3100)) { Price = UnitPrice.FromAmountPerKilogram(0.6) };
        FeedForecast forecast = FeedCases.Forecast(plan: FeedingPlan.Of(starter, grower), options: new() { Level = 0.8 });

        PhaseFeed bags = forecast.Phases[0], loose = forecast.Phases[1];
        bags.CostInterval!.High!.Value.Amount.Should().BeApproximately(0.8 * 25 * bags.BagsAtMost!.Value, 1e-9);
        bags.CostInterval.Low!.Value.Amount.Should().BeApproximately(0.8 * 25 * Math.Ceiling(bags.Feed.Interval.Low!.Value.Kilograms / 25), 1e-9);
        loose.CostInterval!.Low!.Value.Amount.Should().BeApproximately(0.6 * loose.Feed.Interval.Low!.Value.Kilograms, 1e-9);
        Interval<Mass> feed = forecast.Total.BatchFeed.Interval;
        forecast.CostInterval!.Level.Should().Be(0.8);
        (forecast.CostInterval.High!.Value.Amount / forecast.Cost!.Value.Amount).Should().BeApproximately(feed.High!.Value / forecast.Total.BatchFeed.Value, 1e-12);
        (forecast.CostInterval.Low!.Value.Amount / forecast.Cost.Value.Amount).Should().BeApproximately(feed.Low!.Value / forecast.Total.BatchFeed.Value, 1e-12);
    }

    /// <summary>A day in whose middle the birds go out has the outside's temperature, and the outside's ranging with it.</summary>
    [Fact]
    public void A_day_counts_as_spent_outside_by_its_middle()
    {
        Temperatures meadow = Temperatures.HouseThen(Age.FromDays(21.5), Temperatures.Constant(Temperature.FromDegreesCelsius(5)));
        IReadOnlyList<FeedDay> days = FeedCases.Forecast(new() { Temperatures = meadow, Ranging = Probability.FromPercent(10) }).ByDay;

        days.First(day => (double)day.Ranging.Watts > 0).Age.Days.Should().Be(22);
        days.First(day => (double)day.TemperatureTerm.Watts > 0).Age.Days.Should().Be(22);
    }

    [Fact]
    public void One_bag_is_a_bag()
    {
        FeedPhase feed = new("starter", Age.Hatch, null, FeedCases.Kilocalories(3000)) { Bag = Mass.FromKilograms(5000) };

        FeedCases.Forecast(plan: FeedingPlan.Of(feed)).Phases[0].ToString().Should().EndWith(" lb), 1 bag");
    }

    [Fact]
    public void Heat_slow_birds_and_young_or_heavy_birds_are_cautioned()
    {
        FeedingConditions hot = new() { Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(36))), Type = BirdType.Slow };

        FeedCases.Forecast(hot).Cautions.Select(caution => caution.Code).Should().Contain(["heat-lowers-intake", "slow-birds-uncertain", "diet-assumed"]);
        FeedCases.Forecast(new() { Temperatures = FeedCases.Meadow, Model = EnergyModel.Sakomura2005 }).Cautions.Select(caution => caution.Code).Should().Contain("not-the-default-model");
    }

    private static double Kilograms(FeedForecast forecast) => forecast.Total.BatchFeed.Value.Kilograms;

    private static double LogWidth(Estimate<Mass> estimate) => Math.Log(estimate.Interval.High!.Value.Kilograms / estimate.Interval.Low!.Value.Kilograms);
}
