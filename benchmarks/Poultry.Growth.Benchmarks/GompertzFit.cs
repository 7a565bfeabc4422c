using BenchmarkDotNet.Attributes;
using MathNet.Numerics;
using MathNet.Numerics.Optimization;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>A Gompertz fit of nine points by least squares: this library's kernel and its public fit beside MathNet's Levenberg-Marquardt.</summary>
[MemoryDiagnoser]
public class GompertzFit
{
    private static readonly WeighInColumns Columns = new(NinePoints.Series, ErrorModel.EqualVariance);

    private readonly CurveShape shape = CurveFamilies.Gompertz.Shape;
    private readonly double[] start = NinePoints.KernelStart(Columns.Origin);
    private readonly double[] q = new double[2];
    private readonly double[] workspace = new double[ShapeFit.WorkspaceLength(NinePoints.AgeDays.Length, CurveFamilies.Gompertz.Shape)];
    private readonly GrowthFit fit = GrowthFit.Of(NinePoints.Series, errors: ErrorModel.EqualVariance);

    /// <summary>MathNet as it comes, with its own tolerance; analytic Jacobian, start given. It hands products of 9 by 3 matrices to other threads.</summary>
    [Benchmark(Baseline = true)]
    public NonlinearMinimizationResult MathNet() => MathNetFit.Fit(NinePoints.Kilograms);

    /// <summary>MathNet to the kernel's tolerance.</summary>
    [Benchmark]
    public NonlinearMinimizationResult MathNetToTolerance() => MathNetFit.FitToTolerance(NinePoints.Kilograms);

    /// <summary>For all of MathNet in this process.</summary>
    [GlobalSetup(Target = nameof(MathNetOneThread))]
    public void UseOneThread() => Control.UseSingleThread();

    /// <summary>MathNet told to keep to one thread.</summary>
    [Benchmark]
    public NonlinearMinimizationResult MathNetOneThread() => MathNetFit.Fit(NinePoints.Kilograms);

    /// <summary>The kernel from the same start.</summary>
    [Benchmark]
    public double Kernel()
    {
        start.CopyTo(q, 0);
        return ShapeFit.Improve(Columns.Data, shape, HeldValue.Only(0), q, workspace).SumOfSquares;
    }

    /// <summary>The kernel that finds its own start.</summary>
    [Benchmark]
    public double KernelOwnStart() => ShapeFit.Solve(Columns.Data, shape, HeldValue.Only(0), q, workspace).SumOfSquares;

    /// <summary>The public fit: own start, standard errors, correlations, likelihood.</summary>
    [Benchmark]
    public GrowthFit PublicFit() => GrowthFit.Of(NinePoints.Series, errors: ErrorModel.EqualVariance);

    /// <summary>The default error model of live birds.</summary>
    [Benchmark]
    public GrowthFit PublicFitProportional() => GrowthFit.Of(NinePoints.Series);

    /// <summary>Six profile limits of a fit.</summary>
    [Benchmark]
    public IReadOnlyList<Interval<double>> ProfileLimits() => fit.ProfileLimits(0.95);
}
