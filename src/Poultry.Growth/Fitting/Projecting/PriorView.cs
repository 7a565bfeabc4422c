using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>A batch seen under a prior by Laplace's method: its likely curve, how sure that is, and how well the prior foresaw the weigh-ins.</summary>
internal sealed class PriorView
{
    private readonly GroupMode mode;

    private PriorView(GroupMode mode, double knownLogDeterminant) => (this.mode, LogEvidence) = (mode, -0.5 * (mode.Objective + mode.LogDeterminant - knownLogDeterminant));

    /// <summary>-½ [sum r²/v + d'P⁻¹d + ln |P| + ln |H + P⁻¹|]: 0 without weigh-ins, and comparable between priors of the same weigh-ins.</summary>
    public double LogEvidence { get; }

    /// <summary>The batch under a prior, without regard to the wider one behind it.</summary>
    /// <param name="batch">Logarithms of mean weights; may be empty.</param>
    /// <param name="prior">What is known beforehand.</param>
    /// <param name="weighInError">Error of a whole weigh-in as a fraction.</param>
    /// <returns>Null where no mode is found.</returns>
    public static PriorView? Of(MixedGroup batch, GrowthPrior prior, double weighInError)
    {
        MixedPopulation population = MixedPopulation.Of(prior.Mean, prior.Covariance, [0, 1, 2], weighInError * weighInError)!;
        GroupMode mode = new(batch, GrowthPrior.Parameters, GrowthPrior.Parameters);
        if (!mode.Seek(default(LogGompertz), population, again: false))
        {
            return null;
        }

        double known = 0;
        foreach (double variance in batch.KnownVariances)
        {
            known += Math.Log(variance + population.ErrorVariance);
        }

        return new(mode, known);
    }

    /// <summary>Mean and standard deviation of ln W at an age.</summary>
    public (double Mean, double Deviation) LogKilogramsAt(double days)
    {
        Span<double> slopes = stackalloc double[GrowthPrior.Parameters];
        Span<double> log = stackalloc double[1];
        default(LogGompertz).Evaluate(mode.Coordinates, [days], log, slopes);
        return (log[0], Math.Sqrt(SymmetricMatrix.Form(mode.Covariance, slopes)));
    }
}
