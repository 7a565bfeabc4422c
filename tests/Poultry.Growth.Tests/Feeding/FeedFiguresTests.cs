using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>Each figure of feed, energy and water by hand, at its edges.</summary>
public class FeedFiguresTests
{
    private static readonly Temperature Mild = Temperature.FromDegreesCelsius(20);

    public static TheoryData<string> Maintenance => new(Upkeep.Select(model => model.Model.Id));

    private static MaintenanceEnergy[] Upkeep => [MaintenanceEnergy.Sakomura2005, MaintenanceEnergy.Longo2006, MaintenanceEnergy.Liu2017, MaintenanceEnergy.Fraga2004, MaintenanceEnergy.DarmaniKuhi2003];

    [Fact]
    public void A_mixed_bird_is_half_a_cockerel_and_half_a_pullet_of_their_own_weights()
    {
        FeedDay day = FeedForecast.For(FeedCases.Curve, HeadCountPath.Constant(1), FeedingPlan.OneFeed(FeedCases.Kilocalories(3000)), FeedCases.Outdoors, FeedCases.Eight).ByDay[40];
        EnergyParts Of(bool isMale)
        {
            double Grams(double days)
            {
                double male = 2 / (1 + SexDimorphism.FemaleRatio(days));
                return FeedCases.Curve.WeightAt(Age.FromDays(days)).Grams * (isMale ? male : 2 - male);
            }

            return EnergyModel.HeatProduction.On(new(isMale, Grams(40), Grams(40.5), Grams(41), 14, 40.5));
        }

        EnergyParts mean = EnergyParts.Mean(Of(isMale: true), Of(isMale: false));

        Calories.PerDay(day.Maintenance).Should().BeApproximately(mean.Maintenance, 1e-6 * mean.Maintenance);
        Calories.PerDay(day.Gain).Should().BeApproximately(mean.Gain, 1e-6 * mean.Gain);
    }

    [Fact]
    public void Feed_between_two_days_is_on_the_line_and_phases_share_out_the_whole()
    {
        FeedForecast forecast = FeedCases.Forecast();
        double Kilograms(double days) => forecast.BatchFeedTo(Age.FromDays(days)).Value.Kilograms;

        Kilograms(30.4).Should().BeApproximately((0.6 * Kilograms(30)) + (0.4 * Kilograms(31)), 1e-9);
        Kilograms(56).Should().BeApproximately(forecast.Total.BatchFeed.Value.Kilograms, 1e-9);
        forecast.Phases.Should().HaveCountGreaterThan(1);
        forecast.Phases.Sum(phase => phase.Feed.Value.Kilograms).Should().BeApproximately(Kilograms(56), 1e-9);
    }

    /// <summary>Feed on record is known; before it a day is as sure as any day, and after it what is still to be eaten is in doubt.</summary>
    [Fact]
    public void A_record_leaves_only_the_rest_in_doubt()
    {
        FeedForecast plain = FeedCases.Forecast();
        FeedRecord record = new(Age.FromDays(28), plain.BatchFeedTo(Age.FromDays(28)).Value, Mass.Zero);
        FeedForecast known = FeedCases.Forecast(options: new() { Record = record });
        double Error(FeedForecast forecast, double days) =>
            Math.Log(forecast.BatchFeedTo(Age.FromDays(days)).Interval.High!.Value / forecast.BatchFeedTo(Age.FromDays(days)).Value) / 1.6448536269514722;
        double rest = 1 - (plain.BatchFeedTo(Age.FromDays(28)).Value / plain.BatchFeedTo(Age.FromDays(56)).Value);

        Error(plain, 56).Should().BeApproximately(EnergyModel.HeatProduction.CumulativeError, 1e-9);
        Error(known, 28).Should().BeApproximately(0, 1e-9);
        Error(known, 27.5).Should().BeApproximately(0, 1e-9, "the day of the record has begun");
        Error(known, 20).Should().BeApproximately(EnergyModel.HeatProduction.DailyError, 1e-9);
        Error(known, 56).Should().BeApproximately(FarmFactor.RestError(28) * rest, 1e-9);
    }

    [Fact]
    public void Birds_drink_what_goes_with_the_feed_that_is_eaten()
    {
        FeedDay day = FeedCases.Forecast(new() { Temperatures = FeedCases.Meadow, Waste = Probability.FromPercent(10) }).ByDay[45];

        MassFlow eaten = MassFlow.FromKilogramsPerDay(0.9 * day.Feed.Value.Kilograms);

        day.Water.GramsPerDay.Should().BeApproximately(DrinkingWater.ByFeed(eaten, Temperature.FromDegreesCelsius(14)).PerBird.GramsPerDay, 1e-9);
    }

    [Fact]
    public void From_a_hatch_weight_the_first_week_is_an_even_way_to_the_curve()
    {
        FeedForecast forecast = FeedCases.Forecast(new() { Temperatures = FeedCases.Meadow, HatchWeight = Mass.FromGrams(50) });
        double atSeven = FeedCases.Curve.WeightAt(Age.FromDays(7)).Grams;

        foreach (FeedDay day in forecast.ByDay.TakeWhile(day => day.Age.Days <= 7))
        {
            day.Weight.Grams.Should().BeApproximately(50 * Math.Pow(atSeven / 50, day.Age.Days / 7), 1e-9);
        }

        forecast.ByDay[8].Weight.Grams.Should().BeApproximately(FeedCases.Curve.WeightAt(Age.FromDays(10)).Grams, 1e-9);
    }

    [Fact]
    public void A_drawn_curve_eats_as_the_forecast_of_that_curve_and_one_beyond_birds_is_not_known()
    {
        FeedForecast forecast = FeedCases.Forecast(), same = FeedCases.Forecast();
        double[] weights = [FeedCases.Curve.WeightAt(FeedCases.Birds.AgeAtPlacement).Kilograms, .. forecast.ByDay.Select(day => day.Weight.Kilograms)];
        double[] feed = new double[weights.Length - 1];

        same.OfCurve([.. weights], feed).Should().BeTrue();

        // Weights in the middle of a day are taken between its ends.
        feed.Sum().Should().BeApproximately(forecast.Total.CumulativeFeed.Value.Kilograms, 1e-3);
        weights[^1] = FeedPath.MostKilograms;
        same.OfCurve([.. weights], feed).Should().BeFalse();
        weights[^1] = double.NaN;
        same.OfCurve([.. weights], feed).Should().BeFalse();
        (weights[^1], weights[0]) = (weights[^2], FeedPath.LeastKilograms);
        same.OfCurve([.. weights], feed).Should().BeFalse();
    }

    [Fact]
    public void Water_has_its_range_and_says_where_it_was_not_measured()
    {
        WaterAmount age = DrinkingWater.ByAge(Age.FromDays(30)), twice = DrinkingWater.ByAge(Age.FromDays(15));
        WaterAmount feed = DrinkingWater.ByFeed(MassFlow.FromGramsPerDay(100), Mild), half = DrinkingWater.ByFeed(MassFlow.FromGramsPerDay(50), Mild);

        (age.Low / twice.Low, age.High / twice.High, feed.Low / half.Low, feed.High / half.High).Should().Be((2, 2, 2, 2));
        age.Low.Should().BeLessThan(age.PerBird).And.BeLessThan(age.High);
        feed.Low.Should().BeLessThan(feed.PerBird).And.BeLessThan(feed.High);
        age.Cautions.Should().BeEmpty();
        DrinkingWater.ByAge(Age.FromDays(90)).Cautions.Select(caution => caution.Code).Should().Equal("outside-age");
        feed.Cautions.Should().BeEmpty();
        DrinkingWater.ByFeed(MassFlow.FromGramsPerDay(100), Temperature.FromDegreesCelsius(45)).Cautions.Select(caution => caution.Code).Should().Equal("outside-temperature");
    }

    [Theory]
    [InlineData(0, 65.0), InlineData(7, 65.0), InlineData(7.1, 120.0), InlineData(56, 370.0), InlineData(56.1, null)]
    public void Water_by_week_is_a_table(double days, double? litresPerThousand)
    {
        WaterAmount? week = DrinkingWater.ByWeek(Age.FromDays(days));

        (week?.PerBird.GramsPerDay, week?.Low.GramsPerDay, week?.High.GramsPerDay).Should().Be((litresPerThousand, litresPerThousand, litresPerThousand));
    }

    [Theory]
    [MemberData(nameof(Maintenance))]
    public void A_model_has_a_temperature_among_its_symbols_where_it_heeds_one(string id)
    {
        MaintenanceEnergy model = Upkeep.Single(one => one.Model.Id == id);
        Mass weight = Mass.FromKilograms(2);

        bool heeds = !model.At(weight, Temperature.FromDegreesCelsius(10)).Watts.Equals(model.At(weight, Temperature.FromDegreesCelsius(20)).Watts);

        model.Model.Symbols.Any(symbol => symbol.Symbol == "T").Should().Be(heeds);
        model.Model.Citations.Contains(FeedingSources.CriticalTemperature).Should().Be(heeds);
        model.LeastAt.HasValue.Should().Be(heeds && model.At(weight, Temperature.FromDegreesCelsius(35)) > model.At(weight, Temperature.FromDegreesCelsius(24)));
    }

    [Fact]
    public void A_breeder_s_model_has_a_temperature_among_its_symbols_where_it_heeds_one()
    {
        foreach (BreederEnergy model in typeof(BreederEnergy).GetProperties().Where(property => property.PropertyType == typeof(BreederEnergy)).Select(property => (BreederEnergy)property.GetValue(null)!))
        {
            double At(double celsius) => Calories.PerDay(model.At(Mass.FromKilograms(3), MassFlow.FromGramsPerDay(10), Temperature.FromDegreesCelsius(celsius)));

            model.Model.Symbols.Any(symbol => symbol.Symbol == "T").Should().Be(!At(10).Equals(At(20)), model.ToString());
        }
    }

    /// <summary>Gain that was not made holds protein and fat, and their heat (12.59 - 5.45 and 13.52 - 8.95 kcal/g) is saved.</summary>
    [Theory]
    [InlineData(Sex.Male), InlineData(Sex.Female)]
    public void Gain_held_back_saves_its_own_energy(Sex sex)
    {
        BodyComposition body = BodyComposition.Cobb700(sex, Mass.FromGrams(42));
        (double protein, double fat) = body.At(1985);
        (double more, double fatter) = body.At(2015);

        Power saved = RestrictedGrowth.Saving(sex, Mass.FromKilograms(2), MassFlow.FromGramsPerDay(70), MassFlow.FromGramsPerDay(40));

        Calories.PerDay(saved).Should().BeApproximately((7.14 * (more - protein)) + (4.57 * (fatter - fat)), 1e-9);
        Power Of(Sex one) => RestrictedGrowth.Saving(one, Mass.FromKilograms(2), MassFlow.FromGramsPerDay(70), MassFlow.FromGramsPerDay(40));
        ((double)Of(Sex.Mixed).Watts).Should().BeApproximately((double)(Of(Sex.Male).Watts + Of(Sex.Female).Watts) / 2, 1e-12);
    }

    [Theory]
    [InlineData(5.9, "first-hours", "gut-not-empty"), InlineData(6, "gut-not-empty"), InlineData(8), InlineData(12), InlineData(12.1, "carcass-loss-disputed", "off-feed-welfare")]
    [InlineData(18, "carcass-loss-disputed", "off-feed-welfare"), InlineData(18.1, "carcass-loses", "off-feed-welfare")]
    public void Cautions_of_withdrawal_change_at_their_hours(double hours, params string[] codes) =>
        WithdrawalShrink.Of(Mass.FromKilograms(2.5), Duration.FromHours(hours), Duration.FromHours(2)).Cautions.Select(caution => caution.Code).Should().Equal([.. codes, "plant-rule-first", "shrink-is-weak"]);

    [Fact]
    public void Birds_that_gain_across_the_ends_of_the_body_s_table_are_refused()
    {
        EnergyNeed Need(double grams) => EnergyModel.HeatProduction.Need(Sex.Male, Mass.FromGrams(grams), MassFlow.FromGramsPerDay(-4), Mild, Age.FromDays(40));

        FluentActions.Invoking(() => Need(11)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("weight");
        FluentActions.Invoking(() => Need(11_999)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("weight");
        Need(12).Model.Should().BeSameAs(EnergyModel.DefaultFor(BirdType.Fast));
        EnergyModel.DefaultFor(BirdType.Slow).Should().BeSameAs(EnergyModel.Liu2017);
    }

    [Fact]
    public void What_lies_outside_a_model_is_asked_by_its_name()
    {
        EnergyModel model = EnergyModel.HeatProduction;
        ValidityRange range = model.Model.Ranges[0];

        model.IsOutside(range.Quantity, range.High + 1).Should().BeTrue();
        model.IsOutside(range.Quantity, range.High).Should().BeFalse();
        model.IsOutside("nothing", range.High + 1).Should().BeFalse();
    }

    [Fact]
    public void The_old_rule_holds_to_two_kilograms()
    {
        FeedConversion live = FeedConversion.Of(1.6, FeedConversionBasis.LiveWeight);

        WeightCorrection.To1500Grams.Correct(live, Mass.FromKilograms(2)).Caution.Should().BeNull();
        BatchFigures.Of(new FinishedBatch(100, 100, Age.FromDays(40), Mass.FromKilograms(300), Mass.FromKilograms(180)) { ChickWeight = Mass.FromGrams(40) }).Cautions
            .Select(caution => caution.Code).Should().NotContain("chick-weight-unknown");
        WetBulb.Model.Ranges.Should().Contain(range => range.Low == -20 && range.High == 50);
    }
}
