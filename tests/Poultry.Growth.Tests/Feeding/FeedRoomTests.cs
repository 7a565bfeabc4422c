using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>Figures, water, withdrawal, heat and temperatures beyond their check values.</summary>
public class FeedRoomTests
{
    [Fact]
    public void Conversions_on_different_bases_cannot_be_mixed()
    {
        FeedConversion live = FeedConversion.Of(1.88, FeedConversionBasis.LiveWeight), gain = FeedConversion.Of(1.88, FeedConversionBasis.Gain);

        live.Should().NotBe(gain);
        (live < FeedConversion.Of(2.0, FeedConversionBasis.LiveWeight)).Should().BeTrue();
        FluentActions.Invoking(() => live < gain).Should().Throw<ArgumentException>().WithMessage("*LiveWeight*Gain*");
        live.ToString().Should().Be("1.880 (feed over live weight sold)");
        FluentActions.Invoking(() => FeedConversion.Of(0, FeedConversionBasis.Gain)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Figures_by_gain_need_chicks_and_the_broiler_index_equals_the_factor_without_them()
    {
        FinishedBatch without = new(1000, 950, Age.FromDays(44), Mass.FromKilograms(3304), Mass.FromKilograms(1757.5));
        FinishedBatch with = new(1000, 950, Age.FromDays(44), Mass.FromPounds(3304 / 0.45359237), Mass.FromKilograms(1757.5)) { ChickWeight = Mass.FromGrams(42) };

        BatchFigures.Of(without).ByGain.Should().BeNull();
        BatchFigures.Of(without).Cautions.Select(caution => caution.Code).Should().Contain("chick-weight-unknown");
        BatchFigures.Of(without).BroilerIndex.Should().BeApproximately(BatchFigures.Of(without).ProductionEfficiencyFactor, 1e-9);
        BatchFigures.Of(with).ByGain!.Ratio.Should().BeApproximately(3304 / (1757.5 - 42), 1e-9);
        BatchFigures.Of(with).ByLiveWeight.Ratio.Should().BeApproximately(BatchFigures.Of(without).ByLiveWeight.Ratio, 1e-12, "pounds in are kilograms in");
        BatchFigures.Of(with).AverageDailyGain.GramsPerDay.Should().BeApproximately((1850 - 42) / 44.0, 1e-9);
    }

    [Fact]
    public void A_record_that_cannot_be_is_refused()
    {
        FluentActions.Invoking(() => new FinishedBatch(100, 101, Age.FromDays(40), Mass.FromKilograms(1), Mass.FromKilograms(1))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0*100*");
        FluentActions.Invoking(() => new FinishedBatch(100, 90, Age.FromDays(40), Mass.FromKilograms(300), Mass.FromKilograms(180)) { ChickWeight = Mass.FromKilograms(3) })
            .Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Weight_corrections_say_where_they_do_not_fit()
    {
        FeedConversion live = FeedConversion.Of(1.6, FeedConversionBasis.LiveWeight);

        WeightCorrection.To2500Grams.Correct(live, Mass.FromKilograms(2.4)).Caution.Should().BeNull();
        WeightCorrection.To2500Grams.Correct(live, Mass.FromKilograms(1.8)).Caution!.Code.Should().Be("weight-correction-out-of-range");
        WeightCorrection.To1500Grams.Correct(live, Mass.FromKilograms(3)).Caution!.Code.Should().Be("weight-correction-old-rule");
    }

    [Theory]
    [InlineData(5, "first-hours", "gut-not-empty")]
    [InlineData(10)]
    [InlineData(14, "carcass-loss-disputed", "off-feed-welfare")]
    [InlineData(20, "carcass-loses", "off-feed-welfare")]
    public void Withdrawal_is_cautioned_by_its_hours(double hours, params string[] codes)
    {
        LiveShrink shrink = WithdrawalShrink.Of(Mass.FromKilograms(2.5), Duration.FromHours(hours), Duration.FromHours(2));

        shrink.Cautions.Select(caution => caution.Code).Should().Equal([.. codes, "plant-rule-first", "shrink-is-weak"]);
        shrink.LowLiveWeight.Kilograms.Should().BeLessThan(shrink.LiveWeight.Kilograms).And.BeLessThan(shrink.HighLiveWeight.Kilograms);
        shrink.Share.Percent.Should().BeApproximately((0.30 * hours) + 0.22, 1e-9);
    }

    [Fact]
    public void More_road_than_hours_is_refused() =>
        FluentActions.Invoking(() => WithdrawalShrink.Of(Mass.FromKilograms(2.5), Duration.FromHours(3), Duration.FromHours(4))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*onRoad*");

    [Fact]
    public void The_velocity_index_has_no_value_outside_its_ranges_and_heavy_birds_are_named()
    {
        Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);
        HeatIndex.Thvi(C(34), C(25), Speed.FromMetersPerSecond(0.5)).Should().BeNull();
        HeatIndex.Thvi(C(36), C(25), Speed.FromMetersPerSecond(0.1)).Should().BeNull();
        HeatIndex.Thvi(Temperature.FromDegreesFahrenheit(95), C(25), Speed.FromMetersPerSecond(1)).Should().NotBeNull("95 °F is 35 °C");
        HeatIndex.Thi(C(36), C(25)).DegreesCelsius.Should().Be(HeatIndex.Thvi(C(36), C(25), Speed.FromMetersPerSecond(1))!.Value.DegreesCelsius);
        HeatIndex.Cautions(C(25), C(20), Mass.FromKilograms(3.5)).Select(caution => caution.Code).Should().Equal("heavy-birds-in-heat", "birds-decide");
        HeatIndex.Cautions(C(25), C(20), Mass.FromKilograms(2.5)).Select(caution => caution.Code).Should().Equal("birds-decide");
        HeatIndex.Cautions(C(15), C(12), null).Select(caution => caution.Code).Should().Equal("outside-heat-index", "birds-decide");
        FluentActions.Invoking(() => HeatIndex.Thi(C(25), C(26))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*wet*");
    }

    [Fact]
    public void Water_by_week_ends_with_its_table_and_heat_is_a_choice()
    {
        DrinkingWater.ByWeek(Age.FromDays(42))!.PerBird.GramsPerDay.Should().BeApproximately(330, 1e-9);
        DrinkingWater.ByWeek(Age.Hatch)!.PerBird.GramsPerDay.Should().BeApproximately(65, 1e-9);
        DrinkingWater.ByWeek(Age.FromDays(57)).Should().BeNull();
        double[] at31 = [.. Enum.GetValues<WaterInHeat>().Select(heat => DrinkingWater.ByFeed(MassFlow.FromGramsPerDay(100), Temperature.FromDegreesCelsius(31), heat).PerBird.GramsPerDay)];
        at31.Should().Equal([177 * 1.7, 177 * Math.Pow(1.07, 10), 177 * (1 + (4 / 11.0))], (ours, expected) => Math.Abs(ours - expected) < 1e-9);
        DrinkingWater.ByFeed(MassFlow.FromGramsPerDay(100), Temperature.FromDegreesCelsius(21)).PerBird.GramsPerDay.Should().BeApproximately(177, 1e-9);
    }

    [Fact]
    public void Temperatures_hold_until_the_next_and_the_house_ends_at_the_door()
    {
        Temperatures outside = Temperatures.ByAge([(Age.FromDays(20), Temperature.FromDegreesCelsius(12)), (Age.FromDays(22), Temperature.FromDegreesCelsius(8))]);
        Temperatures batch = Temperatures.HouseThen(Age.FromDays(21), outside);

        batch.At(Age.Hatch).DegreesCelsius.Should().Be(32);
        batch.At(Age.FromDays(14)).DegreesCelsius.Should().Be(26);
        batch.At(Age.FromDays(21)).DegreesCelsius.Should().Be(12);
        batch.At(Age.FromDays(40)).DegreesCelsius.Should().Be(8);
        batch.ToString().Should().Be("standard house to 21 d, then 2 temperatures from 8 to 12 °C");
        Temperatures.StandardHouse.At(Age.FromDays(60)).DegreesCelsius.Should().Be(21);
        FluentActions.Invoking(() => Temperatures.HouseThen(Age.FromDays(21), Temperatures.StandardHouse)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Temperatures.ByAge([(Age.FromDays(2), default), (Age.FromDays(2), default)])).Should().Throw<ArgumentException>().WithMessage("*rising*");
    }

    [Fact]
    public void Every_caution_of_the_room_is_a_sentence() =>
        new[] { HeatIndex.BirdsDecide, WetBulb.FromHumidity, FeedingPlan.UsualDiets.Caution! }.Select(caution => caution.Text[^1]).Should().OnlyContain(end => end == '.');
}
