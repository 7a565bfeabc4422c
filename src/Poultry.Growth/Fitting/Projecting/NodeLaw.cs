namespace Poultry.Growth.Fitting;

/// <summary>The curve of a node in the coordinates of its prior: a Gompertz curve in ln A, ln k and t*, or a Richards curve through three weights.</summary>
internal readonly struct NodeLaw
{
    private readonly bool isOnWeights;
    private readonly RichardsThroughWeights richards;
    private readonly double logMature;
    private readonly double rate;
    private readonly double inflectionDays;

    /// <param name="shape">v; 0 where the coordinates are ln A, ln k and t*.</param>
    /// <param name="isOnWeights">Whether the coordinates are three weights.</param>
    /// <param name="coordinates">The three.</param>
    public NodeLaw(double shape, bool isOnWeights, ReadOnlySpan<double> coordinates)
    {
        this.isOnWeights = isOnWeights;
        if (isOnWeights)
        {
            richards = new(shape, coordinates);
        }
        else
        {
            (logMature, rate, inflectionDays) = (coordinates[0], Math.Exp(coordinates[1]), coordinates[2]);
        }
    }

    /// <summary>ln W at an age and its slopes by the second and the third coordinate (by the first it is 1); false where the curve has no weight.</summary>
    public bool At(double days, out double log, out double bySecond, out double byThird)
    {
        if (isOnWeights)
        {
            return richards.At(days, out log, out bySecond, out byThird);
        }

        // ln W = ln A - E, E = exp(-k (t - t*)).
        double e = Math.Exp(-rate * (days - inflectionDays));
        log = logMature - e;
        byThird = -rate * e;
        bySecond = (inflectionDays - days) * byThird;
        return double.IsFinite(log);
    }
}
