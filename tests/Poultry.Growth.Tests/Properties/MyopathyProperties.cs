using CsCheck;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Properties;

/// <summary>What holds of lesions whatever the figures.</summary>
public class MyopathyProperties
{
    private static readonly Gen<BatchPrevalence> Batches = Gen.Select(
        Gen.Double[-9, -1], Gen.Double[0.3, 2.5], Gen.Double[36.5, 70], (mu, sigma, age) => PlanningRisk.Of(mu, sigma).For(new() { KillAge = Age.FromDays(age), Sex = Sex.Female }));

    [Fact]
    public void The_chance_of_more_than_a_quantile_is_the_rest() => Gen.Select(Batches, Gen.Double[0.001, 0.999]).Sample(
        (batch, probability) => Math.Abs(1 - batch.ChanceAbove(batch.Quantile(Probability.FromFraction(probability))).Fraction - probability) < 1e-9, iter: 100);

    [Fact]
    public void More_found_means_more_affected() => Gen.Select(Batches, Gen.Int[20, 1000], Gen.Double[0, 0.5]).Sample(
        (batch, opened, part) =>
        {
            int found = (int)(part * opened);
            return batch.After(LesionInspection.Of(opened, found + 1)).Mean > batch.After(LesionInspection.Of(opened, found)).Mean;
        },
        iter: 50);

    [Fact]
    public void Two_inspections_are_one_of_all_their_birds() => Gen.Select(Batches, Gen.Int[20, 500], Gen.Int[20, 500], Gen.Int[0, 10], Gen.Int[0, 10]).Sample(
        (batch, first, second, found, more) =>
        {
            double apart = batch.After(LesionInspection.Of(first, found)).After(LesionInspection.Of(second, more)).Mean.Percent;
            return Math.Abs(apart - batch.After(LesionInspection.Of(first + second, found + more)).Mean.Percent) < 1e-6 * apart;
        },
        iter: 50);

    [Fact]
    public void Birds_and_muscles_turn_back() => Gen.Select(Gen.Double[0, 100], Gen.Double[0, 1]).Sample(
        (percent, bilateral) =>
        {
            LesionSides sides = LesionSides.OfBilateralShare(Probability.FromFraction(bilateral));
            BirdPrevalence birds = sides.Birds(MusclePrevalence.FromPercent(percent));
            return birds.Percent >= percent - 1e-9 && Math.Abs(sides.Muscles(birds).Percent - percent) < 1e-6;
        });

    [Fact]
    public void Opening_the_birds_named_is_enough_and_one_fewer_is_not() => Gen.Select(Gen.Int[5, 2000], Gen.Double[0.1, 30], Gen.Double[0.3, 1], Gen.Double[0.5, 0.99]).Sample(
        (flock, percent, seen, level) =>
        {
            BirdsToOpen Asked(double confidence) => BirdsToOpen.ToFind(BirdPrevalence.FromPercent(percent), confidence, flock, Probability.FromFraction(seen));
            BirdsToOpen answer = Asked(level);
            return answer.Birds is not { } birds ? answer.ChanceOfNone.Fraction > 1 - level
                : answer.ChanceOfNone.Fraction <= (1 - level) * (1 + 1e-9) && birds <= flock && (Asked(level / 2).Birds ?? int.MaxValue) <= birds;
        },
        iter: 100);

    [Fact]
    public void Chances_over_days_sum_to_1() => Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[1, 9], Gen.Int[45, 80], Gen.Bool).Sample(
        (red, pink, green, grey, age, weighted) =>
        {
            DateOnly hatched = new(2027, 4, 11);
            LesionDating dating = LesionDating.Of(LesionCounts.Of(red, pink, green, grey), hatched.AddDays(age), hatched, Sex.Mixed, weighted);
            return dating.Unexplained == 0 && Math.Abs(dating.ByDay.Sum(day => day.Share.Fraction) + dating.OlderThan14Days.Fraction - 1) < 1e-9;
        });

    [Fact]
    public void Another_disturbance_never_spares_a_bird() => Gen.Select(Gen.Double[20, 56], Gen.Double[20, 56], Gen.Double[0, 40], Gen.Double[0, 1]).Sample(
        (first, second, cycles, share) =>
        {
            FlappingDose dose = FlappingDose.Of(Probability.FromFraction(share), cycles);
            DisturbanceLog one = DisturbanceLog.Of(Disturbance.At(Age.FromDays(first), "one", dose));
            DisturbanceLog two = DisturbanceLog.Of([.. one, Disturbance.At(Age.FromDays(second), "two", dose)]);
            BirdPrevalence Affected(DisturbanceLog log) => EventRisk.MeatType.For(log, Age.FromDays(56), Sex.Male).Affected!.Value;
            return Affected(two) >= Affected(one);
        },
        iter: 20);
}
