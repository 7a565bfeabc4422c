using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>The recipe by which past batches make a prior, with the figures chosen for it; docs/studies/learning.md shows how well it does on simulated farms.</summary>
internal static class PriorLearning
{
    /// <summary>eps: the chance kept for the shipped prior, in case the next batch is none of the farm's kind. A test of the weigh-ins in its place finds fewer changes of strain.</summary>
    public const double FallbackShare = 0.10;

    /// <summary>nu0: how many batches the shipped spread counts as.</summary>
    public const double SpreadBatches = 4;

    /// <summary>tau0: error of a whole weigh-in where nothing is known.</summary>
    public const double WeighInError = ProjectionOptions.UsualWeighInError;

    /// <summary>a0: how many weigh-ins tau0 counts as.</summary>
    public const double ErrorWeighIns = 10;

    public const double Tolerance = 1e-4;

    public const int RoundLimit = 400;

    public static ModelInfo Method { get; } = new(
        "learning-past-batches",
        "Prior learned from past batches",
        "z = ln A - exp(-k (t - t*)) + e, (ln A, ln k, t*) ~ N(mu, S), mu ~ N(m0, B0), S drawn to W0, e ~ N(0, CV²/n + tau²)",
        [
            new ModelSymbol("z", "logarithm of a mean weight in kg", "-"),
            new ModelSymbol("t", "age", "d"),
            new ModelSymbol("A", "mature weight", "kg"),
            new ModelSymbol("k", "rate", "1/d"),
            new ModelSymbol("t*", "inflection age", "d"),
            new ModelSymbol("mu", "middle of the farm's batches: ln A, ln k, t*", "-"),
            new ModelSymbol("S", "covariance between batches of a farm; W0 counts as 4 batches", "-"),
            new ModelSymbol("m0", "mean of the shipped prior", "-"),
            new ModelSymbol("B0", "between farms: 80, 70, 80 % of the shipped variances", "-"),
            new ModelSymbol("W0", "between batches of a farm: 20, 30, 20 % of the shipped variances", "-"),
            new ModelSymbol("e", "error of a mean", "-"),
            new ModelSymbol("CV", "spread between birds, a fraction of the mean", "-"),
            new ModelSymbol("n", "birds weighed", "-"),
            new ModelSymbol("tau", "error of a whole weigh-in, learned; 0.02 counts as 10 weigh-ins", "-"),
        ],
        [
            new Citation("LindstromBates1990", "Lindstrom M.J., Bates D.M. 1990. Nonlinear mixed effects models for repeated measures data. Biometrics 46:673-687", HowKnown.Memory),
            new Citation("PinheiroBates2000", "Pinheiro J.C., Bates D.M. 2000. Mixed-effects models in S and S-PLUS. Springer", HowKnown.Memory),
            new Citation("OwnSimulation", "Own simulation of farms, docs/studies/learning.md; the figures of the recipe were chosen on it", HowKnown.Assumption),
        ],
        "Agrees with R's nlme where that is at an optimum. On simulated farms that follow the model its 90 % intervals cover 93 to 97 %; on real farms not tested.",
        HowKnown.Assumption);

    /// <summary>The part of the shipped variances that lies between batches of a farm: 0.09² of 0.20² and so on, rounded. When in doubt too wide: too narrow costs coverage.</summary>
    private static ReadOnlySpan<double> WithinFarm => [0.20, 0.30, 0.20];

    /// <summary>Splits a covariance P = L L' into that between farms, L (1 - s) L', and that between batches of a farm, L s L'.</summary>
    public static (double[] BetweenFarms, double[] BetweenBatches) Split(GrowthPrior shipped)
    {
        const int p = GrowthPrior.Parameters;
        double[] factor = shipped.Covariance.ToArray();
        Cholesky.Factor(factor, p);
        (double[] farms, double[] batches) = (new double[p * p], new double[p * p]);
        for (int i = 0; i < p; i++)
        {
            for (int j = 0; j < p; j++)
            {
                for (int c = 0; c <= Math.Min(i, j); c++)
                {
                    batches[(i * p) + j] += WithinFarm[c] * factor[(i * p) + c] * factor[(j * p) + c];
                }

                farms[(i * p) + j] = shipped.Covariance[(i * p) + j] - batches[(i * p) + j];
            }
        }

        return (farms, batches);
    }

    /// <summary>The farm's own mu, S and tau.</summary>
    public static LaplaceEmResult Run(IReadOnlyList<MixedGroup> batches, GrowthPrior shipped, int roundLimit = RoundLimit)
    {
        const int p = GrowthPrior.Parameters;
        (double[] farms, double[] spread) = Split(shipped);
        double[] precision = new double[p * p];
        SymmetricMatrix.Invert(farms, p, precision);
        return LaplaceEm<LogGompertz>.Run(default, batches, new()
        {
            Start = MixedPopulation.Of(shipped.Mean, spread, [0, 1, 2], WeighInError * WeighInError)!,
            Centre = shipped.Mean.ToArray(),
            CentrePrecision = precision,
            Spread = spread,
            SpreadBatches = SpreadBatches,
            ErrorVariance = WeighInError * WeighInError,
            ErrorWeighIns = ErrorWeighIns,
            AllowsForMean = true,
            Tolerance = Tolerance,
            RoundLimit = roundLimit,
        });
    }

    /// <summary>S + C: what is not known of the next batch.</summary>
    public static double[] NextBatch(LaplaceEmResult result)
    {
        const int p = GrowthPrior.Parameters;
        double[] sum = new double[p * p];
        for (int i = 0; i < p; i++)
        {
            for (int j = 0; j < p; j++)
            {
                (int here, int across) = ((i * p) + j, (j * p) + i);
                double twice = result.Population.Spread[here] + result.Population.Spread[across] + result.MeanCovariance[here] + result.MeanCovariance[across];
                sum[here] = twice / 2;
            }
        }

        return sum;
    }
}
