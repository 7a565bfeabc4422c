using System.Collections.Immutable;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Myopathy;

/// <summary>The grid of levels a, spreads s and logits z that every farm shares, with the density of z in each cell: made once.</summary>
internal sealed class FarmKernel
{
    public const double LevelMean = -6.32, LevelReach = 4.5 * LevelDeviation, SpreadMiddle = 1.386, Step = 0.05;
    public const int Logits = 441, Levels = 65, Spreads = 15;

    private const double LevelDeviation = 0.9, LogSpreadDeviation = 0.25, Lowest = -18;

    private readonly double[] densities = new double[Levels * Spreads * Logits];

    private FarmKernel()
    {
        double[] logRates = new double[Levels * Spreads];
        for (int cell = 0; cell < logRates.Length; cell++)
        {
            Span<double> row = densities.AsSpan(cell * Logits, Logits);
            double a = LevelAt(cell), s = Math.Exp(LogSpreadAt(cell)), total = 0, rate = 0;
            for (int i = 0; i < Logits; i++)
            {
                double standard = (LogitAt(i) - a) / s;
                row[i] = Math.Exp(-standard * standard / 2);
                total += row[i];
                rate += row[i] * LogitDensity.Logistic(LogitAt(i));
            }

            logRates[cell] = Math.Log(rate / total);
            foreach (ref double height in row)
            {
                height /= total;
            }
        }

        LogRates = [.. logRates];
    }

    public static FarmKernel Shared { get; } = new();

    public static double LogSpreadMiddle => Math.Log(SpreadMiddle);

    public static double LogSpreadReach => 3.5 * LogSpreadDeviation;

    /// <summary>ln of the mean share in the long run, of each cell.</summary>
    public ImmutableArray<double> LogRates { get; }

    public static double LogitAt(int i) => Lowest + (Step * i);

    /// <summary>a of a cell.</summary>
    public static double LevelAt(int cell) => LevelMean + (LevelReach * ((2.0 * (cell / Spreads) / (Levels - 1)) - 1));

    /// <summary>ln s of a cell.</summary>
    public static double LogSpreadAt(int cell) => LogSpreadMiddle + (LogSpreadReach * ((2.0 * (cell % Spreads) / (Spreads - 1)) - 1));

    /// <summary>Of a and ln s, before anything was found.</summary>
    public static double LogPrior(int cell)
    {
        double a = (LevelAt(cell) - LevelMean) / LevelDeviation, s = (LogSpreadAt(cell) - LogSpreadMiddle) / LogSpreadDeviation;
        return -((a * a) + (s * s)) / 2;
    }

    /// <summary>K[z, a, s] = N(z; a, s) of a cell, normalised over the grid of z.</summary>
    public ReadOnlySpan<double> Row(int cell) => densities.AsSpan(cell * Logits, Logits);
}
