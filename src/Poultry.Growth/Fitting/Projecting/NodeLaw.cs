namespace Poultry.Growth.Fitting;

/// <summary>The curve of a node: ln W = ln A - ln(1 + v e)/v, e = exp(-k (t - t*)), a Richards curve of known shape v; ln A - e for v = 0.</summary>
internal readonly struct NodeLaw
{
    /// <summary>For v below 0 a curve has no weight at early ages; so near that end it is not used.</summary>
    private const double LeastOpening = 0.001;

    private readonly double shape;
    private readonly double logMature;
    private readonly double rate;
    private readonly double inflectionDays;

    /// <param name="shape">v.</param>
    /// <param name="theta">ln A, ln k, t*.</param>
    public NodeLaw(double shape, ReadOnlySpan<double> theta) =>
        (this.shape, logMature, rate, inflectionDays) = (shape, theta[0], Math.Exp(theta[1]), theta[2]);

    /// <summary>ln W at an age and its slopes by ln k and t* (by ln A it is 1); false where the curve has no weight.</summary>
    public bool At(double days, out double log, out double byLogRate, out double byInflection)
    {
        double e = Math.Exp(-rate * (days - inflectionDays));
        double opening = 1 + (shape * e);
        log = shape == 0 ? logMature - e : logMature - (Math.Log(opening) / shape);
        byInflection = -rate * e / opening;
        byLogRate = (inflectionDays - days) * byInflection;
        return opening > LeastOpening && double.IsFinite(log);
    }
}
