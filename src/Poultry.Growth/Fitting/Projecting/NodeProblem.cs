using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// What one node must make least, as independent residuals of variance 1: the weigh-ins' distances from the curve, their shared discrepancy taken
/// out, and the three coordinates' from the prior's middle. The sum of their squares is r'C⁻¹r + δ'S⁻¹δ.
/// </summary>
internal readonly ref struct NodeProblem(double shape, NodePrior prior, ProjectionData data, ReadOnlySpan<double> noise) : ILeastSquaresProblem
{
    private readonly ReadOnlySpan<double> noise = noise;

    public int Residuals => data.Count + 3;

    public int Parameters => 3;

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        int m = data.Count;
        int rows = m + 3;
        NodeLaw law = new(shape, prior.IsOnWeights, parameters);
        for (int i = 0; i < m; i++)
        {
            if (!law.At(data.Days[i], out double log, out double bySecond, out double byThird))
            {
                return false;
            }

            residuals[i] = log - data.Logs[i];
            if (!jacobian.IsEmpty)
            {
                (jacobian[i], jacobian[rows + i], jacobian[(2 * rows) + i]) = (1, bySecond, byThird);
            }
        }

        Span<double> distance = residuals[m..];
        for (int i = 0; i < 3; i++)
        {
            distance[i] = parameters[i] - prior.Centre[i];
        }

        prior.Whiten(distance);
        Cholesky.SolveLower(noise, m, residuals[..m]);
        for (int j = 0; j < (jacobian.IsEmpty ? 0 : 3); j++)
        {
            Cholesky.SolveLower(noise, m, jacobian.Slice(j * rows, m));
            Span<double> column = jacobian.Slice((j * rows) + m, 3);
            column.Clear();
            column[j] = 1;
            prior.Whiten(column);
        }

        return true;
    }
}
