using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// Limits of a parameter from the whole fit and not from its slope at the optimum: all values with which the rest of the curve can be so
/// arranged that the sum of squares stays below a cut. Open where no value exceeds it.
/// </summary>
internal ref struct ProfileSearch : IScalarFunction
{
    /// <summary>So many doublings of the first step without reaching the cut mean that there is no bound.</summary>
    private const int MostDoublings = 30;

    /// <summary>A bound is good to this share of its distance from the estimate.</summary>
    private const double Tolerance = 1e-6;

    private readonly FitData data;
    private readonly CurveShape shape;
    private readonly int parameter;
    private readonly double cut;
    private readonly bool logarithmic;
    private readonly Span<double> q;
    private readonly Span<double> second;
    private readonly Span<double> workspace;

    // The last point below the cut: from one far above it a search may not find back.
    private readonly Span<double> inside;
    private double insideLogScale;

    private ProfileSearch(in FitData data, FittedShape fit, int parameter, double cut, Span<double> workspace)
    {
        this.data = data;
        (shape, this.parameter, this.cut) = (fit.Family.Shape, parameter, cut);

        // Weights, rates and halfway ages are above 0 by nature: their logarithm is searched.
        logarithmic = parameter < 2 || fit.Family == CurveFamilies.Lopez;
        q = Workspace.Take(ref workspace, shape.Count);
        second = Workspace.Take(ref workspace, shape.Count);
        inside = Workspace.Take(ref workspace, shape.Count);
        this.workspace = workspace;
    }

    /// <summary>The limits of one parameter.</summary>
    /// <param name="fit">The fit, without a known hatch weight.</param>
    /// <param name="data">What was fitted.</param>
    /// <param name="parameter">Index of the parameter.</param>
    /// <param name="value">Its estimate.</param>
    /// <param name="step">A first step away from it, above 0.</param>
    /// <param name="cut">The sum of squares not to exceed.</param>
    /// <param name="limitSum">The least sum of squares without a mature weight.</param>
    public static (double? Low, double? High) Limits(
        FittedShape fit, in FitData data, int parameter, double value, double step, double cut, double limitSum)
    {
        Span<double> workspace = new double[(3 * fit.Family.Shape.Count) + ShapeFit.WorkspaceLength(data.Count, fit.Family.Shape)];
        ProfileSearch search = new(data, fit, parameter, cut, workspace);
        double start = search.logarithmic ? Math.Log(value) : value;
        double first = search.logarithmic ? Math.Min(step / value, 1) : step;
        return (search.Bound(fit, start, -first, limitSum), search.Bound(fit, start, first, limitSum));
    }

    /// <summary>How far the least sum of squares at a value of the parameter lies above the cut.</summary>
    public double At(double x)
    {
        inside.CopyTo(q);
        HeldValue held = HeldValue.Only(0).And(shape, parameter, logarithmic ? Math.Exp(x) : x);
        if (parameter == 0)
        {
            shape.AimAtMatureWeight(x, insideLogScale, q);
        }

        ShapePoint point = ShapeFit.Improve(data, shape, held, q, workspace);
        if (point.SumOfSquares > cut)
        {
            // A value is outside when no start gets below the cut: the last optimum may be too far away, or another one lower.
            q.CopyTo(second);
            ShapePoint other = ShapeFit.Solve(data, shape, held, second, workspace);
            if (other.IsBetterThan(point))
            {
                point = other;
                second.CopyTo(q);
            }
        }

        double sum = point.SumOfSquares;
        if (!shape.HasMatureWeight(q) && shape.MoveToLimit(parameter, q))
        {
            // No mature weight is allowed to be infinite: the best that is left at this value lies on the limit.
            sum = ShapeFit.SumOfSquares(data, shape, q, workspace);
        }

        if (sum <= cut)
        {
            q.CopyTo(inside);
            insideLogScale = point.LogScale;
        }

        return sum - cut;
    }

    private double? Bound(FittedShape fit, double start, double step, double limitSum)
    {
        if (limitSum < cut && shape.LimitIsTowards(parameter, upward: step > 0))
        {
            return null;
        }

        fit.Coordinates.CopyTo(inside);
        insideLogScale = fit.LogScale;
        double within = start;
        for (int doubling = 0; doubling < MostDoublings; doubling++)
        {
            double outside = within + step;
            if (At(outside) > 0)
            {
                double tolerance = Tolerance * Math.Abs(outside - start);
                return RootFinding.Bracketed(ref this, Math.Min(within, outside), Math.Max(within, outside), tolerance, out double root)
                    ? (logarithmic ? Math.Exp(root) : root)
                    : throw new InvalidOperationException("A profile limit between two of its values was not found.");
            }

            within = outside;
            step *= 2;
        }

        return null;
    }
}
