using Poultry.Growth.Curves;

namespace Poultry.Growth.Fitting;

/// <summary>A curve found by a fit, in the coordinates of the fit, with the covariance of those that were free: all that prediction needs.</summary>
/// <remarks>Free are the logarithm of the scale and the shape coordinates, in this order; with a known hatch weight only the latter.</remarks>
internal sealed class FittedShape
{
    public FittedShape(CurveFamily family, double origin, double hatchKilograms, double logScale, ReadOnlySpan<double> q, ReadOnlySpan<double> covariance)
    {
        (Family, Origin, HatchKilograms, LogScale) = (family, origin, hatchKilograms, logScale);
        Coordinates = q.ToArray();
        Covariance = covariance.ToArray();
    }

    public CurveFamily Family { get; }

    public double Origin { get; }

    /// <summary>The known weight at hatch, kg; 0 where it was free.</summary>
    public double HatchKilograms { get; }

    public double LogScale { get; }

    public double[] Coordinates { get; }

    /// <summary>Row by row, one row a free coordinate.</summary>
    public double[] Covariance { get; }

    public int Free => FreeCoordinates(Family.Shape, HatchKilograms);

    public static int FreeCoordinates(CurveShape shape, double hatchKilograms) => shape.Count + (hatchKilograms > 0 ? 0 : 1);

    /// <summary>
    /// Logarithms of the weights in kg, and d ln W / d free coordinate, column by column. False where the law gives no weight.
    /// </summary>
    public static bool LogWeights(
        CurveShape shape,
        ReadOnlySpan<double> q,
        double origin,
        double logScale,
        double hatchKilograms,
        ReadOnlySpan<double> ageDays,
        Span<double> logKilograms,
        Span<double> gradient)
    {
        int n = ageDays.Length;
        int first = hatchKilograms > 0 ? 0 : 1;
        Span<double> shapeColumns = gradient[(first * n)..];
        if (!shape.Evaluate(q, origin, ageDays, logKilograms, shapeColumns))
        {
            return false;
        }

        foreach (ref double log in logKilograms)
        {
            log += logScale;
        }

        if (hatchKilograms == 0)
        {
            gradient[..n].Fill(1);
            return true;
        }

        // The scale moves so that the weight at hatch stays.
        Span<double> atHatch = stackalloc double[1];
        Span<double> hatchGradient = stackalloc double[shape.Count];
        if (!shape.Evaluate(q, origin, [0.0], atHatch, hatchGradient))
        {
            return false;
        }

        for (int j = 0; j < shape.Count; j++)
        {
            foreach (ref double slope in shapeColumns.Slice(j * n, n))
            {
                slope -= hatchGradient[j];
            }
        }

        return true;
    }

    /// <summary>Weight in kg at an age and the standard error of its logarithm; null where the law gives no weight.</summary>
    public (double Kilograms, double RelativeError)? At(double days)
    {
        int free = Free;
        Span<double> log = stackalloc double[1];
        Span<double> gradient = stackalloc double[free];
        if (!LogWeights(Family.Shape, Coordinates, Origin, LogScale, HatchKilograms, [days], log, gradient))
        {
            return null;
        }

        return (Math.Exp(log[0]), Math.Sqrt(Math.Max(0, Form(gradient, gradient))));
    }

    /// <summary>The family's own parameters and their covariance, row by row.</summary>
    public (double[] Parameters, double[] Covariance) ToParameters()
    {
        int count = Family.Parameters.Count;
        int all = 1 + Family.Shape.Count;
        int free = Free;
        double[] parameters = new double[count];
        Span<double> jacobian = stackalloc double[count * all];
        Family.Shape.ToParameters(LogScale, Coordinates, Origin, parameters, jacobian);
        Span<double> rows = stackalloc double[count * free];
        Span<double> hatchGradient = stackalloc double[all - 1];
        if (HatchKilograms > 0)
        {
            Family.Shape.Evaluate(Coordinates, Origin, [0.0], stackalloc double[1], hatchGradient);
        }

        for (int p = 0; p < count; p++)
        {
            for (int j = 0; j < free; j++)
            {
                rows[(p * free) + j] = HatchKilograms > 0
                    ? jacobian[(p * all) + 1 + j] - (jacobian[p * all] * hatchGradient[j])
                    : jacobian[(p * all) + j];
            }
        }

        double[] covariance = new double[count * count];
        for (int p = 0; p < count; p++)
        {
            for (int r = 0; r < count; r++)
            {
                covariance[(p * count) + r] = Form(rows.Slice(p * free, free), rows.Slice(r * free, free));
            }
        }

        return (parameters, covariance);
    }

    private double Form(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        double sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            for (int j = 0; j < right.Length; j++)
            {
                sum += left[i] * Covariance[(i * right.Length) + j] * right[j];
            }
        }

        return sum;
    }
}
