using System.Reflection;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Myopathy;

public class EventRiskTests
{
    private static readonly Age Killed = Age.FromDays(56);

    private static readonly DisturbanceLog Log = DisturbanceLog.Of(
        Disturbance.At(Age.FromDays(50), "dog at the shelter", FlappingDose.Between(Share(5), Share(10), Share(20), 10, 15, 20)),
        Disturbance.At(Age.FromDays(42), "weighed 20 birds", FlappingDose.Of(Share(7), 5)));

    [Fact]
    public void Nothing_public_takes_or_joins_both_modules()
    {
        Type[] planning = [typeof(BatchPrevalence), typeof(PlanningRisk)], events = [typeof(EventPrevalence), typeof(EventEffect), typeof(EventRisk)];

        foreach (Type type in typeof(BatchPrevalence).Assembly.GetExportedTypes())
        {
            foreach (MethodBase callable in Surface.Callables(type))
            {
                Type[] taken = [type, .. callable.GetParameters().SelectMany(parameter => parameter.ParameterType.GetGenericArguments().Append(parameter.ParameterType))];
                (taken.Intersect(planning).Any() && taken.Intersect(events).Any()).Should().BeFalse($"{type.Name}.{callable.Name} would mix what must not be added");
            }
        }

        planning.Concat(events).SelectMany(Surface.Methods).Where(method => method.Name.StartsWith("op_", StringComparison.Ordinal)).Should().BeEmpty();
        typeof(BatchPrevalence).BaseType.Should().Be<object>();
        typeof(BatchPrevalence).GetInterfaces().Intersect(typeof(EventPrevalence).GetInterfaces()).Should().BeEmpty();
    }

    [Fact]
    public void Muscles_and_birds_do_not_turn_into_each_other_unasked() =>
        typeof(BirdPrevalence).GetMethods().Concat(typeof(MusclePrevalence).GetMethods()).Where(method => method.Name is "op_Implicit" or "op_Explicit").Should().BeEmpty();

    [Fact]
    public void A_log_without_doses_gives_dates_and_no_rate()
    {
        EventPrevalence answer = EventRisk.MeatType.For(DisturbanceLog.Of(Disturbance.At(Age.FromDays(50), "storm")), Killed, Sex.Mixed);

        answer.Affected.Should().BeNull();
        answer.Events.Single().Muscles.Should().BeNull();
        answer.Events.Single().BeforeKilling.Days.Should().BeApproximately(6, 1e-12);
        answer.Cautions.Select(caution => caution.Code).Should().Equal("no-outdoor-data", "dates-no-rate");
    }

    [Fact]
    public void Guesses_and_figures_make_a_range_about_the_likely_answer()
    {
        EventPrevalence answer = EventRisk.MeatType.For(Log, Killed, Sex.Mixed, level: 0.90);
        BirdPrevalence likely = answer.Affected!.Value;

        answer.Events.Select(effect => effect.Disturbance.Age.Days).Should().Equal(42, 50);
        answer.Affected.Interval.Contains(likely).Should().BeTrue();
        answer.Affected.Interval.High!.Value.Percent.Should().BeGreaterThan(1.5 * likely.Percent);
        EventRisk.MeatType.For(Log, Killed, Sex.Mixed).Affected!.Interval.Should().Be(answer.Affected.Interval, "the same question has the same answer, bit for bit");
        EventRisk.MeatType.For(Log, Killed, Sex.Mixed, level: 0.5).Affected!.Interval.High!.Value.Should().BeLessThan(answer.Affected.Interval.High!.Value);
    }

    [Fact]
    public void Events_that_are_combined_spare_what_each_spares()
    {
        EventPrevalence both = EventRisk.MeatType.For(Log, Killed, Sex.Male);
        double spared = both.Events.Aggregate(1 - 0.0006, (product, effect) => product * (1 - effect.Shown!.Value.Share.Fraction));

        both.Affected!.Value.Share.Fraction.Should().BeApproximately(1 - spared, 1e-12);
    }

    [Fact]
    public void What_if_a_disturbance_had_not_happened_or_on_another_day()
    {
        double asItWas = Affected(Log), without = Affected(Log.Without(1)), last = Affected(Log.Moved(1, Age.FromDays(55.8))), young = Affected(Log.Moved(1, Age.FromDays(20)));

        without.Should().BeLessThan(asItWas);
        last.Should().BeApproximately(without, 1e-12, "a lesion of the last half day does not show");
        young.Should().BeApproximately(without, 1e-12, "birds of 20 d are not susceptible");
        Log.Invoking(log => log.Without(2)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0 to 1*");

        static double Affected(DisturbanceLog log) => EventRisk.MeatType.For(log, Killed, Sex.Male).Affected!.Value.Share.Fraction;
    }

    [Fact]
    public void Some_without_a_dose_are_told()
    {
        DisturbanceLog some = DisturbanceLog.Of([.. Log, Disturbance.At(Age.FromDays(53), "storm"), Disturbance.At(Age.FromDays(54), "hail", FlappingDose.Of(Share(1), 30))]);

        EventRisk.MeatType.For(some, Killed, Sex.Mixed, isOutdoor: false).Cautions.Select(caution => caution.Code)
            .Should().Equal("dose-is-a-guess", "some-without-dose", "beyond-measured-dose", "no-sum-with-planning");
    }

    [Fact]
    public void A_disturbance_after_killing_is_refused() =>
        EventRisk.MeatType.Invoking(model => model.For(Log, Age.FromDays(45), Sex.Male)).Should().Throw<ArgumentException>().WithMessage("*dog at the shelter*50 d*after killing at 45 d*");

    [Fact]
    public void Guesses_out_of_order_are_refused() =>
        FluentActions.Invoking(() => FlappingDose.Between(Share(5), Share(4), Share(6), 1, 2, 3)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*likelyShare*");

    /// <summary>Ranges of the figures by the likelihood at 40 muscles a group: C50 20.8 to 47, h 1.5 to 5.0 (95 %); within the width of a prior.</summary>
    [Fact]
    public void The_doubt_of_the_curve_is_that_of_the_trial()
    {
        double[] exponents = [.. Draws().Select(draw => draw.Exponent).Order()], halves = [.. Draws().Select(draw => draw.HalfCycles).Order()];

        exponents[(int)(0.025 * exponents.Length)].Should().BeApproximately(1.5, 0.2);
        exponents[(int)(0.975 * exponents.Length)].Should().BeApproximately(5.0, 0.3);
        halves[(int)(0.025 * halves.Length)].Should().BeApproximately(20.8, 0.6);
        halves[(int)(0.975 * halves.Length)].Should().BeApproximately(47, 3);

        static IEnumerable<(double Exponent, double HalfCycles)> Draws() =>
            Enumerable.Range(0, 10_000).Select(i => FlappingLikelihood.OfTrial.Draw(((i / 100) + 0.5) / 100, ((i % 100) + 0.5) / 100));
    }

    [Fact]
    public void Typical_disturbances_have_cautions_and_no_dose()
    {
        TypicalDisturbance.All.Should().OnlyHaveUniqueItems(kind => kind.Code).And.OnlyContain(kind => kind.Mind.Length > 0);
        typeof(TypicalDisturbance).GetProperties().Should().NotContain(property => property.PropertyType == typeof(double) || property.PropertyType == typeof(FlappingDose));
    }

    private static Probability Share(double percent) => Probability.FromPercent(percent);
}
