using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Interpolation;
using MathNet.Numerics.RootFinding;
using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>A Gompertz curve asked for its weights at 64 ages, and for the ages at these weights. Beside it a daily table read by MathNet's linear spline, and MathNet's root search (Brent).</summary>
[MemoryDiagnoser]
public class CurveCost
{
    private static readonly GompertzCurve Curve = GompertzCurve.FromHatchWeight(Mass.FromGrams(42), Mass.FromKilograms(4.9), DailyRate.FromPerDay(0.0415));
    private static readonly Age[] Ages = [.. Enumerable.Range(1, 64).Select(day => Age.FromDays(day - 0.5))];
    private static readonly Mass[] Weights = [.. Ages.Select(Curve.WeightAt)];

    private readonly LinearSpline table = LinearSpline.InterpolateSorted(
        [.. Enumerable.Range(0, 66).Select(day => (double)day)], [.. Enumerable.Range(0, 66).Select(day => Curve.WeightAt(Age.FromDays(day)).Kilograms)]);

    /// <summary>Weights by spline.</summary>
    [Benchmark(Baseline = true)]
    public double TableWeights()
    {
        double sum = 0;
        foreach (Age age in Ages)
        {
            sum += table.Interpolate(age.Days);
        }

        return sum;
    }

    /// <summary>Weights by the curve.</summary>
    [Benchmark]
    public double WeightsAtAges()
    {
        double sum = 0;
        foreach (Age age in Ages)
        {
            sum += Curve.WeightAt(age).Kilograms;
        }

        return sum;
    }

    /// <summary>Ages by root search.</summary>
    [Benchmark]
    public double SearchedAges()
    {
        double sum = 0;
        foreach (Mass weight in Weights)
        {
            double kilograms = weight.Kilograms;
            sum += Brent.FindRoot(days => Curve.WeightAt(Age.FromDays(days)).Kilograms - kilograms, 0.01, 100, 1e-9);
        }

        return sum;
    }

    /// <summary>Ages by the curve.</summary>
    [Benchmark]
    public double AgesAtWeights()
    {
        double sum = 0;
        foreach (Mass weight in Weights)
        {
            sum += Curve.AgeAt(weight).Age!.Value.Days;
        }

        return sum;
    }
}
