using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>What no feed can be forecast for is refused by name, and not answered beyond sense.</summary>
public class FeedForecastRefusalTests
{
    [Fact]
    public void What_cannot_be_forecast_is_refused()
    {
        FeedingConditions house = new() { Temperatures = Temperatures.StandardHouse, Pasture = PastureIntake.RiveraFerre2007 };
        FluentActions.Invoking(() => FeedCases.Forecast(house)).Should().Throw<ArgumentException>().WithMessage("*go out*");
        FeedingPlan late = FeedingPlan.Of(new FeedPhase("grower", Age.FromDays(21), null, FeedCases.Kilocalories(3100)));
        FluentActions.Invoking(() => FeedCases.Forecast(plan: late)).Should().Throw<ArgumentException>().WithMessage("*21 d*");
        FluentActions.Invoking(() => FeedingPlan.Of(late.Phases[0], new FeedPhase("x", Age.FromDays(30), null, FeedCases.Kilocalories(3000)), new FeedPhase("y", Age.FromDays(30), null, FeedCases.Kilocalories(3000))))
            .Should().Throw<ArgumentException>().WithMessage("*gap or overlap*");
        FluentActions.Invoking(() => new FeedPhase("feed", Age.Hatch, null, FeedCases.Kilocalories(12))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*1000 to 5000 kcal/kg*");
        FluentActions.Invoking(() => FeedCases.Forecast(options: new() { Record = new(Age.FromDays(70), Mass.FromKilograms(9), Mass.Zero) })).Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>A body composition is known from 10 g to 12 kg for each sex: 12.5 g to 10 kg of their mean.</summary>
    [Theory]
    [InlineData(4.9, 0.06, null, "A bird of *g * d is not allowed; expected weights between 12.5 g (0.44 oz) and 10 kg (22.05 lb), for which feed is known.*")]
    [InlineData(4.9, 0.06, 42.0, "A bird of *g * d is not allowed; expected weights between 12.5 g (0.44 oz) and 10 kg (22.05 lb), for which feed is known.*")]
    [InlineData(40, 0.04, 42.0, "A bird of *g * d is not allowed; expected weights between 12.5 g (0.44 oz) and 10 kg (22.05 lb), for which feed is known.*")]
    public void Weights_of_no_bird_are_refused(double matureKilograms, double rate, double? hatchGrams, string message)
    {
        GompertzCurve curve = GompertzCurve.Of(Mass.FromKilograms(matureKilograms), DailyRate.FromPerDay(rate), Age.FromDays(40));
        FeedingConditions conditions = new() { Temperatures = FeedCases.Meadow, HatchWeight = hatchGrams is { } grams ? Mass.FromGrams(grams) : null };

        FluentActions.Invoking(() => FeedForecast.For(curve, FeedCases.Birds, FeedingPlan.UsualDiets, conditions, FeedCases.Eight))
            .Should().Throw<ArgumentOutOfRangeException>().WithParameterName("curve").WithMessage(message);
    }

    [Fact]
    public void A_fall_that_no_eating_bird_could_follow_is_refused()
    {
        FluentActions.Invoking(() => FeedForecast.For(new Falling(), FeedCases.Birds, FeedingPlan.UsualDiets, FeedCases.Outdoors, FeedCases.Eight))
            .Should().Throw<ArgumentOutOfRangeException>().WithParameterName("curve")
            .WithMessage("A fall from 3 kg (6.61 lb) at 1 d to 2.4* kg (5.4* lb) a day later is not allowed; expected weights that a bird which eats can follow.*");
    }

    [Fact]
    public void A_batch_of_which_no_bird_is_left_is_refused_by_name()
    {
        HeadCountPath dead = HeadCountPath.Recorded(30, Age.FromDays(1), [Deaths.Of(Age.FromDays(9), 30)], Survival.WithoutLoss);

        FluentActions.Invoking(() => FeedForecast.For(FeedCases.Curve, dead, FeedingPlan.UsualDiets, FeedCases.Outdoors, FeedCases.Eight))
            .Should().Throw<ArgumentOutOfRangeException>().WithParameterName("birds").WithMessage("0 birds alive at the end*");
    }

    /// <summary>From 3 kg on the first day down by a fifth a day: no curve of growth, but one may be handed in.</summary>
    private sealed class Falling : IGrowthCurve
    {
        public ModelInfo Model => GompertzCurve.Info;

        public Mass? MatureWeight => null;

        public Inflection? Inflection => null;

        public void WeightsAt(ReadOnlySpan<double> ageDays, Span<double> kilograms)
        {
            for (int i = 0; i < ageDays.Length; i++)
            {
                kilograms[i] = 0.05 + (2.95 * Math.Exp(0.2 * (1 - ageDays[i])));
            }
        }

        public Mass WeightAt(Age age) => throw new NotSupportedException();

        public MassFlow GainAt(Age age) => throw new NotSupportedException();

        public DailyRate RelativeGainAt(Age age) => throw new NotSupportedException();

        public MassFlow MeanGain(Age from, Age to) => throw new NotSupportedException();

        public AgeAtWeight AgeAt(Mass weight) => throw new NotSupportedException();

        public void GainsAt(ReadOnlySpan<double> ageDays, Span<double> kilogramsPerDay) => throw new NotSupportedException();
    }
}
