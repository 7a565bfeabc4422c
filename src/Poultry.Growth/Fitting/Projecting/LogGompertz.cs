namespace Poultry.Growth.Fitting;

/// <summary>
/// ln W = ln A - exp(-k (t - t*)) in (ln A, ln k, t*), the coordinates of a <see cref="GrowthPrior"/>: an error that is a share of the weight adds
/// on this scale. Its slopes are 1, k (t - t*) E and -k E, with E = exp(-k (t - t*)).
/// </summary>
internal readonly struct LogGompertz : IMixedCurve
{
    public int Coordinates => GrowthPrior.Parameters;

    public bool Evaluate(ReadOnlySpan<double> coordinates, ReadOnlySpan<double> ageDays, Span<double> values, Span<double> jacobian)
    {
        int n = ageDays.Length;
        double k = Math.Exp(coordinates[1]);
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double since = ageDays[i] - coordinates[2];
            double e = Math.Exp(-k * since);
            values[i] = coordinates[0] - e;
            jacobian[i] = 1;
            jacobian[n + i] = k * since * e;
            jacobian[(2 * n) + i] = -k * e;
            sound &= double.IsFinite(values[i]) && double.IsFinite(jacobian[n + i]) && double.IsFinite(jacobian[(2 * n) + i]);
        }

        return sound;
    }
}
