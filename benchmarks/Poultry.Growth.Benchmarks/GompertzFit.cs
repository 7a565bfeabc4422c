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
    private readonly WeighInColumns columns = new(NinePoints.Series, ErrorModel.EqualVariance);
    private readonly CurveShape shape = CurveFamilies.Gompertz.Shape;
    private readonly double[] start = new double[2];
    private readonly double[] q = new double[2];
    private readonly double[] workspace = new double[ShapeFit.WorkspaceLength(NinePoints.AgeDays.Length, CurveFamilies.Gompertz.Shape)];
    private readonly GrowthFit fit = GrowthFit.Of(NinePoints.Series, errors: ErrorModel.EqualVariance);

    /// <summary>The start in the coordinates of the kernel: k and the relative gain k E/(1 + v E) at the origin, v = 0.</summary>
    public GompertzFit()
    {
        (double rate, double inflection) = (NinePoints.Start[1], NinePoints.Start[2]);
        (start[0], start[1]) = (rate, rate * Math.Exp(rate * (inflection - columns.Origin)));
    }

    /// <summary>MathNet as it comes, analytic Jacobian, start given: it hands products of 9 by 3 matrices to other threads.</summary>
    [Benchmark(Baseline = true)]
    public NonlinearMinimizationResult MathNet() => MathNetFit.Fit();

    /// <summary>For all of MathNet in this process.</summary>
    [GlobalSetup(Target = nameof(MathNetOneThread))]
    public void UseOneThread() => Control.UseSingleThread();

    /// <summary>MathNet told to keep to one thread.</summary>
    [Benchmark]
    public NonlinearMinimizationResult MathNetOneThread() => MathNetFit.Fit();

    /// <summary>The kernel from the same start.</summary>
    [Benchmark]
    public double Kernel()
    {
        start.CopyTo(q, 0);
        return ShapeFit.Improve(columns.Data, shape, HeldValue.Only(0), q, workspace).SumOfSquares;
    }

    /// <summary>The kernel that finds its own start.</summary>
    [Benchmark]
    public double KernelOwnStart() => ShapeFit.Solve(columns.Data, shape, HeldValue.Only(0), q, workspace).SumOfSquares;

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
