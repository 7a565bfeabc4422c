using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>The steps from weigh-ins to a certified fit or a reason why there is none.</summary>
internal static class GrowthFitter
{
    /// <summary>A mature weight so many times the heaviest weigh-in is no weight of a bird.</summary>
    public const double AbsurdRatio = 1e5;

    /// <summary>Shapes beyond which a Richards curve is a hard stop (or has no inflection): the weights say nothing about them.</summary>
    private const double LargestShape = 100;
    private const double SmallestShape = -0.99;

    /// <summary>A search that ends without a certificate beyond this shape was running towards the hard stop.</summary>
    private const double RunawayShape = 20;

    /// <summary>Iterated weights have settled when no fitted weight moves by more than this share.</summary>
    private const double SettledShare = 1e-10;
    private const int MostRenewals = 200;

    public static FitOutcome Fit(WeighInColumns columns, CurveFamily family, ErrorModel errors, double hatchKilograms)
    {
        CurveShape shape = family.Shape;
        int free = FittedShape.FreeCoordinates(shape, hatchKilograms);
        if (columns.DifferentAges < free || (!errors.IsKnown && columns.Observations <= free))
        {
            return FitOutcome.Refused(FitStatus.TooFewAges, string.Create(
                CultureInfo.InvariantCulture,
                $"{family.Model.Name} has {free} free parameters; {columns.DifferentAges} different ages and {columns.Observations:0} observations do not carry them. Weigh on more days."));
        }

        int room = ShapeFit.WorkspaceLength(columns.Data.Count, shape);
        Span<double> workspace = room <= Workspace.StackRoom ? stackalloc double[room] : new double[room];
        double[] q = new double[shape.Count];
        double[] weights = columns.Weights.ToArray();
        HeldValue held = HeldValue.Only(hatchKilograms);
        ShapePoint point = Search(columns, weights, errors, shape, held, q, workspace);
        if (Trouble(columns, family, shape, point, q) is { } trouble)
        {
            return trouble.Status == FitStatus.NoFiniteMatureWeight
                ? trouble.With(Exponential(columns, errors, held))
                : trouble;
        }

        FitData data = columns.Data with { Weights = weights };
        double[] covariance = new double[free * free];
        CurveProblem problem = new(data, shape, point, q, hatchKilograms);
        if (!LeastSquares.Covariance(ref problem, stackalloc double[free], covariance, workspace, out int blamed))
        {
            return NotIdentified(family, hatchKilograms > 0 ? blamed + 1 : blamed);
        }

        FitNumbers numbers = FitNumbers.At(data, columns, errors, shape, free, point, q);
        foreach (ref double element in covariance.AsSpan())
        {
            element *= numbers.Sigma * numbers.Sigma;
        }

        return FitOutcome.Found(new FittedShape(family, data.Origin, hatchKilograms, point.LogScale, q, covariance), numbers, weights[..columns.Count]);
    }

    /// <summary>The optimum of the error model: for iterated weights the point that reproduces its own weights.</summary>
    private static ShapePoint Search(
        WeighInColumns columns, double[] weights, ErrorModel errors, CurveShape shape, in HeldValue held, Span<double> q, Span<double> workspace)
    {
        FitData data = columns.Data with { Weights = weights };
        if (errors != ErrorModel.ProportionalIterated)
        {
            return ShapeFit.Solve(data, shape, held, q, workspace);
        }

        // Weights 1/y² are the first guess of 1/fitted².
        int n = data.Count;
        Span<double> log = new double[n];
        data.LogKilograms.CopyTo(log);
        ShapePoint point = ShapePoint.None;
        for (int renewal = 0; renewal < MostRenewals; renewal++)
        {
            for (int i = 0; i < n; i++)
            {
                weights[i] = columns.Weights[i] * Math.Exp(-2 * log[i]);
            }

            point = renewal == 0 ? ShapeFit.Solve(data, shape, held, q, workspace) : ShapeFit.Improve(data, shape, held, q, workspace);
            double moved = 0;
            Span<double> fitted = workspace[..n];
            if (!point.IsOptimum || !shape.Evaluate(q, data.Origin, data.AgeDays, fitted, default))
            {
                return point;
            }

            for (int i = 0; i < n; i++)
            {
                moved = Math.Max(moved, Math.Abs(fitted[i] + point.LogScale - log[i]));
                log[i] = fitted[i] + point.LogScale;
            }

            if (moved < SettledShare)
            {
                return point;
            }
        }

        return ShapePoint.None;
    }

    /// <summary>What keeps a point from being an answer; null where nothing does.</summary>
    private static FitOutcome? Trouble(WeighInColumns columns, CurveFamily family, CurveShape shape, in ShapePoint point, ReadOnlySpan<double> q)
    {
        double largest = point.IsOptimum ? LargestShape : RunawayShape;
        if (family == CurveFamilies.Richards && (q[2] > largest || q[2] < SmallestShape))
        {
            return NotIdentified(family, 3);
        }

        if (!point.IsOptimum)
        {
            return FitOutcome.Refused(FitStatus.NotConverged, string.Create(
                CultureInfo.InvariantCulture,
                $"The search for the {family.Model.Name} ended without a certificate ({point.Certificate:0.0E+0}; below 1E-6 is needed)."));
        }

        if (!shape.HasMatureWeight(q))
        {
            return FitOutcome.Refused(
                FitStatus.NoFiniteMatureWeight,
                $"No finite mature weight fits best: the weights do not bend yet as a {family.Model.Name} must. What they support is growth at a constant rate. Weigh again later.");
        }

        double heaviest = 0;
        foreach (double kilograms in columns.Kilograms)
        {
            heaviest = Math.Max(heaviest, kilograms);
        }

        Span<double> parameters = stackalloc double[family.Parameters.Count];
        Span<double> jacobian = stackalloc double[parameters.Length * (1 + shape.Count)];
        shape.ToParameters(point.LogScale, q, columns.Origin, parameters, jacobian);
        return parameters[0] < AbsurdRatio * heaviest
            ? null
            : FitOutcome.Refused(FitStatus.ImplausibleMatureWeight,
                $"The best {family.Model.Name} has a mature weight of {WeightText.Of(parameters[0])}, no weight of a bird: the weights hardly bend yet. Weigh again later.");
    }

    private static FitOutcome NotIdentified(CurveFamily family, int coordinate)
    {
        int parameter = 0;
        while (family.Shape.CoordinateFor(parameter) != coordinate && parameter < family.Parameters.Count - 1)
        {
            parameter++;
        }

        string name = family.Parameters[parameter].Name;
        return FitOutcome.Refused(
            FitStatus.NotIdentified,
            $"The weights leave the {name} of the {family.Model.Name} open: any value beyond some bound fits as well. Use a family with fewer parameters, or weigh on more days.");
    }

    /// <summary>Growth at a constant rate, fitted by the same error model: the Gompertz law held at its limit.</summary>
    private static ExponentialCurve? Exponential(WeighInColumns columns, ErrorModel errors, in HeldValue held)
    {
        CurveShape shape = CurveFamilies.Gompertz.Shape;
        double[] q = new double[shape.Count];
        double[] workspace = new double[ShapeFit.WorkspaceLength(columns.Data.Count, shape)];
        HeldValue limit = held.And(shape, CurveShape.NoMatureWeight);
        ShapePoint point = Search(columns, columns.Weights.ToArray(), errors, shape, limit, q, workspace);
        if (!point.IsOptimum || q[1] <= 0)
        {
            return null;
        }

        return ExponentialCurve.FromKilograms(Math.Exp(point.LogScale - (q[1] * columns.Origin)), q[1]);
    }
}
