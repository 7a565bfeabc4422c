using Poultry.Growth.Flock;

namespace Poultry.Growth.Planning;

/// <summary>The farm's own level a and spread s of losses on a grid, weighed by what its batches lost: every integral a sum in fixed order.</summary>
internal sealed class SurvivalGrid
{
    private const int Levels = 41, Spreads = 11, Logs = 161, Shares = 16;

    /// <summary>How far the grids go: of a in its deviations, of ln s in its own, of ln z in shipped spreads.</summary>
    private const double LevelReach = 4.5, SpreadReach = 3, LogReach = 4 / 0.45;

    private readonly double[] weights = new double[Levels * Spreads];

    /// <summary>For each cell the law of ln z, which adds up to 1.</summary>
    private readonly double[] kernel = new double[Levels * Spreads * Logs];
    private readonly double levelDeviation, logSpreadMiddle, logReach;
    private readonly LargeLoss large;

    /// <param name="shippedSpread">Standard deviation of ln z between batches of any farm, above 0.</param>
    /// <param name="large">Rare large losses: a batch may have had one, and teaches the less of the rest.</param>
    public SurvivalGrid(double shippedSpread, LargeLoss large)
    {
        this.large = large;
        double within = shippedSpread * Math.Sqrt(LearnedSurvival.WithinFarm);
        logReach = LogReach * shippedSpread;
        levelDeviation = shippedSpread * Math.Sqrt(1 - LearnedSurvival.WithinFarm);

        // So that E[s^2] is what is shipped.
        logSpreadMiddle = Math.Log(within) - (LearnedSurvival.LogSpreadDeviation * LearnedSurvival.LogSpreadDeviation);
        for (int cell = 0; cell < weights.Length; cell++)
        {
            double a = Level(cell) / levelDeviation, s = (Math.Log(Spread(cell)) - logSpreadMiddle) / LearnedSurvival.LogSpreadDeviation;
            weights[cell] = Math.Exp(-((a * a) + (s * s)) / 2);
            Fill(kernel.AsSpan(cell * Logs, Logs), Level(cell), Spread(cell));
        }
    }

    /// <summary>Multiplies each cell by the chance of what a batch lost.</summary>
    /// <returns>The chance that the batch had a large loss.</returns>
    public double Weigh(PastLosses batch, Survival shipped)
    {
        double hazard = -Math.Log(shipped.ShareAliveInBatch(batch.From, batch.To, 0).Fraction);
        double[] usual = new double[Logs], struck = new double[Logs];
        for (int i = 0; i < Logs; i++)
        {
            double alive = Math.Exp(-hazard * Math.Exp(Log(i)));
            usual[i] = LogChance(batch, alive);
            struck[i] = LogChanceStruck(batch, alive);
        }

        double highest = Math.Max(usual.Max(), struck.Max());
        for (int i = 0; i < Logs; i++)
        {
            (usual[i], struck[i]) = (Math.Exp(usual[i] - highest), Math.Exp(struck[i] - highest));
        }

        (double all, double withLarge) = (0, 0);
        double chance = large.Chance.Fraction;
        for (int cell = 0; cell < weights.Length; cell++)
        {
            ReadOnlySpan<double> law = kernel.AsSpan(cell * Logs, Logs);
            (double sum, double sumStruck) = (0, 0);
            for (int i = 0; i < Logs; i++)
            {
                sum += law[i] * usual[i];
                sumStruck += law[i] * struck[i];
            }

            double without = (1 - chance) * sum, with = chance * sumStruck;
            all += weights[cell] * (without + with);
            withLarge += weights[cell] * with;
            weights[cell] *= without + with;
        }

        Normalise(all);
        return all > 0 ? withLarge / all : 0;
    }

    /// <summary>E[a], and Var[a] + E[s^2]: the next batch's ln z as a normal law.</summary>
    public (double Mean, double Variance) Next()
    {
        (double sum, double mean, double squares, double spread) = (0, 0, 0, 0);
        for (int cell = 0; cell < weights.Length; cell++)
        {
            sum += weights[cell];
            mean += weights[cell] * Level(cell);
            squares += weights[cell] * Level(cell) * Level(cell);
            spread += weights[cell] * Spread(cell) * Spread(cell);
        }

        mean /= sum;
        return (mean, (squares / sum) - (mean * mean) + (spread / sum));
    }

    private void Fill(Span<double> law, double a, double s)
    {
        double sum = 0;
        for (int i = 0; i < Logs; i++)
        {
            double standard = (Log(i) - a) / s;
            law[i] = Math.Exp(-standard * standard / 2);
            sum += law[i];
        }

        for (int i = 0; i < Logs; i++)
        {
            law[i] /= sum;
        }
    }

    private double Log(int i) => logReach * ((2.0 * i / (Logs - 1)) - 1);

    /// <summary>x ln(1 - v) + (n - x) ln v; the number of ways is the same for every cell and left out.</summary>
    private static double LogChance(PastLosses batch, double alive)
    {
        double lost = Math.Max(1e-300, 1 - alive);
        return (batch.Lost * Math.Log(lost)) + ((batch.Placed - batch.Lost) * Math.Log(Math.Max(1e-300, alive)));
    }

    /// <summary>The same where a large loss took a share besides: the mean over its triangular law, in logarithms.</summary>
    private double LogChanceStruck(PastLosses batch, double alive)
    {
        Span<double> logs = stackalloc double[Shares];
        double highest = double.NegativeInfinity;
        for (int i = 0; i < Shares; i++)
        {
            logs[i] = LogChance(batch, alive * (1 - Triangular.Quantile(large.Share, (i + 0.5) / Shares)));
            highest = Math.Max(highest, logs[i]);
        }

        double sum = 0;
        for (int i = 0; i < Shares; i++)
        {
            sum += Math.Exp(logs[i] - highest);
        }

        return highest + Math.Log(sum / Shares);
    }

    private double Level(int cell) => levelDeviation * LevelReach * ((2.0 * (cell / Spreads) / (Levels - 1)) - 1);

    private double Spread(int cell) => Math.Exp(logSpreadMiddle + (LearnedSurvival.LogSpreadDeviation * SpreadReach * ((2.0 * (cell % Spreads) / (Spreads - 1)) - 1)));

    private void Normalise(double all)
    {
        for (int cell = 0; all > 0 && cell < weights.Length; cell++)
        {
            weights[cell] /= all;
        }
    }
}
