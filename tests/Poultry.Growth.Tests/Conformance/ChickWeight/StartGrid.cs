using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>The least sum of squares that the general solver finds in the family's own parameters from a grid of starts: another road to the same place.</summary>
internal static class StartGrid
{
    public static double LeastSum(WeighInSeries weighIns, CurveFamily family)
    {
        double[] ages = [.. weighIns.Select(weighIn => weighIn.Age.Days)];
        double[] grams = [.. weighIns.Select(weighIn => weighIn.MeanWeight.Grams)];
        double least = double.PositiveInfinity;
        foreach (double ratio in (double[])[1.05, 1.5, 2.5, 5, 20])
        {
            foreach (double rate in (double[])[0.02, 0.05, 0.1, 0.2, 0.4])
            {
                foreach (double inflection in (double[])[0, 8, 15, 25, 50])
                {
                    Problem problem = new(family, ages, grams);
                    double[] parameters = [ratio * grams.Max(), rate, inflection];
                    double[] workspace = new double[LeastSquares.WorkspaceLength(ages.Length, parameters.Length)];
                    LeastSquaresResult result = LeastSquares.Solve(ref problem, parameters, workspace, new LeastSquaresOptions { EvaluationLimit = 300 });
                    least = Math.Min(least, result.SumOfSquares);
                }
            }
        }

        return least;
    }

    private readonly struct Problem(CurveFamily family, double[] ages, double[] grams) : ILeastSquaresProblem
    {
        public int Residuals => ages.Length;

        public int Parameters => family.Parameters.Count;

        public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
        {
            bool sound = family.Evaluate(parameters, ages, residuals, jacobian);
            for (int i = 0; i < residuals.Length; i++)
            {
                residuals[i] -= grams[i];
            }

            return sound;
        }
    }
}
