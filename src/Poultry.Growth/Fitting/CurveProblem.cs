using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>The weighted slopes of a fitted curve by its free coordinates: what the covariance of a fit is made of. Its residuals are not used.</summary>
internal readonly ref struct CurveProblem : ILeastSquaresProblem
{
    private readonly FitData data;
    private readonly CurveShape shape;
    private readonly ShapePoint point;
    private readonly ReadOnlySpan<double> q;
    private readonly double hatchKilograms;

    public CurveProblem(in FitData data, CurveShape shape, in ShapePoint point, ReadOnlySpan<double> q, double hatchKilograms)
    {
        this.data = data;
        (this.shape, this.point, this.hatchKilograms) = (shape, point, hatchKilograms);
        this.q = q;
    }

    public int Residuals => data.Count;

    public int Parameters => FittedShape.FreeCoordinates(shape, hatchKilograms);

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        int n = data.Count;
        if (!FittedShape.LogWeights(shape, q, data.Origin, point.LogScale, hatchKilograms, data.AgeDays, residuals, jacobian))
        {
            return false;
        }

        for (int i = 0; i < n; i++)
        {
            double root = Math.Sqrt(data.Weights[i]) * (data.Scale == ResidualScale.Kilograms ? Math.Exp(residuals[i]) : 1);
            residuals[i] = 0;
            for (int j = 0; j < jacobian.Length / n; j++)
            {
                jacobian[(j * n) + i] *= root;
            }
        }

        return true;
    }
}
