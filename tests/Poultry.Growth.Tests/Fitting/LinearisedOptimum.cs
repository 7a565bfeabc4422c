using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>
/// The objective of learning, maximised directly: modes, then the restricted likelihood of the linearised model with its pseudo-counts over the six
/// elements of S by a simplex, then mu by least squares, then tau by a section search; until nothing moves. It shares with the library only the modes.
/// </summary>
internal sealed class LinearisedOptimum
{
    private readonly GrowthPrior shipped;
    private readonly Matrix<double> betweenFarms;
    private readonly Matrix<double> betweenBatches;
    private readonly GroupMode[] modes;
    private Vector<double> mean;
    private Matrix<double> spread;
    private double errorVariance;

    private LinearisedOptimum(IEnumerable<MixedGroup> groups, GrowthPrior shipped)
    {
        this.shipped = shipped;
        (double[] farms, double[] batches) = PriorLearning.Split(shipped);
        (betweenFarms, betweenBatches) = (Square(farms), Square(batches));
        modes = [.. groups.Select(group => new GroupMode(group, 3, 3))];
        (mean, spread, errorVariance) = (Vector<double>.Build.DenseOfEnumerable(shipped.Means), betweenBatches, 4e-4);
    }

    public static (double[] Mean, double[] Deviations, double WeighInError) Of(IEnumerable<MixedGroup> groups, GrowthPrior shipped)
    {
        LinearisedOptimum search = new(groups, shipped);
        for (int round = 0; round < 25; round++)
        {
            (Vector<double> before, Matrix<double> spreadBefore) = (search.mean, search.spread);
            search.Round(round > 0);
            double moved = (search.mean - before).PointwiseDivide(search.spread.Diagonal().PointwiseSqrt()).AbsoluteMaximum();
            double widened = (search.spread.Diagonal().PointwiseDivide(spreadBefore.Diagonal()) - 1).AbsoluteMaximum();
            if (Math.Max(moved, widened) < 1e-5)
            {
                return ([.. search.mean], [.. search.spread.Diagonal().PointwiseSqrt()], Math.Sqrt(search.errorVariance));
            }
        }

        throw new InvalidOperationException("The direct search does not settle.");
    }

    private void Round(bool again)
    {
        MixedPopulation population = MixedPopulation.Of(mean.AsArray(), spread.ToRowMajorArray(), [0, 1, 2], errorVariance)!;
        foreach (GroupMode mode in modes)
        {
            mode.Seek(default(LogGompertz), population, again).Should().BeTrue();
        }

        Matrix<double> factor = spread.Cholesky().Factor;
        MinimizationResult best = new NelderMeadSimplex(1e-11, 4000).FindMinimum(
            ObjectiveFunction.Value(x => Restricted(Spread(x, factor)).Objective), Vector<double>.Build.Dense(6), Vector<double>.Build.Dense(6, 0.2));
        spread = Spread(best.MinimizingPoint, factor);
        mean = Restricted(spread).Mean;
        errorVariance = Math.Exp(GoldenSection(log => Plain(Math.Exp(log)), Math.Log(1e-6), Math.Log(1e-2)));
    }

    /// <summary>S = F F' with F = L0 (I + X), the diagonal of I + X as an exponential.</summary>
    private static Matrix<double> Spread(Vector<double> x, Matrix<double> factor)
    {
        Matrix<double> inner = Square([Math.Exp(x[0]), 0, 0, x[3], Math.Exp(x[1]), 0, x[4], x[5], Math.Exp(x[2])]);
        Matrix<double> product = factor * inner;
        return product * product.Transpose();
    }

    /// <summary>Minus the restricted log-likelihood with 4 pseudo-batches, mu integrated over its own prior.</summary>
    private (double Objective, Vector<double> Mean) Restricted(Matrix<double> s)
    {
        Matrix<double> precision = betweenFarms.Inverse();
        Vector<double> centre = Vector<double>.Build.DenseOfEnumerable(shipped.Means);
        Vector<double> right = precision * centre;
        double objective = PriorLearning.SpreadBatches * (Math.Log(s.Determinant()) + (s.Inverse() * betweenBatches).Trace());
        objective += centre * precision * centre;
        foreach (GroupMode mode in modes)
        {
            (Matrix<double> j, Vector<double> w) = Tangent(mode);
            Matrix<double> omega = (j * s * j.Transpose()) + Errors(mode, errorVariance);
            Matrix<double> inverse = omega.Inverse();
            objective += Math.Log(omega.Determinant()) + (w * inverse * w);
            precision += j.Transpose() * inverse * j;
            right += j.Transpose() * inverse * w;
        }

        Vector<double> mu = precision.Solve(right);
        return (objective + Math.Log(precision.Determinant()) - (right * mu), mu);
    }

    /// <summary>Minus the log-likelihood at mu with 10 pseudo-weigh-ins, as a function of tau².</summary>
    private double Plain(double variance)
    {
        double objective = PriorLearning.ErrorWeighIns * (Math.Log(variance) + (PriorLearning.WeighInError * PriorLearning.WeighInError / variance));
        foreach (GroupMode mode in modes)
        {
            (Matrix<double> j, Vector<double> w) = Tangent(mode);
            Matrix<double> omega = (j * spread * j.Transpose()) + Errors(mode, variance);
            Vector<double> rest = w - (j * mean);
            objective += Math.Log(omega.Determinant()) + (rest * omega.Solve(rest));
        }

        return objective;
    }

    private static (Matrix<double> Slopes, Vector<double> Values) Tangent(GroupMode mode)
    {
        Matrix<double> j = Matrix<double>.Build.DenseOfColumnMajor(mode.Group.Count, 3, mode.Slopes);
        return (j, Vector<double>.Build.DenseOfArray(mode.Residuals) + (j * Vector<double>.Build.DenseOfArray(mode.Coordinates)));
    }

    private static Matrix<double> Errors(GroupMode mode, double variance) =>
        Matrix<double>.Build.DenseOfDiagonalArray([.. mode.Group.KnownVariances.ToArray().Select(known => known + variance)]);

    private static Matrix<double> Square(double[] rows) => Matrix<double>.Build.DenseOfRowMajor(3, 3, rows);

    private static double GoldenSection(Func<double, double> function, double low, double high)
    {
        double share = (Math.Sqrt(5) - 1) / 2;
        while (high - low > 1e-7)
        {
            (double left, double right) = (high - (share * (high - low)), low + (share * (high - low)));
            (low, high) = function(left) < function(right) ? (low, right) : (left, high);
        }

        return (low + high) / 2;
    }
}
