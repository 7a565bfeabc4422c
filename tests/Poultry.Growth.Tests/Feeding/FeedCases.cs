using Poultry.Growth.Curves;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>An invented batch for the tests of feed: 300 birds outdoors from three weeks on.</summary>
internal static class FeedCases
{
    public static Age Eight { get; } = Age.FromDays(56);

    public static IGrowthCurve Curve { get; } = GompertzCurve.FromHatchWeight(Mass.FromGrams(42), Mass.FromKilograms(4.9), DailyRate.FromPerDay(0.0415));

    public static HeadCountPath Birds { get; } = HeadCountPath.Expected(300, Age.FromDays(1), Survival.FastGrowingOutdoor);

    public static Temperatures Meadow { get; } = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(14)));

    public static FeedingConditions Outdoors => new() { Temperatures = Meadow };

    public static FeedForecast Forecast(FeedingConditions? conditions = null, FeedingPlan? plan = null, FeedForecastOptions? options = null) =>
        FeedForecast.For(Curve, Birds, plan ?? FeedingPlan.UsualDiets, conditions ?? Outdoors, Eight, options);

    public static SpecificEnergy Kilocalories(double perKilogram) => Calories.PerKilogram(perKilogram);
}
