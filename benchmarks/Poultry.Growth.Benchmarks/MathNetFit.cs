using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Poultry.Growth.Benchmarks;

/// <summary>The same Gompertz fit by MathNet's Levenberg-Marquardt with the analytic Jacobian.</summary>
internal static class MathNetFit
{
    private static readonly Vector<double> X = Vector<double>.Build.Dense(NinePoints.AgeDays);
    private static readonly Vector<double> Start = Vector<double>.Build.Dense(NinePoints.Start);

    public static NonlinearMinimizationResult Fit() => Fit(NinePoints.Kilograms);

    public static NonlinearMinimizationResult Fit(double[] kilograms)
    {
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(Weights, Slopes, X, Vector<double>.Build.Dense(kilograms));
        LevenbergMarquardtMinimizer minimizer = new(
            gradientTolerance: NinePoints.Tolerance, stepTolerance: NinePoints.Tolerance, functionTolerance: NinePoints.Tolerance);
        return minimizer.FindMinimum(model, Start);
    }

    private static Vector<double> Weights(Vector<double> p, Vector<double> x)
    {
        Vector<double> weights = Vector<double>.Build.Dense(x.Count);
        for (int i = 0; i < x.Count; i++)
        {
            weights[i] = p[0] * Math.Exp(-Math.Exp(-p[1] * (x[i] - p[2])));
        }

        return weights;
    }

    private static Matrix<double> Slopes(Vector<double> p, Vector<double> x)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(x.Count, 3);
        for (int i = 0; i < x.Count; i++)
        {
            double e = Math.Exp(-p[1] * (x[i] - p[2]));
            double share = Math.Exp(-e);
            slopes[i, 0] = share;
            slopes[i, 1] = p[0] * share * e * (x[i] - p[2]);
            slopes[i, 2] = -p[0] * share * e * p[1];
        }

        return slopes;
    }
}
