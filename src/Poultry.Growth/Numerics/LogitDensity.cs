using Poultry.Growth.Primitives;

namespace Poultry.Growth.Numerics;

/// <summary>
/// What is known of a rare share, as a density of z = ln(p / (1 - p)) on evenly spaced points: its logarithm, since the tails matter.
/// Means are trapezoid sums, which for smooth densities that end within the grid keep all digits; the weight of a cell is that of the cubic through four points, and within a
/// cell the density is straight.
/// </summary>
internal sealed partial class LogitDensity
{
    /// <summary>A density of 0 is kept as exp(-700) of the highest, so that its logarithm is a number.</summary>
    private const double Deepest = 700;

    private readonly double first;
    private readonly double step;
    private readonly double[] logHeights;
    private readonly double[] heights;
    private readonly double[] below;

    /// <param name="first">z of the first point.</param>
    /// <param name="step">Between points, above 0.</param>
    /// <param name="logHeights">Up to a constant; at least two finite ones.</param>
    public LogitDensity(double first, double step, double[] logHeights)
    {
        double highest = logHeights.Max();
        (this.first, this.step, this.logHeights) = (first, step, [.. logHeights.Select(height => Math.Max(height, highest - Deepest))]);
        heights = [.. logHeights.Select(height => Math.Exp(height - highest))];
        below = new double[heights.Length];
        for (int i = 1; i < below.Length; i++)
        {
            below[i] = below[i - 1] + CellWeight(i);
        }

        double total = below[^1];
        for (int i = 0; i < heights.Length; i++)
        {
            heights[i] /= total;
            below[i] /= total;
        }
    }

    private double Last => first + (step * (heights.Length - 1));

    /// <summary>p of z.</summary>
    public static double Logistic(double z) => z >= 0 ? 1 / (1 + Math.Exp(-z)) : Math.Exp(z) / (1 + Math.Exp(z));

    /// <summary>z of p, which lies strictly between 0 and 1.</summary>
    public static double Logit(double p) => Math.Log(p) - Math.Log(1 - p);

    /// <summary>The mean of a function of p.</summary>
    public double Mean(Func<double, double> ofShare) => MeanOf(z => ofShare(Logistic(z)));

    private double MeanOf(Func<double, double> ofLogit)
    {
        double sum = 0;
        for (int i = 0; i < heights.Length; i++)
        {
            double end = i == 0 || i == heights.Length - 1 ? 0.5 : 1;
            sum += end * heights[i] * ofLogit(first + (step * i));
        }

        return step * sum;
    }

    /// <summary>The chance that z lies below a value.</summary>
    public double Below(double z)
    {
        double place = (z - first) / step;
        if (place <= 0 || place >= heights.Length - 1)
        {
            return place <= 0 ? 0 : 1;
        }

        int cell = (int)place;
        double share = place - cell;
        double straight = share * (heights[cell] + (share * (heights[cell + 1] - heights[cell]) / 2));
        return below[cell] + (straight * Scale(cell));
    }

    /// <summary>z below which the density lies with a probability, strictly between 0 and 1.</summary>
    public double Quantile(double probability)
    {
        Require.Share(probability);
        int found = Array.BinarySearch(below, probability);
        int cell = Math.Clamp((found < 0 ? ~found : found) - 1, 0, heights.Length - 2);

        // rest = h0 s + (h1 - h0) s²/2: the root in a form that keeps its digits where both heights are alike.
        double rest = (probability - below[cell]) / Scale(cell), height = heights[cell], slope = heights[cell + 1] - height;
        double share = 2 * rest / (height + Math.Sqrt(Math.Max(0, (height * height) + (2 * slope * rest))));
        return first + (step * (cell + Math.Clamp(share, 0, 1)));
    }

    /// <summary>How far to move along z so that the mean of p is as wanted.</summary>
    public double ShiftToMean(double mean)
    {
        MeanMiss miss = new(this, mean);
        _ = RootFinding.Bracketed(ref miss, -100, 100, tolerance: 1e-12, out double shift);
        return shift;
    }

    /// <summary>The weight between a point and the one before it, in the unit of the heights: step/24 (-f0 + 13 f1 + 13 f2 - f3), and straight where that has no neighbours or bends too sharply.</summary>
    private double CellWeight(int i)
    {
        double straight = step * (heights[i - 1] + heights[i]) / 2;
        double cubic = i < 2 || i > heights.Length - 2 ? 0 : step / 24 * ((13 * (heights[i - 1] + heights[i])) - heights[i - 2] - heights[i + 1]);
        return cubic > 0 ? cubic : straight;
    }

    /// <summary>What a straight density in a cell, on steps of 1, is multiplied by to have the cell's weight.</summary>
    private double Scale(int cell)
    {
        double straight = (heights[cell] + heights[cell + 1]) / 2;
        return straight == 0 ? step : (below[cell + 1] - below[cell]) / straight;
    }

    /// <summary>Cubic through the four nearest points: exact where the density is normal. Beyond the grid it is 0.</summary>
    private double LogAt(double z)
    {
        double place = (z - first) / step;
        if (place < 0 || place > heights.Length - 1)
        {
            return double.NegativeInfinity;
        }

        int i = Math.Clamp((int)place - 1, 0, heights.Length - 4);
        double t = place - i;
        return (logHeights[i] * (t - 1) * (t - 2) * (t - 3) / -6) + (logHeights[i + 1] * t * (t - 2) * (t - 3) / 2)
            + (logHeights[i + 2] * t * (t - 1) * (t - 3) / -2) + (logHeights[i + 3] * t * (t - 1) * (t - 2) / 6);
    }

    private readonly struct MeanMiss(LogitDensity density, double mean) : IScalarFunction
    {
        public double At(double x) => density.MeanOf(z => Logistic(z + x)) - mean;
    }
}
