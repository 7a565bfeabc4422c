using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>A data set with the model that belongs to it.</summary>
internal sealed class NistProblem<TModel>(string name) : NistProblem(name)
    where TModel : struct, INistModel
{
    public override NistFit Fit(int start, LeastSquaresOptions options)
    {
        NistResiduals<TModel> problem = new(Responses, Predictors);
        int count = problem.Parameters;
        double[] workspace = new double[LeastSquares.WorkspaceLength(problem.Residuals, count)];
        double[] parameters = [.. Starts[start - 1]];
        LeastSquaresResult result = LeastSquares.Solve(ref problem, parameters, workspace, options);
        double[] covariance = new double[count * count];
        bool determined = LeastSquares.Covariance(ref problem, parameters, covariance, workspace, out _);
        double variance = result.SumOfSquares / DegreesOfFreedom;
        return new NistFit
        {
            Result = result,
            ParameterDigits = Digits(parameters, Certified),
            StandardErrorDigits = determined
                ? Digits(Enumerable.Range(0, count).Select(j => Math.Sqrt(variance * covariance[j * (count + 1)])), CertifiedErrors)
                : 0,
        };
    }

    public override double JacobianError()
    {
        NistResiduals<TModel> problem = new(Responses, Predictors);
        int rows = problem.Residuals;
        double[] jacobian = new double[rows * problem.Parameters];
        double[] above = new double[rows];
        double[] below = new double[rows];
        problem.Evaluate(Certified, above, jacobian);
        double worst = 0;
        for (int j = 0; j < problem.Parameters; j++)
        {
            double[] point = [.. Certified];
            double step = 6e-6 * Math.Abs(Certified[j]);
            point[j] = Certified[j] + step;
            problem.Evaluate(point, above, default);
            point[j] = Certified[j] - step;
            problem.Evaluate(point, below, default);
            double[] column = jacobian[(j * rows)..((j + 1) * rows)];
            double largest = column.Max(Math.Abs);
            worst = Math.Max(worst, column.Select((exact, i) => Math.Abs(exact - ((above[i] - below[i]) / (2 * step))) / largest).Max());
        }

        return worst;
    }

    /// <summary>The least number of digits in agreement, -log10(|x - c| / |c|), 11 where NIST's eleven agree.</summary>
    private static double Digits(IEnumerable<double> values, IEnumerable<double> certified) =>
        values.Zip(certified, (value, exact) => Math.Min(11, -Math.Log10(Math.Abs(value - exact) / Math.Abs(exact)))).Min();
}
