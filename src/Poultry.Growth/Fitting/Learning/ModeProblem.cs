using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The residuals whose sum of squares is least at the mode of a batch: (z - f(theta)) / sqrt(v) and u, where theta = mu + L u. In u every
/// population is the standard normal, so that a narrow one needs no inverse.
/// </summary>
internal ref struct ModeProblem<TCurve> : ILeastSquaresProblem
    where TCurve : struct, IMixedCurve
{
    private readonly MixedGroup group;
    private readonly MixedPopulation population;
    private readonly Span<double> coordinates;
    private readonly Span<double> slopes;
    private readonly Span<double> roots;
    private TCurve curve;

    public ModeProblem(TCurve curve, MixedGroup group, MixedPopulation population, scoped ref Span<double> workspace)
    {
        (this.curve, this.group, this.population) = (curve, group, population);
        coordinates = Workspace.Take(ref workspace, curve.Coordinates);
        slopes = Workspace.Take(ref workspace, curve.Coordinates * group.Count);
        roots = Workspace.Take(ref workspace, group.Count);
        for (int i = 0; i < roots.Length; i++)
        {
            roots[i] = 1 / Math.Sqrt(group.KnownVariances[i] + population.ErrorVariance);
        }
    }

    public readonly int Residuals => group.Count + Parameters;

    public readonly int Parameters => population.Random.Length;

    /// <summary>theta at the last point looked at.</summary>
    public readonly ReadOnlySpan<double> Coordinates => coordinates;

    /// <summary>d f / d theta there, column by column.</summary>
    public readonly ReadOnlySpan<double> Slopes => slopes;

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        int n = group.Count;
        int q = parameters.Length;
        ReadOnlySpan<double> factor = population.Factor;
        population.Mean.CopyTo(coordinates);
        for (int a = 0; a < q; a++)
        {
            for (int b = 0; b <= a; b++)
            {
                coordinates[population.Random[a]] += factor[(a * q) + b] * parameters[b];
            }
        }

        if (!curve.Evaluate(coordinates, group.AgeDays, residuals[..n], slopes))
        {
            return false;
        }

        for (int i = 0; i < n; i++)
        {
            residuals[i] = (group.Values[i] - residuals[i]) * roots[i];
        }

        parameters.CopyTo(residuals[n..]);
        if (jacobian.IsEmpty)
        {
            return true;
        }

        jacobian.Clear();
        for (int b = 0; b < q; b++)
        {
            Span<double> column = jacobian.Slice(b * (n + q), n + q);
            for (int a = b; a < q; a++)
            {
                double share = factor[(a * q) + b];
                ReadOnlySpan<double> slope = slopes.Slice(population.Random[a] * n, n);
                for (int i = 0; i < n; i++)
                {
                    column[i] -= share * roots[i] * slope[i];
                }
            }

            column[n + b] = 1;
        }

        return true;
    }
}
