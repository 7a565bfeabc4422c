using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.Curves;

/// <summary>Holds the derivatives of a shape against differences, at any coordinates.</summary>
internal static class ShapeGradient
{
    public static void ShouldBeThatByDifferences(CurveShape shape, double[] q, double origin, double[] ageDays)
    {
        double[] gradient = new double[q.Length * ageDays.Length];
        shape.Evaluate(q, origin, ageDays, new double[ageDays.Length], gradient).Should().BeTrue();
        for (int j = 0; j < q.Length; j++)
        {
            double step = 1e-4 * Math.Max(Math.Abs(q[j]), 0.02);
            for (int i = 0; i < ageDays.Length; i++)
            {
                double days = ageDays[i];
                double slope = Differences.Slope(value => LogShape(shape, q, j, value, origin, days), q[j], step);
                gradient[(j * ageDays.Length) + i].Should().BeApproximately(
                    slope, 1e-6 * Math.Max(0.01, Math.Abs(slope)), $"coordinate {j} of ({string.Join(", ", q)}) at {days} d");
            }
        }
    }

    private static double LogShape(CurveShape shape, double[] q, int index, double value, double origin, double days)
    {
        double[] moved = [.. q];
        moved[index] = value;
        double[] logShape = new double[1];
        shape.Evaluate(moved, origin, [days], logShape, []);
        return logShape[0];
    }
}
