using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// What one node must make least, as independent residuals of variance 1: the weigh-ins' distances from the curve, their shared discrepancy taken
/// out, and the prior's three coordinates. The sum of their squares is r'C⁻¹r + δ'S⁻¹δ.
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
        NodeLaw law = new(shape, parameters);
        for (int i = 0; i < m; i++)
        {
            if (!law.At(data.Days[i], out double log, out double byLogRate, out double byInflection))
            {
                return false;
            }

            residuals[i] = log - data.Logs[i];
            if (!jacobian.IsEmpty)
            {
                (jacobian[i], jacobian[rows + i], jacobian[(2 * rows) + i]) = (1, byLogRate, byInflection);
            }
        }

        Span<double> distance = residuals[m..];
        Span<double> slopes = stackalloc double[9];
        if (!Coordinates(law, parameters, distance, slopes))
        {
            return false;
        }

        for (int i = 0; i < 3; i++)
        {
            distance[i] -= prior.Centre[i];
        }

        prior.Whiten(distance);
        Cholesky.SolveLower(noise, m, residuals[..m]);
        for (int j = 0; j < (jacobian.IsEmpty ? 0 : 3); j++)
        {
            Cholesky.SolveLower(noise, m, jacobian.Slice(j * rows, m));
            Span<double> column = jacobian.Slice((j * rows) + m, 3);
            slopes.Slice(3 * j, 3).CopyTo(column);
            prior.Whiten(column);
        }

        return true;
    }

    /// <summary>ln |det Jp|, Jp the slopes of the prior's coordinates by the parameters: what turns a density of weights into one of parameters. 0 where they are the parameters.</summary>
    public double LogVolume(ReadOnlySpan<double> parameters)
    {
        Span<double> x = stackalloc double[3];
        Span<double> s = stackalloc double[9];
        Coordinates(new NodeLaw(shape, parameters), parameters, x, s);
        double determinant = (s[0] * ((s[4] * s[8]) - (s[5] * s[7]))) - (s[3] * ((s[1] * s[8]) - (s[2] * s[7]))) + (s[6] * ((s[1] * s[5]) - (s[2] * s[4])));
        return Math.Log(Math.Abs(determinant));
    }

    /// <summary>The prior's coordinates, and their slopes parameter by parameter.</summary>
    private bool Coordinates(in NodeLaw law, ReadOnlySpan<double> parameters, Span<double> x, Span<double> slopes)
    {
        slopes.Clear();
        if (!prior.IsOnWeights)
        {
            parameters.CopyTo(x);
            (slopes[0], slopes[4], slopes[8]) = (1, 1, 1);
            return true;
        }

        bool sound = law.At(NodePrior.FirstDays, out double first, out double firstByRate, out double firstByInflection);
        sound &= law.At(NodePrior.MiddleDays, out double middle, out double middleByRate, out double middleByInflection);
        sound &= law.At(NodePrior.LastDays, out double last, out double lastByRate, out double lastByInflection);
        (x[0], x[1], x[2]) = (middle, middle - first, last - middle);
        slopes[0] = 1;
        (slopes[3], slopes[4], slopes[5]) = (middleByRate, middleByRate - firstByRate, lastByRate - middleByRate);
        (slopes[6], slopes[7], slopes[8]) = (middleByInflection, middleByInflection - firstByInflection, lastByInflection - middleByInflection);
        return sound;
    }
}
