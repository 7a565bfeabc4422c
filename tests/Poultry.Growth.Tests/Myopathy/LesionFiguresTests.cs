using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

/// <summary>Shares, counts and ages of lesions, each by hand.</summary>
public class LesionFiguresTests
{
    private static readonly DateOnly Hatched = new(2027, 4, 11);
    private static readonly DateOnly Killed = Hatched.AddDays(56);
    private static readonly BatchAtRisk AtRisk = new() { KillAge = Age.FromDays(56) };

    [Theory]
    [InlineData(1, 2), InlineData(2, 2), InlineData(3, 2)]
    public void Shares_of_birds_and_of_muscles_are_compared_among_their_own(double left, double right)
    {
        (BirdPrevalence birds, BirdPrevalence otherBirds) = (BirdPrevalence.FromPercent(left), BirdPrevalence.FromPercent(right));
        (MusclePrevalence muscles, MusclePrevalence otherMuscles) = (MusclePrevalence.FromPercent(left), MusclePrevalence.FromPercent(right));

        (birds < otherBirds, birds <= otherBirds, birds > otherBirds, birds >= otherBirds, birds != otherBirds).Should().Be((left < right, left <= right, left > right, left >= right, left != right));
        (muscles < otherMuscles, muscles <= otherMuscles, muscles > otherMuscles, muscles >= otherMuscles, muscles != otherMuscles)
            .Should().Be((left < right, left <= right, left > right, left >= right, left != right));
    }

    [Fact]
    public void Looks_are_counted_as_recent_and_old()
    {
        LesionCounts found = LesionCounts.Of(red: 1, pink: 2, green: 3, grey: 4);

        (found.Total, found.Recent, found.Old).Should().Be((10, 3, 7));
        LesionCounts.Of(pink: 2, grey: 4).ToString().Should().Be("2 pink, 4 grey");
        FluentActions.Invoking(() => LesionCounts.Of()).Should().Throw<ArgumentException>().WithMessage("No lesion was counted*");
    }

    [Fact]
    public void Days_before_killing_are_dated_one_after_the_other()
    {
        LesionDating dating = LesionDating.Of(LesionCounts.Of(red: 3), Killed, Hatched, Sex.Male);

        dating.ByDay.Select(day => day.Date).Should().Equal(Enumerable.Range(1, 14).Select(day => Killed.AddDays(-day)));
        (dating.Prior, LesionDating.Of(LesionCounts.Of(red: 3), Killed, Hatched, Sex.Male, bySusceptibility: true).Prior).Should().Be((DatingPrior.Flat, DatingPrior.Susceptibility));
    }

    /// <summary>Killed at 43 d, pullets first susceptible at 36 d, cockerels at 26 d: within seven days both sexes count, further back cockerels alone.</summary>
    [Fact]
    public void Mixed_birds_are_half_of_each_sex()
    {
        DateOnly killed = Hatched.AddDays(43);
        double[] Shares(Sex sex) => [.. LesionDating.Of(LesionCounts.Of(grey: 1), killed, Hatched, sex).ByDay.Select(day => day.Share.Fraction)];

        (double[] mixed, double[] males) = (Shares(Sex.Mixed), Shares(Sex.Male));

        (mixed[4] / mixed[9]).Should().BeApproximately(2 * males[4] / males[9], 1e-9);
        LesionDating.Of(LesionCounts.Of(grey: 1), killed, Hatched, Sex.Mixed).OlderThan14Days.Fraction.Should().BeLessThan(1);
    }

    [Fact]
    public void A_disturbance_on_the_day_of_killing_is_before_it_and_one_a_day_later_is_not()
    {
        LesionDating Among(params double[] days) => LesionDating.Among(
            LesionCounts.Of(red: 1), Killed, Hatched, DisturbanceLog.Of(days.Select(day => Disturbance.At(Age.FromDays(day), "caught"))));

        Among(55, 56).Events.Should().HaveCount(2);
        FluentActions.Invoking(() => Among(55, 57)).Should().Throw<ArgumentException>().WithMessage("A disturbance lies after killing*");
    }

    [Fact]
    public void Of_two_disturbances_alike_the_later_comes_first()
    {
        LesionDating dating = LesionDating.Among(LesionCounts.Of(grey: 1), Killed, Hatched, DisturbanceLog.Of(
            Disturbance.At(Age.FromDays(30), "fox"), Disturbance.At(Age.FromDays(31), "hawk")));

        dating.Events.Select(row => row.Disturbance.What).Should().Equal("hawk", "fox");
    }

    [Fact]
    public void Birds_killed_on_the_day_of_hatch_have_no_lesion_that_can_be_dated() =>
        LesionDating.Of(LesionCounts.Of(red: 1), Hatched, Hatched, Sex.Male).IsAnswered.Should().BeFalse();

    /// <summary>A line from the first age to 45 d: 24 d of cockerels, 34 d of pullets; three days later it starts at 27 and 37.</summary>
    [Theory]
    [InlineData(Sex.Male, 0, 16.0 / 21), InlineData(Sex.Male, 3, 13.0 / 18)]
    [InlineData(Sex.Female, 0, 6.0 / 11), InlineData(Sex.Female, 3, 3.0 / 8)]
    [InlineData(Sex.Mixed, 3, ((13.0 / 18) + (3.0 / 8)) / 2)]
    public void Susceptibility_is_a_line_from_a_first_age_that_may_come_later(Sex sex, double laterDays, double share) =>
        AgeSusceptibility.Published.ShareAt(40, sex, laterDays).Should().BeApproximately(share, 1e-12);

    [Fact]
    public void Mixed_birds_are_harmed_as_the_mean_of_both_sexes()
    {
        DisturbanceLog log = DisturbanceLog.Of(Disturbance.At(Age.FromDays(40), "dog", FlappingDose.Of(Probability.FromPercent(50), 15)));
        double Share(Sex sex) => EventRisk.MeatType.For(log, Age.FromDays(56), sex).Affected!.Value.Share.Fraction;

        Share(Sex.Mixed).Should().BeApproximately((Share(Sex.Male) + Share(Sex.Female)) / 2, 1e-3);
        EventRisk.MeatType.For(log, Age.FromDays(40), Sex.Male).Events.Should().ContainSingle("a disturbance at killing is in its log");
        (EventRisk.MeatType.ToString(), EventRisk.LayerType.ToString()).Should().Be((EventRisk.Model.Name + ", birds of meat type", EventRisk.Model.Name + ", birds of layer type"));
    }

    [Fact]
    public void A_share_that_no_bird_has_is_above_none()
    {
        BatchPrevalence batch = PlanningRisk.Of(-4, 0.8).For(AtRisk);
        FarmPrevalence farm = PlanningRisk.Of(-4, 0.8).ForFarm(AtRisk);

        (batch.ChanceAbove(BirdPrevalence.FromPercent(0)).Fraction, batch.ChanceAbove(BirdPrevalence.FromPercent(100)).Fraction).Should().Be((1, 0));
        (farm.ChanceWorstAbove(BirdPrevalence.FromPercent(0), 3).Fraction, farm.ChanceWorstAbove(BirdPrevalence.FromPercent(100), 3).Fraction).Should().Be((1, 0));
    }

    /// <summary>Logistic normal about -4 with a spread of 0.8: variance and mean by a sum of ten thousand equal slices.</summary>
    [Fact]
    public void Birds_of_a_batch_are_alike_by_the_spread_between_batches()
    {
        double[] shares = [.. Enumerable.Range(0, 10_000).Select(i => 1 / (1 + Math.Exp(4 - (0.8 * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i + 0.5) / 10_000)))))];
        double mean = shares.Average();
        BatchPrevalence batch = PlanningRisk.Of(-4, 0.8).For(AtRisk);

        batch.Mean.Share.Fraction.Should().BeApproximately(mean, 1e-3 * mean);
        batch.IntraclassCorrelation.Should().BeApproximately(shares.Average(p => (p - mean) * (p - mean)) / (mean * (1 - mean)), 2e-4);
        PlanningRisk.Of(-4, 0.8).ToString().Should().EndWith(FormattableString.Invariant($": mean {100 * mean:G2} %, half of them below 1.8 %"));
    }

    [Fact]
    public void Sound_birds_too_young_to_have_lesions_teach_nothing()
    {
        BatchPrevalence young = PlanningRisk.Of(-4, 0.8).For(new() { KillAge = Age.FromDays(20) });

        young.After(LesionInspection.Of(50, 0)).Should().BeSameAs(young);
        FluentActions.Invoking(() => young.After(LesionInspection.Of(50, 1))).Should().Throw<ArgumentException>().WithMessage("Lesions were found in birds too young*");
    }

    [Theory]
    [InlineData(Sex.Mixed, "first susceptible age of cockerels, pullets 10 d later, d")]
    [InlineData(Sex.Female, "first susceptible age, d")]
    public void Young_birds_have_their_first_age_among_what_the_answer_hangs_on(Sex sex, string words)
    {
        PlanningRisk.Of(-4, 0.8).Sensitivity(new() { KillAge = Age.FromDays(44), Sex = sex }).Select(row => row.Name).Should().Contain(words);
        PlanningRisk.Of(-4, 0.8).Sensitivity(new() { KillAge = Age.FromDays(45), Sex = sex }).Select(row => row.Name).Should().NotContain(words);
    }
}
