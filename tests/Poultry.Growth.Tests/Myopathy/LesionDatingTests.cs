using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

public class LesionDatingTests
{
    private static readonly DateOnly Hatched = new(2027, 4, 11);
    private static readonly DateOnly Killed = Hatched.AddDays(56);

    [Fact]
    public void Looks_have_chances_that_sum_to_1_once_anything_shows()
    {
        foreach (double days in new[] { 0.5, 1.9, 2, 3.9, 4, 6.9, 7, 13.9, 14, 30 })
        {
            Enum.GetValues<LesionStage>().Sum(stage => LesionStages.Chance(stage, Duration.FromDays(days)).Fraction).Should().BeApproximately(1, 1e-12);
        }

        Enum.GetValues<LesionStage>().Sum(stage => LesionStages.Chance(stage, Duration.FromDays(0.49)).Fraction).Should().Be(0);
    }

    /// <summary>By hand: red lesions have weight 0.8 over 1.5 d and 0.3 over 2 d, all flat: 1.2 and 0.6 of 1.8.</summary>
    [Fact]
    public void A_flat_prior_gives_the_windows_of_the_look()
    {
        LesionDating dating = LesionDating.Of(LesionCounts.Of(red: 3), Killed, Hatched, Sex.Male);

        dating.ByDay.Select(day => Math.Round(day.Share.Fraction, 6)).Should().StartWith([
            Math.Round(0.8 / 1.8, 6), Math.Round(((0.8 * 0.5) + (0.3 * 0.5)) / 1.8, 6), Math.Round(0.3 / 1.8, 6), Math.Round(0.15 / 1.8, 6), 0]);
        dating.OlderThan14Days.Fraction.Should().Be(0);
        dating.ByDay[0].Date.Should().Be(Killed.AddDays(-1));
    }

    /// <summary>By hand, cockerels of 56 d, susceptible from 26 d: 30 d in all, 16 of them beyond 14. Grey: 0.2 x 3 + 0.5 x 7 + 0.8 x 16 = 16.9.</summary>
    [Fact]
    public void Beyond_14_days_there_is_one_open_class()
    {
        LesionDating dating = LesionDating.Of(LesionCounts.Of(grey: 1), Killed, Hatched, Sex.Male);

        dating.OlderThan14Days.Fraction.Should().BeApproximately(12.8 / 16.9, 1e-12);
        dating.ByDay.Should().HaveCount(14);
        (dating.ByDay.Sum(day => day.Share.Fraction) + dating.OlderThan14Days.Fraction).Should().BeApproximately(1, 1e-12);
        dating.DaysBefore(0.9)!.High.Should().BeNull();
    }

    [Fact]
    public void Sex_and_age_bound_how_old_a_lesion_can_be()
    {
        LesionDating pullets = LesionDating.Of(LesionCounts.Of(grey: 1), Hatched.AddDays(42), Hatched, Sex.Female);
        LesionDating mixed = LesionDating.Of(LesionCounts.Of(grey: 1), Hatched.AddDays(42), Hatched, Sex.Mixed);

        pullets.OlderThan14Days.Fraction.Should().Be(0);
        pullets.ByDay.Last(day => day.Share.Fraction > 0).DaysBefore.Should().Be(6);
        mixed.OlderThan14Days.Fraction.Should().BeGreaterThan(0);
        LesionDating young = LesionDating.Of(LesionCounts.Of(red: 1, grey: 1), Hatched.AddDays(37), Hatched, Sex.Female);
        young.Unexplained.Should().Be(1);
        LesionDating tooYoung = LesionDating.Of(LesionCounts.Of(grey: 1), Hatched.AddDays(37), Hatched, Sex.Female);
        tooYoung.IsAnswered.Should().BeFalse();
        tooYoung.ByDay.Should().BeEmpty();
        tooYoung.DaysBefore(0.9).Should().BeNull();
        tooYoung.Cautions.Should().Contain(caution => caution.Code == "unexplained");
    }

    [Fact]
    public void Susceptibility_counts_only_when_asked_for()
    {
        LesionCounts grey = LesionCounts.Of(grey: 1);
        double flat = LesionDating.Of(grey, Killed, Hatched, Sex.Male).OlderThan14Days.Fraction;
        double weighted = LesionDating.Of(grey, Killed, Hatched, Sex.Male, bySusceptibility: true).OlderThan14Days.Fraction;

        // By hand: 14 to 32 d before, S falls from (42 - 24)/21 to 0 over 18 d: area 18/2 x 18/21; 7 to 11 d full, 11 to 14 falling from 1 to 18/21.
        double older = 0.8 * 9 * 18 / 21, from7 = 0.5 * (4 + (3 * (1 + (18.0 / 21)) / 2)), from4 = 0.2 * 3;
        weighted.Should().BeApproximately(older / (older + from7 + from4), 1e-12).And.BeLessThan(flat);
    }

    [Fact]
    public void Logged_disturbances_are_ranked_by_what_they_can_have_made()
    {
        DisturbanceLog log = DisturbanceLog.Of(
            Disturbance.At(Age.FromDays(53), "moved the shelter"), Disturbance.At(Age.FromDays(50), "dog"), Disturbance.At(Age.FromDays(36), "hail"));
        LesionDating dating = LesionDating.Among(LesionCounts.Of(red: 2, green: 5), Killed, Hatched, log);

        dating.Events.Select(row => row.Disturbance.What).Should().Equal("dog", "moved the shelter", "hail");
        dating.Events.Select(row => Math.Round(row.ExpectedBirds, 6)).Should().Equal(3.5, 2.5, 1);
        dating.Events.Select(row => row.ExplainsAll).Should().Equal(false, true, false);
        dating.Events[0].Date.Should().Be(Killed.AddDays(-6));
        dating.OlderThan14Days.Fraction.Should().BeApproximately(1 / 7.0, 1e-12);
        dating.ByDay[5].Share.Fraction.Should().BeApproximately(0.5, 1e-12);
        dating.Cautions.Select(caution => caution.Code).Should().Equal("no-outdoor-data", "no-single-day", "bruises", "several-events", "logged-only");
    }

    [Fact]
    public void What_no_logged_disturbance_can_have_made_is_told()
    {
        DisturbanceLog log = DisturbanceLog.Of(Disturbance.At(Age.FromDays(50), "dog"));

        LesionDating.Among(LesionCounts.Of(red: 2, green: 1), Killed, Hatched, log).Unexplained.Should().Be(2);
        LesionDating.Among(LesionCounts.Of(red: 2), Killed, Hatched, log).IsAnswered.Should().BeFalse();
        FluentActions.Invoking(() => LesionDating.Among(LesionCounts.Of(red: 1), Hatched.AddDays(40), Hatched, log)).Should().Throw<ArgumentException>().WithMessage("*after killing*");
    }

    [Fact]
    public void The_coarse_rule_is_said_and_no_day_is_named()
    {
        string rule = LesionDating.Of(LesionCounts.Of(red: 2, green: 5), Killed, Hatched, Sex.Mixed).CoarseRule;

        rule.Should().Be("2 of 7 red or pink: from the last four days or so (three to five). 5 green or grey: five days old or more. No single day can be named.");
        typeof(LesionDating).GetProperties().Should().NotContain(property => property.PropertyType == typeof(DateOnly));
    }

    [Fact]
    public void Counts_and_dates_that_make_no_sense_are_refused()
    {
        FluentActions.Invoking(() => LesionCounts.Of()).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => LesionCounts.Of(red: -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => LesionDating.Of(LesionCounts.Of(red: 1), Hatched.AddDays(-1), Hatched, Sex.Male)).Should().Throw<ArgumentException>().WithMessage("*before they hatched*");
    }
}
