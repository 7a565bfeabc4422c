using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>
/// A batch's weigh-ins as a projection sees them: one entry an age, the logarithm of the mean in kg and the variance of its error. Weigh-ins of one
/// age share the curve, so that their weighted mean says all that they say about it.
/// </summary>
internal sealed class ProjectionData
{
    /// <summary>Younger chicks are not used: no curve of the recipe follows the first days (a Gompertz through a whole life is 60 % too heavy at hatch), and it was measured from 7 d on.</summary>
    public const double YoungestDays = 7;

    public ProjectionData(WeighInSeries? weighIns, FlockSpread spread, double weighInError)
    {
        List<(double Days, double Log, double Variance)> entries = [];
        foreach (WeighIn weighIn in weighIns ?? Enumerable.Empty<WeighIn>())
        {
            if (weighIn.AgeDays < YoungestDays)
            {
                TooYoung++;
                continue;
            }

            double variance = Variance(spread, weighIn.Sex, weighIn.AgeDays, weighIn.BirdsWeighed, weighInError);
            Add(entries, weighIn.AgeDays, spread.LogCurve(weighIn), variance);
        }

        (Days, Logs, Variances) = ([.. entries.Select(e => e.Days)], [.. entries.Select(e => e.Log)], [.. entries.Select(e => e.Variance)]);
    }

    /// <summary>Ages, d, rising.</summary>
    public double[] Days { get; }

    /// <summary>Logarithms of the means in kg.</summary>
    public double[] Logs { get; }

    /// <summary>Variances of their errors.</summary>
    public double[] Variances { get; }

    public int Count => Days.Length;

    /// <summary>How many weigh-ins were left out as too young.</summary>
    public int TooYoung { get; }

    /// <summary>Variance of the logarithm of a mean of so many birds about the flock's: birds, and the whole weigh-in.</summary>
    public static double Variance(FlockSpread spread, Sex caught, double days, int birds, double weighInError) =>
        (spread.Squared(caught, days) / birds) + (weighInError * weighInError);

    private static void Add(List<(double Days, double Log, double Variance)> entries, double days, double log, double variance)
    {
        if (entries.Count == 0 || entries[^1].Days != days)
        {
            entries.Add((days, log, variance));
            return;
        }

        (_, double other, double otherVariance) = entries[^1];
        double sum = variance + otherVariance;
        entries[^1] = (days, ((log * otherVariance) + (other * variance)) / sum, variance * otherVariance / sum);
    }
}
