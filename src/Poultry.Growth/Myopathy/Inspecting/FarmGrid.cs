using Poultry.Growth.Numerics;

namespace Poultry.Growth.Myopathy;

/// <summary>The farm's level a and spread s on a grid, weighed by what was found: every integral a sum in fixed order.</summary>
internal sealed class FarmGrid
{
    private const int Levels = FarmKernel.Levels, Spreads = FarmKernel.Spreads, Logits = FarmKernel.Logits;

    /// <summary>Where more cases than this are found, the likelihood is too narrow for the grid of logits and gets its own.</summary>
    private const int ManyCases = 45;

    private readonly double[] logWeights = new double[Levels * Spreads];
    private readonly FarmKernel kernel = FarmKernel.Shared;
    private readonly LogitDensity level;
    private readonly LogitDensity spread;

    private FarmGrid(IReadOnlyList<LesionInspection> inspections)
    {
        for (int cell = 0; cell < logWeights.Length; cell++)
        {
            logWeights[cell] = FarmKernel.LogPrior(cell);
        }

        foreach (LesionInspection inspection in inspections)
        {
            Weigh(inspection);
        }

        double highest = logWeights.Max();
        for (int cell = 0; cell < logWeights.Length; cell++)
        {
            logWeights[cell] -= highest;
        }

        level = Smooth(FarmKernel.LevelMean, FarmKernel.LevelReach, Marginal(Levels, (at, other) => (at * Spreads) + other, Spreads));
        spread = Smooth(FarmKernel.LogSpreadMiddle, FarmKernel.LogSpreadReach, Marginal(Spreads, (at, other) => (other * Spreads) + at, Levels));
        Next = NextOf();
    }

    /// <summary>The density of the logit of the next batch.</summary>
    public LogitDensity Next { get; }

    public static FarmGrid Of(IReadOnlyList<LesionInspection> inspections) => new(inspections);

    /// <summary>The share that is the level, not exceeded with a probability.</summary>
    public double LevelQuantile(double probability) => LogitDensity.Logistic(level.Quantile(probability));

    /// <summary>s, not exceeded with a probability.</summary>
    public double SpreadQuantile(double probability) => Math.Exp(spread.Quantile(probability));

    /// <summary>The mean share in the long run, not exceeded with a probability: for each s the level at which it is reached, and what weight lies below.</summary>
    public double RateQuantile(double probability)
    {
        RateMiss miss = new(this, probability);
        _ = RootFinding.Bracketed(ref miss, kernel.LogRates.Min(), kernel.LogRates.Max(), tolerance: 1e-10, out double logRate);
        return Math.Exp(logRate);
    }

    /// <summary>A density in logarithms, made finer by cubics: so limits need no finer grid.</summary>
    private static LogitDensity Smooth(double middle, double reach, double[] logHeights) =>
        new LogitDensity(middle - reach, 2 * reach / (logHeights.Length - 1), logHeights).Times(_ => 0);

    /// <summary>Multiplies each cell by the chance of what was found.</summary>
    private void Weigh(LesionInspection inspection)
    {
        Func<double, double> logLikelihood = inspection.LogLikelihood(inspection.Detection.Fraction);
        if (inspection.Found > ManyCases)
        {
            WeighNarrow(inspection, logLikelihood);
            return;
        }

        double[] likelihood = new double[Logits];
        for (int i = 0; i < Logits; i++)
        {
            likelihood[i] = logLikelihood(FarmKernel.LogitAt(i));
        }

        double highest = likelihood.Max();
        for (int i = 0; i < Logits; i++)
        {
            likelihood[i] = Math.Exp(likelihood[i] - highest);
        }

        for (int cell = 0; cell < logWeights.Length; cell++)
        {
            ReadOnlySpan<double> row = kernel.Row(cell);
            double sum = 0;
            for (int i = 0; i < Logits; i++)
            {
                sum += row[i] * likelihood[i];
            }

            logWeights[cell] += Math.Log(sum);
        }
    }

    /// <summary>The same on points of its own about what was found, a third of its deviation apart.</summary>
    private void WeighNarrow(LesionInspection inspection, Func<double, double> logLikelihood)
    {
        const int half = 30;
        double share = Math.Min(inspection.Found / (inspection.Opened * inspection.Detection.Fraction), 1 - (0.5 / inspection.Opened));
        double middle = LogitDensity.Logit(share), step = 1 / (3 * Math.Sqrt(inspection.Found * (1 - share)));
        double[] likelihood = [.. Enumerable.Range(-half, (2 * half) + 1).Select(i => logLikelihood(middle + (step * i)))], logs = new double[likelihood.Length];

        for (int cell = 0; cell < logWeights.Length; cell++)
        {
            double a = FarmKernel.LevelAt(cell), s = Math.Exp(FarmKernel.LogSpreadAt(cell));
            for (int i = 0; i < logs.Length; i++)
            {
                double standard = (middle + (step * (i - half)) - a) / s;
                logs[i] = likelihood[i] - (standard * standard / 2);
            }

            double highest = logs.Max();
            logWeights[cell] += highest + Math.Log(logs.Sum(log => Math.Exp(log - highest)) / s);
        }
    }

    private double[] Marginal(int count, Func<int, int, int> cell, int others)
    {
        double[] logs = new double[count];
        for (int at = 0; at < count; at++)
        {
            double sum = 0;
            for (int other = 0; other < others; other++)
            {
                sum += Math.Exp(logWeights[cell(at, other)]);
            }

            logs[at] = Math.Log(sum);
        }

        return logs;
    }

    private LogitDensity NextOf()
    {
        double[] heights = new double[Logits];
        for (int cell = 0; cell < logWeights.Length; cell++)
        {
            double weight = Math.Exp(logWeights[cell]);
            ReadOnlySpan<double> row = kernel.Row(cell);
            for (int i = 0; i < Logits; i++)
            {
                heights[i] += weight * row[i];
            }
        }

        return new(FarmKernel.LogitAt(0), FarmKernel.Step, [.. heights.Select(height => Math.Log(height))]);
    }

    /// <summary>The weight of all levels and spreads of which the rate is below.</summary>
    private double WeightBelow(double logRate)
    {
        double below = 0, all = 0;
        for (int s = 0; s < Spreads; s++)
        {
            for (int a = 1; a < Levels; a++)
            {
                int cell = (a * Spreads) + s, before = cell - Spreads;
                double left = Math.Exp(logWeights[before]), right = Math.Exp(logWeights[cell]);
                double from = kernel.LogRates[before], share = Math.Clamp((logRate - from) / (kernel.LogRates[cell] - from), 0, 1);
                all += (left + right) / 2;
                below += share * (left + (share * (right - left) / 2));
            }
        }

        return below / all;
    }

    private readonly struct RateMiss(FarmGrid grid, double probability) : IScalarFunction
    {
        public double At(double x) => grid.WeightBelow(x) - probability;
    }
}
