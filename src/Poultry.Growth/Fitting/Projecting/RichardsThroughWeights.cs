namespace Poultry.Growth.Fitting;

/// <summary>
/// The Richards curve of a known shape v through the weights at 14, 35 and 56 d, in the coordinates x = (ln W35, ln W35/W14, ln W56/W35). Growth since 35 d by Box and Cox's measure,
/// b = (1 - (W/W35)^-v)/v (ln W/W35 for v = 0), follows b(t) = d2 (exp(λ (t - 35)) - 1)/(exp(21 λ) - 1) with λ = ln(d2/d1)/21, d1 and d2 the growth from 14 and to 56 d: a curve with a mature weight
/// for λ below 0, and one without beyond. In these coordinates the two meet smoothly; in A, k and t* they lie at opposite ends of the numbers.
/// </summary>
internal readonly struct RichardsThroughWeights
{
    private const double StepDays = NodePrior.MiddleDays - NodePrior.FirstDays;

    /// <summary>For v below 0 a curve has no weight at early ages, for v above 0 a growing one none at late ages; so near that end, (W/W35)^-v = 0, it is not used.</summary>
    private const double LeastOpening = 0.001;

    /// <summary>Below this a difference of exponentials is taken from its series: exact to the last digits.</summary>
    private const double SmallExponent = 1e-4;

    private readonly double shape;
    private readonly double logMiddle;
    private readonly double late;
    private readonly double rate;
    private readonly double rateByEarly;
    private readonly double rateByLate;
    private readonly double lateByLog;

    /// <param name="shape">v.</param>
    /// <param name="x">ln W35, ln W35/W14, ln W56/W35.</param>
    public RichardsThroughWeights(double shape, ReadOnlySpan<double> x)
    {
        (this.shape, logMiddle) = (shape, x[0]);
        double early = x[1] * Growth(shape * x[1]);
        late = x[2] * Growth(-shape * x[2]);
        lateByLog = Math.Exp(-shape * x[2]);
        rate = Math.Log(late / early) / StepDays;
        rateByEarly = -Math.Exp(shape * x[1]) / (early * StepDays);
        rateByLate = lateByLog / (late * StepDays);
    }

    /// <summary>ln W at an age and its slopes by ln W35/W14 and ln W56/W35 (by ln W35 it is 1); false where the curve has no weight.</summary>
    public bool At(double days, out double log, out double byEarly, out double byLate)
    {
        double since = days - NodePrior.MiddleDays;
        double share = since / StepDays * Growth(rate * since) / Growth(rate * StepDays);
        double shareByRate = share * ((since * Slope(rate * since)) - (StepDays * Slope(rate * StepDays)));
        double growth = late * share;
        double opening = 1 - (shape * growth);
        log = logMiddle + (shape == 0 ? growth : -Math.Log(opening) / shape);
        byEarly = late * shareByRate * rateByEarly / opening;
        byLate = ((lateByLog * share) + (late * shareByRate * rateByLate)) / opening;
        return opening > LeastOpening && double.IsFinite(log);
    }

    /// <summary>-λ, above 0 where the curve has a mature weight, and its slopes by the three coordinates.</summary>
    public double DistanceToEndless(Span<double> slopes)
    {
        (slopes[0], slopes[1], slopes[2]) = (0, -rateByEarly, -rateByLate);
        return -rate;
    }

    /// <summary>For v below 0: ln W56/W35 of the curve that grows by the same measure before and after 35 d, which has a weight at every age that birds are weighed.</summary>
    public static double Steady(double shape, double early) => -Math.Log(2 - Math.Exp(shape * early)) / shape;

    /// <summary>(exp z - 1)/z.</summary>
    private static double Growth(double z) => Math.Abs(z) < SmallExponent ? 1 + (z / 2) + (z * z / 6) : (Math.Exp(z) - 1) / z;

    /// <summary>The slope of ln((exp z - 1)/z).</summary>
    private static double Slope(double z) => Math.Abs(z) < 0.01 ? 0.5 + (z / 12) - (z * z * z / 720) : (1 / (1 - Math.Exp(-z))) - (1 / z);
}
