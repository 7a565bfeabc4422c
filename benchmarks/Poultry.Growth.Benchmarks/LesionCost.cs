using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Distributions;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>What the distribution of a batch costs, with its birds and its ranges, and what it costs to renew a farm's rate with one more batch.</summary>
[MemoryDiagnoser]
public class LesionCost
{
    private static readonly BatchAtRisk Batch = new() { KillAge = Age.FromDays(56), Sex = Sex.Male, IsThinned = true };

    private readonly BatchPrevalence prevalence = PlanningRisk.Published.For(Batch);
    private readonly Random random = new(1);
    private readonly LesionInspection inspection = LesionInspection.Of(300, 2);
    private readonly LesionInspection[] ten = [.. Enumerable.Range(0, 10).Select(number => LesionInspection.Of(300, number % 3, FormattableString.Invariant($"batch {number}")))];

    /// <summary>The distribution of a batch, with its mean and 90 % range.</summary>
    [Benchmark(Baseline = true)]
    public object Predict()
    {
        BatchPrevalence made = PlanningRisk.Published.For(Batch);
        _ = made.Mean;
        return made.IntervalAt(0.90);
    }

    /// <summary>Batches sampled one by one by MathNet's normal, their mean and 90 % range.</summary>
    [Benchmark]
    public object SampledBatches()
    {
        double[] shares = new double[10_000];
        for (int batch = 0; batch < shares.Length; batch++)
        {
            shares[batch] = 1 / (1 + Math.Exp(4 - Normal.Sample(random, 0, 1)));
        }

        Array.Sort(shares);
        return (shares.Average(), shares[500], shares[9500]);
    }

    /// <summary>The same with the ranges of all figures.</summary>
    [Benchmark]
    public object PredictWithRanges() => PlanningRisk.Published.WithParameterRanges.For(Batch).IntervalAt(0.90);

    /// <summary>How many of 300 birds.</summary>
    [Benchmark]
    public AffectedBirds Among300() => prevalence.Among(300);

    /// <summary>After an inspection.</summary>
    [Benchmark]
    public object After() => prevalence.After(inspection).IntervalAt(0.90);

    /// <summary>A farm's rate and next batch from ten inspections.</summary>
    [Benchmark]
    public object LearnTen()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(ten);
        _ = farm.LongRunRate();
        return farm.NextBatch.IntervalAt(0.90);
    }
}
