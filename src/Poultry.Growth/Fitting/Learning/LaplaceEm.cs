namespace Poultry.Growth.Fitting;

/// <summary>
/// Learns a population from batches by expectation and maximisation, each batch seen in the tangent plane at its mode. Alternating modes with
/// maximum likelihood of the linearised model (M. J. Lindstrom, D. M. Bates 1990, Biometrics 46, 673-687) has the same fixed points; this needs no optimiser inside.
/// </summary>
/// <remarks>
/// With Z the columns of the coordinates that differ, V = (Z'H Z + S⁻¹)⁻¹, G = H - H Z V Z'H and K = V Z'H, a round is
/// <code>
/// C    = (B0⁻¹ + sum G)⁻¹
/// mu+  = C (B0⁻¹ m0 + sum (h - K'Z'h))
/// d    = V Z'(h - H mu+)
/// S+   = [nu0 W0 + sum (V + d d' + K C K')] / (nu0 + m)
/// tau²+ = [a0 tau0² + sum (s² (r² + j'V j) + tau² (1 - s))] / (a0 + N),   s = tau²/v
/// </code>
/// K C K' allows for mu being estimated too. Sums run in the order of the batches. One object serves one search.
/// </remarks>
internal sealed partial class LaplaceEm<TCurve>
    where TCurve : struct, IMixedCurve
{
    private readonly TCurve curve;
    private readonly LaplaceEmSettings settings;
    private readonly GroupMode[] modes;
    private readonly int p;
    private readonly int q;
    private readonly double[] meanCovariance;
    private readonly double[] sensitivities;
    private MixedPopulation population;

    private LaplaceEm(TCurve curve, IReadOnlyList<MixedGroup> groups, LaplaceEmSettings settings)
    {
        (this.curve, this.settings, population) = (curve, settings, settings.Start);
        (p, q) = (curve.Coordinates, population.Random.Length);
        modes = [.. groups.Select(group => new GroupMode(group, p, q))];
        meanCovariance = new double[p * p];
        sensitivities = new double[modes.Length * q * p];
    }

    /// <summary>Seeks the population of some batches; without any, what the settings draw it to.</summary>
    public static LaplaceEmResult Run(TCurve curve, IReadOnlyList<MixedGroup> groups, LaplaceEmSettings settings) =>
        new LaplaceEm<TCurve>(curve, groups, settings).Run();

    private LaplaceEmResult Run()
    {
        bool converged = false;
        int round = 0;
        double logLikelihood = double.NaN;
        while (!converged && round < settings.RoundLimit)
        {
            if (!SeekModes(again: round > 0) || !FindMean(out double[] mean)
                || MixedPopulation.Of(mean, SpreadAbout(mean), population.Random, NextErrorVariance()) is not { } next)
            {
                break;
            }

            round++;
            logLikelihood = LogLikelihood();
            converged = Change(population, next) < settings.Tolerance;
            population = next;
        }

        return new()
        {
            Converged = converged,
            Rounds = round,
            Population = population,
            MeanCovariance = meanCovariance,
            Modes = modes,
            LogLikelihood = logLikelihood,
        };
    }

    private bool SeekModes(bool again)
    {
        foreach (GroupMode mode in modes)
        {
            if (!mode.Seek(curve, population, again))
            {
                return false;
            }
        }

        return true;
    }

    private double LogLikelihood()
    {
        double sum = 0;
        foreach (GroupMode mode in modes)
        {
            sum -= 0.5 * (mode.Objective + mode.LogDeterminant + (mode.Group.Count * Math.Log(2 * Math.PI)));
        }

        return sum;
    }

    /// <summary>The largest change of mu in standard deviations (between batches, or of mu itself for what is equal in all), of ln sd and of ln tau.</summary>
    private double Change(MixedPopulation before, MixedPopulation after)
    {
        double change = before.ErrorVariance == after.ErrorVariance ? 0 : Math.Abs(Math.Log(after.ErrorVariance / before.ErrorVariance)) / 2;
        for (int j = 0; j < p; j++)
        {
            int a = Array.IndexOf(after.Random, j);
            double variance = a < 0 ? meanCovariance[(j * p) + j] : after.Spread[(a * q) + a];
            change = Math.Max(change, Math.Abs(after.Mean[j] - before.Mean[j]) / Math.Sqrt(variance));
            change = a < 0 ? change : Math.Max(change, Math.Abs(Math.Log(variance / before.Spread[(a * q) + a])) / 2);
        }

        return change;
    }
}
