using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Optimization;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>A full projection from eight weigh-ins (7 to 56 d) beside one plain Gompertz fit by MathNet: nodes, interval and bands in the time of three.</summary>
[MemoryDiagnoser]
public class ProjectionCost
{
    private static readonly WeighInSeries WeighIns = WeighInSeries.Of(NinePoints.AgeDays.Zip(NinePoints.Kilograms).Skip(1)
        .Select(row => WeighIn.Mean(Age.FromDays(row.First), Mass.FromKilograms(row.Second), 50)));

    private readonly GrowthPrior prior = GrowthPrior.FastGrowingObjective(Sex.Male);
    private readonly Projection projection = Projection.Of(WeighIns, GrowthPrior.FastGrowingObjective(Sex.Male));
    private readonly NodeFits fits;
    private readonly double[] workspace;

    /// <summary>Data and room of the kernel.</summary>
    public ProjectionCost()
    {
        FlockSpread spread = new(Sex.Male, WeighIns, ProjectionOptions.Default);
        ProjectionData data = new(WeighIns, spread, ProjectionOptions.UsualWeighInError);
        fits = new NodeFits(new NodePlan(prior, ProjectionOptions.Default.ShapeStep), data);
        workspace = new double[ProjectionKernel.WorkspaceLength(data.Count)];
    }

    /// <summary>One plain Gompertz fit by MathNet, nine points.</summary>
    [Benchmark(Baseline = true)]
    public NonlinearMinimizationResult MathNet() => MathNetFit.Fit(NinePoints.Kilograms);

    /// <summary>The kernel: all nodes.</summary>
    [Benchmark]
    public double Kernel()
    {
        ProjectionKernel.Fit(fits, workspace);
        return fits.Weight(0);
    }

    /// <summary>The object.</summary>
    [Benchmark]
    public Projection Project() => Projection.Of(WeighIns, prior);

    /// <summary>The object, the mean with its interval, and three bands.</summary>
    [Benchmark]
    public IReadOnlyList<WeightBand> Full()
    {
        Projection made = Projection.Of(WeighIns, prior);
        _ = made.MeanAt(Age.FromDays(63));
        return made.ShareInBands(Age.FromDays(63), Mass.FromKilograms(4), Mass.FromKilograms(5));
    }

    /// <summary>The age at a weight.</summary>
    [Benchmark]
    public object? AgeAt() => projection.AgeAt(Mass.FromKilograms(5));
}
