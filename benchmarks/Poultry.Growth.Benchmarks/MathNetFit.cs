using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Poultry.Growth.Benchmarks;

/// <summary>The same Gompertz fit by MathNet's Levenberg-Marquardt with the analytic Jacobian.</summary>
internal static class MathNetFit
{
    private static readonly Vector<double> X = Vector<double>.Build.Dense(NinePoints.AgeDays);
    private static readonly Vector<double> Start = Vector<double>.Build.Dense(NinePoints.Start);

    /// <summary>To MathNet's own tolerance, 1e-18: it goes on until nothing moves.</summary>
    public static NonlinearMinimizationResult Fit(double[] kilograms) => Fit(new LevenbergMarquardtMinimizer(), kilograms);

    /// <summary>To the kernel's tolerance, at which MathNet stops further from the minimum than the kernel.</summary>
    public static NonlinearMinimizationResult FitToTolerance(double[] kilograms) => Fit(
        new LevenbergMarquardtMinimizer(gradientTolerance: NinePoints.Tolerance, stepTolerance: NinePoints.Tolerance, functionTolerance: NinePoints.Tolerance), kilograms);

    private static NonlinearMinimizationResult Fit(LevenbergMarquardtMinimizer minimizer, double[] kilograms) =>
        minimizer.FindMinimum(ObjectiveFunction.NonlinearModel(Weights, Slopes, X, Vector<double>.Build.Dense(kilograms)), Start);

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
