using BenchmarkDotNet.Attributes;
using Poultry.Growth.Curves;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>The feed of one batch to 63 d: what a plan pays for each date it tries, and what body composition costs solved day by day instead of tabulated.</summary>
[MemoryDiagnoser]
public class FeedForecastCost
{
    private static readonly Age End = Age.FromDays(63);
    private static readonly HeadCountPath Birds = HeadCountPath.Expected(300, Age.FromDays(1), Survival.FastGrowingOutdoor);
    private static readonly GompertzCurve Curve = GompertzCurve.FromHatchWeight(Mass.FromGrams(42), Mass.FromKilograms(4.9), DailyRate.FromPerDay(0.0415));
    private static readonly FeedingConditions Conditions = new() { Temperatures = Temperatures.HouseThen(Age.FromDays(21), Temperatures.Constant(Temperature.FromDegreesCelsius(14))), HatchWeight = Mass.FromGrams(42) };

    private readonly FeedForecastOptions drawn = new()
    {
        Curves = Projection.Of(GrowthPrior.FastGrowingOutdoor(Sex.Mixed)).Draws(1, [.. FeedForecast.AgesFor(Birds, End)]),
    };

    private readonly FeedPath path = new(FeedingPlan.UsualDiets, Conditions, 1, 62);
    private readonly SplitComposition body = (SplitComposition)BodyComposition.Cobb700(Sex.Male, Mass.FromGrams(42));
    private readonly double[] kilograms = [.. FeedForecast.AgesFor(Birds, End).Select(age => Curve.WeightAt(age).Kilograms)];
    private readonly double[] feed = new double[62];

    /// <summary>The kernel: feed of 62 days of a mixed flock from its weights, as each draw of a plan asks it.</summary>
    [Benchmark(Baseline = true)]
    public bool Kernel() => path.Feed(kilograms, feed);

    /// <summary>Protein of one bird on the same days, from the table.</summary>
    [Benchmark]
    public double Tabulated()
    {
        double sum = 0;
        foreach (double weight in kilograms)
        {
            sum += body.At(1000 * weight).Protein;
        }

        return sum;
    }

    /// <summary>The same, the equation solved each day.</summary>
    [Benchmark]
    public double Solved()
    {
        double sum = 0;
        foreach (double weight in kilograms)
        {
            sum += body.Solve(1000 * weight);
        }

        return sum;
    }

    /// <summary>The forecast of a batch whose curve is taken as right.</summary>
    [Benchmark]
    public FeedForecast Forecast() => FeedForecast.For(Curve, Birds, FeedingPlan.UsualDiets, Conditions, End);

    /// <summary>The same with 200 curves drawn, for honest intervals.</summary>
    [Benchmark]
    public FeedForecast ForecastWithDraws() => FeedForecast.For(Curve, Birds, FeedingPlan.UsualDiets, Conditions, End, drawn);
}
