using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

public class PlanningRiskTests
{
    private static readonly BatchAtRisk Plain = new() { KillAge = Age.FromDays(49), IsOutdoor = false };

    private static BatchPrevalence Published => PlanningRisk.Published.For(Plain);

    /// <summary>Exact: the logit is normal, -6.06 and 1.6 (R pnorm, qnorm).</summary>
    [Fact]
    public void A_plain_batch_is_the_published_distribution()
    {
        Published.Mean.Percent.Should().BeApproximately(0.7797388, 1e-6);
        Published.Median.Percent.Should().BeApproximately(0.2328964, 1e-6);
        Limits(0.50).Should().Equal((0.0793, 0.6822));
        Limits(0.90).Should().Equal((0.0168, 3.1425));
        Limits(0.95).Should().Equal((0.0101, 5.0977));
        new[] { 1.0, 5, 10, 25 }.Select(percent => Math.Round(100 * Published.ChanceAbove(BirdPrevalence.FromPercent(percent)).Fraction, 3))
            .Should().Equal(17.995, 2.575, 0.788, 0.096);

        static IEnumerable<(double, double)> Limits(double level)
        {
            Interval<BirdPrevalence> interval = Published.IntervalAt(level);
            yield return (Math.Round(interval.Low!.Value.Percent, 4), Math.Round(interval.High!.Value.Percent, 4));
        }
    }

    [Fact]
    public void A_quarter_of_a_bad_flock_is_neither_supported_nor_ruled_out()
    {
        TradeReport report = TradeReport.QuarterOfABadFlock;

        report.ChanceInOneFlock.Fraction.Should().BeApproximately(0.0009647736, 1e-8);
        report.ChanceInWorstFlock.Fraction.Should().BeApproximately(0.04711587, 1e-6);
        report.HowKnown.Should().Be(HowKnown.CommonPractice);
        report.Verdict.Should().StartWith("Not supported, and not ruled out.").And.Contain("a chance of 0.1 % (1 in 1037), and the worst of 50 flocks 4.7 %");
    }

    [Fact]
    public void Counts_have_the_spread_of_a_beta_binomial()
    {
        const int Birds = 60;
        AffectedBirds among = Published.Among(Birds, 0.95);
        double[] chances = [.. Enumerable.Range(0, Birds + 1).Select(count => Binomial(count, Birds))];
        double mean = chances.Select((chance, count) => chance * count).Sum();
        double variance = chances.Select((chance, count) => chance * (count - mean) * (count - mean)).Sum();
        double p = Published.Mean.Share.Fraction;

        chances.Sum().Should().BeApproximately(1, 1e-9);
        among.ExpectedBirds.Should().BeApproximately(mean, 1e-9).And.BeApproximately(Birds * p, 1e-12);
        variance.Should().BeApproximately(Birds * p * (1 - p) * (1 + ((Birds - 1) * Published.IntraclassCorrelation)), 1e-6);
        among.ChanceOfNone.Fraction.Should().BeApproximately(chances[0], 1e-12);
        Cumulated(chances, among.Interval.High!.Value).Should().BeGreaterThanOrEqualTo(0.975);
        Cumulated(chances, among.Interval.High!.Value - 1).Should().BeLessThan(0.975);
        among.ToString().Should().Be("0.47 of 60 birds (95 %: 0 to 4)");
    }

    [Fact]
    public void Outdoor_birds_open_with_no_outdoor_data_unless_somebody_says_indoors()
    {
        PlanningRisk.Published.For(new() { KillAge = Age.FromDays(49) }).Cautions[0].Text.Should().StartWith("No outdoor data");
        Published.Cautions.Should().NotContain(caution => caution.Code == "no-outdoor-data");
        FarmOf(new() { KillAge = Age.FromDays(49) }).Cautions[0].Code.Should().Be("no-outdoor-data");
    }

    [Fact]
    public void Assumptions_act_only_when_asked_for_and_say_what_they_are()
    {
        BatchPrevalence thinned = PlanningRisk.Published.For(new() { KillAge = Plain.KillAge, IsOutdoor = false, IsThinned = true });

        Published.OddsRatios.Should().BeEmpty();
        Odds(thinned.Median).Should().BeApproximately(2 * Odds(Published.Median), 1e-9);
        thinned.OddsRatios.Single().ToString().Should().Be("thinned 3 to 10 d before: odds x 2 (1 to 5), assumption");
        thinned.Cautions.Should().Contain(caution => caution.Code == "assumed-thinning" && caution.Text.Contains("without a denominator"));
    }

    /// <summary>2.89 % of birds: even at odds of 4 the mean of the flock rises by 8 % in whole percent (Granquist 2019 and our arithmetic).</summary>
    [Fact]
    public void Lame_birds_lift_the_mean_of_a_flock_by_8_percent_at_most()
    {
        BatchAtRisk lame = new() { KillAge = Plain.KillAge, IsOutdoor = false, SeverelyLame = Probability.FromPercent(2.89) };
        RiskSensitivity row = PlanningRisk.Published.Sensitivity(lame).Single(row => row.Code == "lameness");

        (row.AtHigh.Mean.Percent / Published.Mean.Percent).Should().BeInRange(1.06, 1.085);
        row.High.Should().BeApproximately(1 + (0.0289 * 3), 1e-12);
    }

    [Fact]
    public void Weight_moves_nothing_however_heavy()
    {
        BatchPrevalence heavy = PlanningRisk.Published.For(new() { KillAge = Plain.KillAge, IsOutdoor = false, LiveWeight = Mass.FromKilograms(4.5) });

        heavy.Mean.Should().Be(Published.Mean);
        heavy.Cautions.Should().Contain(caution => caution.Code == "outside-measured-weights");
    }

    [Fact]
    public void With_all_ranges_the_mean_stays_and_the_limits_widen()
    {
        BatchAtRisk batch = new() { KillAge = Plain.KillAge, Sex = Sex.Male, LiveWeight = Mass.FromKilograms(3.4) };
        BatchPrevalence fixedFigures = PlanningRisk.Published.For(batch), ranges = PlanningRisk.Published.WithParameterRanges.For(batch);

        ranges.Mean.Share.Fraction.Should().BeApproximately(fixedFigures.Mean.Share.Fraction, 1e-9);
        ranges.Median.Should().BeLessThan(fixedFigures.Median);
        ranges.IntervalAt(0.95).Low!.Value.Should().BeLessThan(fixedFigures.IntervalAt(0.95).Low!.Value);
        ranges.IntervalAt(0.95).High!.Value.Should().BeGreaterThan(fixedFigures.IntervalAt(0.95).High!.Value);
    }

    /// <summary>Source: R, integrate over z ~ N(-6.06, 0.8) and e ~ N(0, sqrt(1.6² - 0.8²)).</summary>
    [Fact]
    public void A_farm_s_own_part_comes_back_in_all_its_batches()
    {
        FarmPrevalence farm = PlanningRisk.Published.ForFarm(Plain);

        farm.Mean.Percent.Should().BeApproximately(0.7797388, 1e-4, "the mean over farms is the mean over batches");
        farm.Median.Percent.Should().BeApproximately(0.5883107, 1e-4);
        farm.IntervalAt(0.90).Low!.Value.Percent.Should().BeApproximately(0.1618201, 1e-4);
        farm.IntervalAt(0.90).High!.Value.Percent.Should().BeApproximately(2.0400915, 1e-3);
        farm.Quantile(Probability.FromPercent(50)).Should().Be(farm.Median);
        farm.ChanceWorstAbove(BirdPrevalence.FromPercent(5), 1).Fraction.Should().BeApproximately(0.0257538, 1e-5);
        farm.ChanceWorstAbove(BirdPrevalence.FromPercent(5), 10).Fraction.Should().BeApproximately(0.1912439, 1e-4);
        Published.ChanceWorstAbove(BirdPrevalence.FromPercent(5), 10).Fraction.Should().BeApproximately(0.2296519, 1e-4, "ten farms have more chances than ten batches of one");
        farm.ChanceWorstAbove(BirdPrevalence.FromPercent(25), 50).Fraction.Should().BeApproximately(0.0401389, 1e-5);
        farm.ChanceWorstAbove(BirdPrevalence.FromPercent(0), 2).Fraction.Should().Be(1);
        farm.ToString().Should().Be("a farm's average: mean 0.78 %, median 0.59 %, 90 %: 0.16 to 2 % of birds");
    }

    [Fact]
    public void Doubt_about_study_and_odds_widens_what_a_farm_may_have()
    {
        BatchAtRisk thinned = new() { KillAge = Plain.KillAge, IsOutdoor = false, IsThinned = true };
        Interval<BirdPrevalence> likely = PlanningRisk.Published.ForFarm(thinned).IntervalAt(0.90), all = PlanningRisk.Published.WithParameterRanges.ForFarm(thinned).IntervalAt(0.90);

        PlanningRisk.Published.WithParameterRanges.ForFarm(Plain).Mean.Percent.Should().BeApproximately(PlanningRisk.Published.ForFarm(Plain).Mean.Percent, 1e-4, "doubt moves no mean");
        (all.High!.Value.Percent / all.Low!.Value.Percent).Should().BeGreaterThan(likely.High!.Value.Percent / likely.Low!.Value.Percent);
        PlanningRisk.Published.ForFarm(thinned).Median.Should().BeGreaterThan(PlanningRisk.Published.ForFarm(Plain).Median);
        PlanningRisk.Published.ForFarm(new() { KillAge = Age.FromDays(30), Sex = Sex.Female }).ChanceWorstAbove(BirdPrevalence.FromPercent(1), 9).Fraction.Should().Be(0);
        PlanningRisk.Published.ForFarm(new() { KillAge = Age.FromDays(30), Sex = Sex.Female }).ChanceWorstAbove(default, 9).Fraction.Should().Be(0, "birds too young to have any have none");
    }

    /// <summary>Counts that contradict what was known, and each other: what is left must not depend on their order, nor on their being put together.</summary>
    [Theory]
    [InlineData(-9, 0.5, 289, 10, 344, 3)]
    [InlineData(-7, 0.54, 62, 0, 24, 10)]
    [InlineData(-9, 0.67, 20, 10, 20, 10)]
    [InlineData(-9, 0.67, 500, 0, 20, 10)]
    public void Counts_that_contradict_add_up(double mu, double sigma, int first, int found, int second, int more)
    {
        BatchPrevalence known = PlanningRisk.Of(mu, sigma).For(Plain);
        LesionInspection one = LesionInspection.Of(first, found), other = LesionInspection.Of(second, more);
        double together = known.After(LesionInspection.Of(first + second, found + more)).Mean.Percent;

        known.After(one).After(other).Mean.Percent.Should().BeApproximately(together, 1e-6 * together);
        known.After(other).After(one).Mean.Percent.Should().BeApproximately(together, 1e-6 * together);
    }

    [Theory]
    [InlineData(-20.01, 1.6, "meanLogit", "-20.01 is not allowed; expected -20 to 5.*")]
    [InlineData(5.01, 1.6, "meanLogit", "5.01 is not allowed; expected -20 to 5.*")]
    [InlineData(double.NaN, 1.6, "meanLogit", "NaN is not allowed; expected -20 to 5.*")]
    [InlineData(-6, 0.009, "betweenFlocksLogit", "0.009 is not allowed; expected 0.01 to 10.*")]
    [InlineData(-6, 10.01, "betweenFlocksLogit", "10.01 is not allowed; expected 0.01 to 10.*")]
    [InlineData(-6, double.NaN, "betweenFlocksLogit", "NaN is not allowed; expected 0.01 to 10.*")]
    public void Figures_out_of_range_are_refused_by_name(double mu, double sigma, string name, string message) =>
        FluentActions.Invoking(() => PlanningRisk.Of(mu, sigma)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName(name).WithMessage(message);

    /// <summary>At the ends of both ranges the median is the logistic of the figure given, and a narrow law has its mean there too.</summary>
    [Theory]
    [InlineData(-20, 0.01)]
    [InlineData(-20, 10)]
    [InlineData(5, 0.01)]
    [InlineData(5, 10)]
    public void Figures_at_the_ends_of_their_ranges_are_taken(double mu, double sigma)
    {
        BatchPrevalence risk = PlanningRisk.Of(mu, sigma).For(Plain);
        double logistic = 100 / (1 + Math.Exp(-mu));

        risk.Median.Percent.Should().BeApproximately(logistic, 1e-4 * logistic);
        risk.Mean.Percent.Should().BeInRange(0, 100);
        if (sigma == 0.01)
        {
            risk.Mean.Percent.Should().BeApproximately(logistic, 1e-4 * logistic);
        }
    }

    /// <summary>Source: R, integrate() over logit p ~ N(-9, 0.67) with 20 of 40 found, in pieces about the peak.</summary>
    [Fact]
    public void A_count_far_from_what_was_known_has_the_mean_that_R_gives() =>
        PlanningRisk.Of(-9, 0.67).For(Plain).After(LesionInspection.Of(40, 20)).Mean.Percent.Should().BeApproximately(11.5526234479, 1e-5 * 11.5526234479);

    [Fact]
    public void A_farm_with_inspections_of_its_own_is_told_where_its_rate_is()
    {
        Action ask = () => PlanningRisk.Learned(FarmLesionRate.Learn(LesionInspection.Of(100, 1))).ForFarm(Plain);

        ask.Should().Throw<InvalidOperationException>().WithMessage("*FarmLesionRate.LongRunRate*");
    }

    [Fact]
    public void An_odds_ratio_s_range_has_its_value_for_median()
    {
        BatchAtRisk thinned = new() { KillAge = Plain.KillAge, IsOutdoor = false, IsThinned = true };
        double shift = Logit(PlanningRisk.Published.WithParameterRanges.For(thinned).Mean) - Logit(PlanningRisk.Published.WithParameterRanges.For(Plain).Mean);

        // The odds rise by about 2; the mean of a spread-out logit rises by a little less.
        Math.Exp(shift).Should().BeInRange(1.7, 2.0);
    }

    [Fact]
    public void The_table_of_what_moves_the_answer_names_every_figure_that_acts()
    {
        BatchAtRisk batch = new() { KillAge = Age.FromDays(42), Sex = Sex.Female, LiveWeight = Mass.FromKilograms(2.2), IsThinned = true, Strain = StrainRisk.High };
        IReadOnlyList<RiskSensitivity> rows = PlanningRisk.Published.Sensitivity(batch);

        rows.Select(row => row.Code).Should().Equal("mean", "between-flocks", "between-farms", "between-studies", "strain", "thinning", "outdoor", "weight", "sex", "first-age");
        RiskSensitivity mean = rows[0], spread = rows[1], age = rows[^1];
        (mean.AtHigh.Mean.Percent / mean.AtLow.Mean.Percent).Should().BeInRange(3, 6);
        spread.AtLow.Mean.Share.Fraction.Should().BeApproximately(spread.AtHigh.Mean.Share.Fraction, 0.15 * spread.AtLow.Mean.Share.Fraction);
        spread.AtLow.Median.Should().BeGreaterThan(spread.AtHigh.Median);
        age.AtLow.Mean.Should().BeGreaterThan(age.AtHigh.Mean);
    }

    [Fact]
    public void Birds_too_young_have_none_and_finding_one_is_a_contradiction()
    {
        BatchPrevalence young = PlanningRisk.Published.For(new() { KillAge = Age.FromDays(30), Sex = Sex.Female });

        young.Mean.Percent.Should().Be(0);
        young.ChanceAbove(BirdPrevalence.FromPercent(0)).Fraction.Should().Be(0);
        young.Among(300).Interval.High.Should().Be(0);
        young.After(LesionInspection.Of(50, 0)).Mean.Percent.Should().Be(0);
        young.Invoking(batch => batch.After(LesionInspection.Of(50, 1))).Should().Throw<ArgumentException>().WithMessage("*too young*");
    }

    [Fact]
    public void Younger_birds_have_less_and_are_told_that_age_may_count_twice()
    {
        BatchPrevalence at40 = PlanningRisk.Published.For(new() { KillAge = Age.FromDays(40), Sex = Sex.Male, IsOutdoor = false });

        at40.Mean.Percent.Should().BeApproximately(Published.Mean.Percent * 16 / 21, 1e-9);
        at40.Cautions.Should().Contain(caution => caution.Code == "age-twice");
        PlanningRisk.Published.For(new() { KillAge = Age.FromDays(80) }).Cautions.Should().Contain(caution => caution.Code == "outside-measured-ages");
    }

    [Fact]
    public void No_birds_are_refused() => Published.Invoking(batch => batch.Among(0)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*1 or more*");

    private static BatchPrevalence FarmOf(BatchAtRisk batch) => PlanningRisk.Learned(FarmLesionRate.Learn(LesionInspection.Of(300, 1))).For(batch);

    private static double Binomial(int count, int birds)
    {
        double logChoose = LogChoose(birds, count);
        return Published.Average(p => Math.Exp(logChoose + (count * Math.Log(p)) + ((birds - count) * Math.Log(1 - p))));
    }

    private static double LogChoose(int n, int k) => Enumerable.Range(1, k).Sum(i => Math.Log((n - k + i) / (double)i));

    private static double Cumulated(double[] chances, int most) => chances.Take(most + 1).Sum();

    private static double Odds(BirdPrevalence share) => share.Share.Fraction / (1 - share.Share.Fraction);

    private static double Logit(BirdPrevalence share) => Math.Log(Odds(share));
}
