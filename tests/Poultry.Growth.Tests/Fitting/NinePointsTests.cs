using Poultry.Growth.Benchmarks;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>What docs/benchmarks.md says of a tolerance. The minimum is that of Conformance/FittingChecks.</summary>
public class NinePointsTests
{
    private const double Rate = 0.0408094785832421415;

    [Fact]
    public void The_kernel_ends_nearer_the_minimum_than_MathNet_to_the_same_tolerance_and_MathNet_as_it_comes_nearer_still()
    {
        WeighInColumns columns = new(NinePoints.Series, ErrorModel.EqualVariance);
        CurveShape shape = CurveFamilies.Gompertz.Shape;
        double[] q = NinePoints.KernelStart(columns.Origin);
        ShapeFit.Improve(columns.Data, shape, HeldValue.Only(0), q, new double[ShapeFit.WorkspaceLength(columns.Data.Count, shape)]);

        Off(q[0]).Should().BeLessThan(1e-11);
        Off(MathNetFit.FitToTolerance(NinePoints.Kilograms).MinimizingPoint[1]).Should().BeInRange(1e-8, 1e-7);
        Off(MathNetFit.Fit(NinePoints.Kilograms).MinimizingPoint[1]).Should().BeLessThan(1e-12);
    }

    private static double Off(double rate) => Math.Abs((rate / Rate) - 1);
}
