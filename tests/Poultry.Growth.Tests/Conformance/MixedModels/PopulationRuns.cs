using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>Populations learned from several starts each.</summary>
internal static class PopulationRuns
{
    /// <summary>Trees of R's Orange: logistic, the asymptote random.</summary>
    public static Lazy<LaplaceEmResult[]> Orange { get; } = new(() =>
    [
        .. new double[][] { [190, 720, 340, 30, 8], [150, 600, 300, 60, 20] }.Select(start => LaplaceEm<Logistic>.Run(
            default, MixedModelData.Groups("MixedModels/orange.csv", "tree", "age_d", "circumference_mm"), MixedModelData.Likelihood(start[..3], start[3..4], [0], start[4], 1e-9))),
    ]);

    /// <summary>Logarithms of Gompertz curves, all three parameters random.</summary>
    public static Lazy<LaplaceEmResult[]> TwentyBatches { get; } = new(() =>
    [
        .. new double[][] { [1.7, -3.2, 35, 0.15, 0.1, 3, 0.02], [1.9, -3.0, 30, 0.05, 0.2, 1, 0.05] }.Select(start => LaplaceEm<LogGompertz>.Run(
            default, MixedModelData.Groups("MixedModels/twenty-batches.csv", "batch", "age_d", "log_kg"), MixedModelData.Likelihood(start[..3], start[3..6], [0, 1, 2], start[6], 1e-9))),
    ]);

    /// <summary>All 50 chicks of R's ChickWeight: logistic, three random parameters with full covariance.</summary>
    public static Lazy<LaplaceEmResult[]> Chicks { get; } = new(() =>
    [
        .. new double[][] { [318, 12.8, 6.64, 180, 7.1, 2, 5.3], [250, 10, 6, 50, 2, 1, 10], [400, 16, 8, 200, 8, 3, 4], [200, 10, 5, 100, 5, 2, 15] }.Select(start => LaplaceEm<Logistic>.Run(
            default, MixedModelData.Groups("ChickWeight/chickweight.csv", "Chick", "Time", "weight"), MixedModelData.Likelihood(start[..3], start[3..6], [0, 1, 2], start[6], 1e-8))),
    ]);

    public static double Deviation(LaplaceEmResult run, int coordinate) => Math.Sqrt(run.Population.Spread[coordinate * (run.Population.Random.Length + 1)]);

    public static double Correlation(LaplaceEmResult run, int first, int second) =>
        run.Population.Spread[(first * run.Population.Random.Length) + second] / (Deviation(run, first) * Deviation(run, second));

    public static double Residual(LaplaceEmResult run) => Math.Sqrt(run.Population.ErrorVariance);

    /// <summary>The figure of the start that ends furthest from a reference.</summary>
    public static double Furthest(Lazy<LaplaceEmResult[]> runs, Func<LaplaceEmResult, double> figure, double reference) =>
        runs.Value.Select(figure).MaxBy(got => Math.Abs(got - reference));
}
