using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <content>The tangent plane at the mode.</content>
internal sealed partial class GroupMode
{
    /// <summary>Writes down what is to be known at the mode; false where the curve has no value there.</summary>
    private bool Describe<TCurve>(TCurve curve, MixedPopulation population)
        where TCurve : struct, IMixedCurve
    {
        Span<double> room = workspace;
        ModeProblem<TCurve> problem = new(curve, Group, population, ref room);
        int n = Group.Count;
        Span<double> residuals = room[..problem.Residuals];
        if (!problem.Evaluate(point, residuals, default))
        {
            return false;
        }

        problem.Coordinates.CopyTo(Coordinates);
        problem.Slopes.CopyTo(Slopes);
        Objective = Householder.Squares(residuals);
        LogDeterminant = 0;
        for (int i = 0; i < n; i++)
        {
            double variance = Group.KnownVariances[i] + population.ErrorVariance;
            LogDeterminant += Math.Log(variance);
            Residuals[i] = residuals[i] * Math.Sqrt(variance);
        }

        Gather(population.ErrorVariance);
        return Invert(population);
    }

    /// <summary>H and h from J, r and v.</summary>
    private void Gather(double errorVariance)
    {
        int n = Group.Count;
        int p = Coordinates.Length;
        Array.Clear(Information);
        Array.Clear(Score);
        for (int i = 0; i < n; i++)
        {
            double weight = 1 / (Group.KnownVariances[i] + errorVariance);
            for (int a = 0; a < p; a++)
            {
                double weighted = weight * Slopes[(a * n) + i];
                Score[a] += weighted * Residuals[i];
                for (int b = 0; b < p; b++)
                {
                    double product = weighted * Slopes[(b * n) + i];
                    Information[(a * p) + b] += product;
                    Score[a] += product * Coordinates[b];
                }
            }
        }
    }

    /// <summary>V = L (I + L'H L)⁻¹ L', with S = L L'.</summary>
    private bool Invert(MixedPopulation population)
    {
        int p = Coordinates.Length;
        int q = point.Length;
        ReadOnlySpan<double> factor = population.Factor;
        Span<double> inner = stackalloc double[256];
        inner = inner[..(q * q)];
        inner.Clear();
        for (int a = 0; a < q; a++)
        {
            for (int b = 0; b < q; b++)
            {
                double known = Information[(population.Random[a] * p) + population.Random[b]];
                for (int c = 0; c <= a; c++)
                {
                    for (int d = 0; d <= b; d++)
                    {
                        inner[(c * q) + d] += factor[(a * q) + c] * known * factor[(b * q) + d];
                    }
                }
            }
        }

        for (int a = 0; a < q; a++)
        {
            inner[(a * q) + a] += 1;
        }

        if (!Cholesky.Factor(inner, q))
        {
            return false;
        }

        LogDeterminant += Cholesky.LogDeterminant(inner, q);
        Span<double> rows = stackalloc double[256];
        rows = rows[..(q * q)];
        factor.CopyTo(rows);
        for (int a = 0; a < q; a++)
        {
            Cholesky.SolveLower(inner, q, rows.Slice(a * q, q));
        }

        for (int a = 0; a < q; a++)
        {
            for (int b = 0; b < q; b++)
            {
                double sum = 0;
                for (int c = 0; c < q; c++)
                {
                    sum += rows[(a * q) + c] * rows[(b * q) + c];
                }

                Covariance[(a * q) + b] = sum;
            }
        }

        return true;
    }
}
