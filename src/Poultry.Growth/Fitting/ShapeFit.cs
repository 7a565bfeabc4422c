using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>The kernel of every fit: the best shape coordinates for some data, without a heap allocation.</summary>
internal static class ShapeFit
{
    /// <summary>Beyond so many steps a search has lost its way.</summary>
    private static readonly LeastSquaresOptions Options = new() { EvaluationLimit = 300 };

    public static int WorkspaceLength(int ages, CurveShape shape) =>
        (4 * ages) + (2 * shape.Count) + ShapeProblem.WorkspaceLength(ages, shape.Count) + LeastSquares.WorkspaceLength(2 * ages, shape.Count);

    /// <summary>The best optimum from the starts that the shape offers.</summary>
    /// <param name="data">The weigh-ins.</param>
    /// <param name="shape">The law.</param>
    /// <param name="held">What must not change.</param>
    /// <param name="q">Receives the coordinates.</param>
    /// <param name="workspace">See <see cref="WorkspaceLength"/>.</param>
    public static ShapePoint Solve(in FitData data, CurveShape shape, in HeldValue held, Span<double> q, Span<double> workspace)
    {
        int n = data.Count;
        Span<double> logWeights = workspace[..n];
        Span<double> startRoom = workspace.Slice(n, 3 * n);
        Span<double> trial = workspace.Slice(4 * n, shape.Count);
        Span<double> rest = workspace[((4 * n) + shape.Count)..];
        for (int i = 0; i < n; i++)
        {
            // By the delta method a kilogram's weight is worth y² as much on the logarithmic scale.
            logWeights[i] = data.Scale == ResidualScale.Kilograms
                ? data.Weights[i] * data.Kilograms[i] * data.Kilograms[i]
                : data.Weights[i];
        }

        ShapePoint best = ShapePoint.None;
        for (int start = 0; start < shape.Starts; start++)
        {
            shape.Start(start, data.Origin, data.AgeDays, data.LogKilograms, logWeights, trial, startRoom);
            ShapePoint point = Improve(data, shape, held, trial, rest);
            if (point.IsBetterThan(best))
            {
                best = point;
                trial.CopyTo(q);
            }
        }

        return best;
    }

    /// <summary>The optimum nearest to given coordinates.</summary>
    /// <param name="data">The weigh-ins.</param>
    /// <param name="shape">The law.</param>
    /// <param name="held">What must not change.</param>
    /// <param name="q">The start; receives the optimum.</param>
    /// <param name="workspace">See <see cref="WorkspaceLength"/>.</param>
    public static ShapePoint Improve(in FitData data, CurveShape shape, in HeldValue held, Span<double> q, Span<double> workspace)
    {
        Span<double> free = workspace[..shape.Count];
        Span<double> rest = workspace[shape.Count..];
        ShapeProblem problem = new(data, shape, held, ref rest);
        int count = 0;
        for (int j = 0; j < shape.Count; j++)
        {
            if (held.Coordinate != j + 1)
            {
                free[count++] = q[j];
            }
        }

        LeastSquaresResult result = LeastSquares.Solve(ref problem, free[..count], rest, Options);
        if (result.Status == LeastSquaresStatus.NotFinite)
        {
            return ShapePoint.None;
        }

        // The scale belongs to the point returned, which need not be the last one looked at.
        problem.Complete(free[..count], q, out _);
        if (!problem.WasLastAt(q))
        {
            problem.Evaluate(free[..count], rest[..problem.Residuals], default);
        }

        return new ShapePoint(result, Math.Log(problem.Scale));
    }

    /// <summary>The sum of squares at given coordinates, with the best scale.</summary>
    public static double SumOfSquares(in FitData data, CurveShape shape, ReadOnlySpan<double> q, Span<double> workspace)
    {
        ShapeProblem problem = new(data, shape, HeldValue.Only(0), ref workspace);
        Span<double> residuals = workspace[..problem.Residuals];
        if (!problem.Evaluate(q, residuals, default))
        {
            return double.PositiveInfinity;
        }

        double sum = 0;
        foreach (double residual in residuals)
        {
            sum += residual * residual;
        }

        return sum;
    }
}
