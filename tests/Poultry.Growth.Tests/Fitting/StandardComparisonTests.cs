using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Ahead or behind is worked out by hand on a standard that grows 50 g a day from 100 g at 7 d.</summary>
public sealed class StandardComparisonTests
{
    private static readonly Caution Target = new("target", "A target.");

    private static readonly TabulatedCurve Standard = TabulatedCurve.Of(
        "Straight line, invented",
        new Citation("Invented", "invented", HowKnown.Assumption),
        [.. Enumerable.Range(0, 6).Select(week => (Age.FromDays(7 + (7 * week)), Mass.FromGrams(100 + (350 * week))))],
        Target);

    [Fact]
    public void Weight_and_days_are_those_of_the_table()
    {
        StandardDifference day21 = Of(WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(700), 25, Mass.FromGrams(70)));

        day21.StandardWeight!.Value.Grams.Should().BeApproximately(800, 1e-9);
        day21.Difference!.Value.Grams.Should().BeApproximately(-100, 1e-9);
        day21.Ahead!.Value.Days.Should().BeApproximately(-2, 1e-9);
        (day21.Age.Days, day21.Birds, day21.MeanWeight.Grams).Should().Be((21, 25, 700));
    }

    /// <summary>t(24) two-sided 90 % is 1.7109 (printed tables); the reach is 1.7109 x 10 % / 5 = 3.4218 % of the weight.</summary>
    [Fact]
    public void The_interval_is_that_of_the_catch()
    {
        StandardDifference day21 = Of(WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(700), 25, Mass.FromGrams(70)));

        day21.Difference!.Interval.Low!.Value.Grams.Should().BeApproximately((700 * Math.Exp(-0.034218)) - 800, 0.001);
        day21.Difference.Interval.High!.Value.Grams.Should().BeApproximately((700 * Math.Exp(0.034218)) - 800, 0.001);
        day21.Ahead!.Interval.Low!.Value.Days.Should().BeApproximately(((700 * Math.Exp(-0.034218)) - 800) / 50, 1e-4);
        day21.Ahead.Interval.High!.Value.Days.Should().BeApproximately(((700 * Math.Exp(0.034218)) - 800) / 50, 1e-4);
        day21.Difference.Interval.Level.Should().Be(0.90);
    }

    /// <summary>z of 95 % is 1.6449 (printed tables), with an assumed spread of 10 %.</summary>
    [Fact]
    public void Without_a_spread_one_is_assumed_and_said()
    {
        StandardDifference day21 = Of(WeighIn.Group(Age.FromDays(21), Mass.FromGrams(17_500), 25));

        day21.Difference!.Interval.High!.Value.Grams.Should().BeApproximately((700 * Math.Exp(0.032897)) - 800, 0.001);
        day21.Difference.Cautions.Select(caution => caution.Code).Should().Equal("target", "caught-birds", "spread-assumed");
        Of(WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(700), 25, Mass.FromGrams(70))).Ahead!.Cautions.Select(caution => caution.Code)
            .Should().Equal("target", "caught-birds");
    }

    [Fact]
    public void Outside_the_table_there_is_no_answer_and_a_bound_beyond_it_is_open()
    {
        StandardDifference young = Of(WeighIn.Mean(Age.FromDays(3), Mass.FromGrams(60), 25));
        (young.StandardWeight, young.Difference, young.Ahead).Should().Be((null, null, null));
        StandardDifference old = Of(WeighIn.Mean(Age.FromDays(50), Mass.FromGrams(1800), 25));
        (old.Difference, old.Ahead!.Value.Days).Should().Be((null, 41 - 50));
        StandardDifference atTheEnd = Of(WeighIn.Mean(Age.FromDays(42), Mass.FromGrams(1830), 25));
        (atTheEnd.Ahead!.Interval.Low is null, atTheEnd.Ahead.Interval.High is null).Should().Be((false, true));
        Of(WeighIn.Mean(Age.FromDays(42), Mass.FromGrams(2500), 25)).Should().Match<StandardDifference>(day => day.Difference != null && day.Ahead == null);
    }

    [Fact]
    public void Weigh_ins_of_one_age_are_one_heap_and_sexes_stand_apart()
    {
        IReadOnlyList<StandardDifference> days = StandardComparison.Of(
            WeighInSeries.Of(
                WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(700), 10),
                WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(760), 20),
                WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1200), 10).Of(Sex.Male),
                WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1000), 10).Of(Sex.Female)),
            Standard);

        days.Select(day => (day.Age.Days, day.Sex, day.Birds)).Should().Equal((21, Sex.Mixed, 30), (28, Sex.Male, 10), (28, Sex.Female, 10));
        days[0].Difference!.Value.Grams.Should().BeApproximately(-60, 1e-9);
    }

    [Fact]
    public void A_day_prints_itself()
    {
        Of(WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(700), 25, Mass.FromGrams(70))).ToString().Should().Be(
            "21 d: 100 g (3.53 oz) behind the standard, 90 %: -123.5 g (-4.36 oz) to -75.6 g (-2.67 oz); 2 d behind (-2.5 to -1.5 d)");
        Of(WeighIn.Mean(Age.FromDays(3), Mass.FromGrams(60), 25)).ToString().Should().Be(
            "3 d: the standard does not cover this age; days unknown: the standard does not cover this weight");
    }

    [Fact]
    public void A_level_must_be_a_share()
    {
        Action wrong = () => StandardComparison.Of(ProjectionCases.CheckCase, Standard, level: 1);

        wrong.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static StandardDifference Of(WeighIn weighIn) => StandardComparison.Of(WeighInSeries.Of(weighIn), Standard).Should().ContainSingle().Subject;
}
