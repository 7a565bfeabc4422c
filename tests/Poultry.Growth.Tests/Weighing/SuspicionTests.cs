using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class SuspicionTests
{
    private static readonly (double Days, double Grams)[] Batch = [(7, 171), (14, 440), (21, 890), (28, 1480), (35, 2110), (42, 2740)];

    [Theory]
    [InlineData(2.2046, "pounds and kilograms mixed up")]
    [InlineData(10, "a slipped decimal point")]
    [InlineData(16, "pounds and ounces mixed up")]
    [InlineData(28.35, "ounces and grams mixed up")]
    [InlineData(453.6, "pounds and grams mixed up")]
    [InlineData(1000, "grams and kilograms mixed up")]
    public void A_mean_off_by_a_factor_is_flagged_alone_and_its_cause_guessed(double factor, string cause)
    {
        for (int wrong = 0; wrong < Batch.Length; wrong++)
        {
            foreach (double times in new[] { factor, 1 / factor })
            {
                WeighInSeries series = WeighInSeries.Of(Batch.Select((point, index) => Mean(point.Days, point.Grams * (index == wrong ? times : 1))));

                Suspicion suspicion = series.Suspicions.Should().ContainSingle($"weigh-in {wrong} is {times} times off").Subject;
                suspicion.Code.Should().Be(Suspicion.UnlikeOtherAges);
                suspicion.WeighIn.Should().BeSameAs(series[wrong]);
                suspicion.Text.Should().Contain(cause);
            }
        }
    }

    [Fact]
    public void The_text_names_age_weight_and_what_was_expected()
    {
        WeighInSeries series = WeighInSeries.Of(Mean(7, 171), Mean(14, 4400), Mean(21, 890), Mean(28, 1480));

        series.Suspicions.Should().ContainSingle().Which.ToString().Should().Be(
            "The birds at 14 d, 4.4 kg (9.7 lb) on average, do not go with the other ages; expected about 437.5 g (15.43 oz) (about 10 times: a slipped decimal point?).");
    }

    [Theory]
    [InlineData(2.2046)]
    [InlineData(10)]
    [InlineData(16)]
    [InlineData(28.35)]
    [InlineData(1000)]
    public void A_bird_off_by_a_factor_is_flagged_among_its_fellows(double factor)
    {
        foreach (double times in new[] { factor, 1 / factor })
        {
            WeighInSeries series = WeighInSeries.Of(Birds(14, 428, 391, 447, 466 * times, 402, 433), Mean(21, 890));

            Suspicion suspicion = series.Suspicions.Should().ContainSingle().Subject;
            suspicion.Code.Should().Be(Suspicion.UnlikeFellows);
            suspicion.BirdIndex.Should().Be(3);
        }
    }

    [Fact]
    public void A_runt_of_two_thirds_is_a_bird_like_others() =>
        WeighInSeries.Of(Birds(14, 428, 391, 447, 286, 402, 433)).Suspicions.Should().BeEmpty();

    [Fact]
    public void A_wrong_weigh_in_among_several_of_a_day_is_the_one_flagged()
    {
        WeighInSeries series = WeighInSeries.Of(
            Mean(7, 171), Mean(14, 440), Mean(14, 433), Mean(14, 0.437), Mean(21, 890), Mean(28, 1480));

        series.Suspicions.Should().ContainSingle().Which.WeighIn.Should().BeSameAs(series[3]);
    }

    [Fact]
    public void Two_wrong_weigh_ins_are_both_flagged()
    {
        WeighInSeries series = WeighInSeries.Of(Mean(7, 171), Mean(14, 4400), Mean(21, 890), Mean(28, 1480), Mean(35, 2.11), Mean(42, 2740));

        series.Suspicions.Select(suspicion => suspicion.WeighIn.Age.Days).Should().Equal(14, 35);
    }

    [Fact]
    public void A_mean_that_falls_is_flagged()
    {
        WeighInSeries series = WeighInSeries.Of(Mean(28, 1480), Mean(35, 2110), Mean(42, 2050));

        Suspicion suspicion = series.Suspicions.Should().ContainSingle().Subject;
        suspicion.Code.Should().Be(Suspicion.MeanFalls);
        suspicion.Text.Should().Be("The mean falls from 2.11 kg (4.65 lb) at 35 d to 2.05 kg (4.52 lb) at 42 d; expected a mean that grows.");
    }

    [Fact]
    public void Five_birds_a_day_later_may_weigh_less_by_luck() =>
        WeighInSeries.Of(Mean(28, 1480), Mean(35, 2110, 5), Mean(36, 2050, 5)).Suspicions.Should().BeEmpty();

    [Fact]
    public void Pullets_after_cockerels_are_no_fall() =>
        WeighInSeries.Of(Mean(28, 1550).Of(Sex.Male), Mean(35, 2250).Of(Sex.Male), Mean(36, 1900).Of(Sex.Female), Mean(42, 2400).Of(Sex.Female))
            .Suspicions.Should().BeEmpty();

    [Fact]
    public void A_standard_deviation_above_two_fifths_of_the_mean_is_flagged()
    {
        WeighIn wide = WeighIn.Mean(Age.FromDays(35), Mass.FromGrams(2000), 20, Mass.FromGrams(820));

        WeighInSeries.Of(wide).Suspicions.Should().ContainSingle().Which.ToString().Should().Be(
            "An SD of 820 g (28.92 oz) about a mean of 2 kg (4.41 lb) at 35 d is a CV of 41 %; expected 40 % or less.");
        WeighInSeries.Of(WeighIn.Mean(Age.FromDays(35), Mass.FromGrams(2000), 20, Mass.FromGrams(790))).Suspicions.Should().BeEmpty();
    }

    private static WeighIn Mean(double days, double grams, int birds = 20) => WeighIn.Mean(Age.FromDays(days), Mass.FromGrams(grams), birds);

    private static WeighIn Birds(double days, params double[] grams) =>
        WeighIn.Birds(Age.FromDays(days), grams.Select(weight => Mass.FromGrams(weight)));

    /// <summary>A bird in the wrong unit makes its weigh-in spread by its whole mean: that is no measure of how much two catches differ.</summary>
    [Fact]
    public void A_bird_in_question_hides_no_fall_of_the_mean() =>
        WeighInSeries.Of(Birds(14, 428, 391, 447, 466_000, 402, 433), Mean(21, 890), Mean(28, 1480), Mean(35, 2110), Mean(42, 2050))
            .Suspicions.Select(suspicion => suspicion.Code).Should().Equal(Suspicion.UnlikeFellows, Suspicion.MeanFalls);
}
