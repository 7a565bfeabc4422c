using Poultry.Growth.Fitting;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>
/// Learning against other programs, each figure that of the start which ends furthest from it. R's nlme 3.1-162 (maximum likelihood, nothing drawn anywhere) by the script, data
/// and results beside this file: tolerances are relative, Orange 5e-5 for fixed effects, since nlme's own two ends differ by 3e-5 there, 1e-6 for deviations; the twenty batches
/// 1e-6, 1e-5; correlations 1e-5, log-likelihoods 1e-3, 1e-4 absolute. All 50 chicks of ChickWeight as one population, 1e-4: nlme finds no optimum there (<see cref="ChickWeight.ChickWeightPopulationTests"/>).
/// </summary>
internal static class MixedModelChecks
{
    private const string Nlme = "R 4.2.2, nlme 3.1-162, maximum likelihood";
    private const string Program = "R datasets::ChickWeight, the same method written apart in Python, four starts agreeing to 1e-6";

    public static IEnumerable<OutsideCheck> All =>
    [
        .. ByNlme("orange", "R datasets::Orange, random asymptote: ", PopulationRuns.Orange, ["Asym", "xmid", "scal"], 5e-5, 1e-6, 1e-3).Select(check => check with { Kind = CheckKind.OpenDataset }),
        .. ByNlme("twenty-batches", "twenty simulated batches: ", PopulationRuns.TwentyBatches, ["logA", "logk", "tstar"], 1e-6, 1e-5, 1e-4),
        .. Chicks().Select(check => check with { Kind = CheckKind.OpenDataset }),
    ];

    private static IEnumerable<OutsideCheck> ByNlme(
        string set, string what, Lazy<LaplaceEmResult[]> runs, string[] names, double fixedEffects, double deviations, double logLikelihood)
    {
        foreach (Table.Row row in Table.Read("MixedModels/nlme-references.csv").Rows.Where(row => row.Text("set") == set))
        {
            (string quantity, double value) = (row.Text("quantity"), row.Number("value"));
            int at = Array.IndexOf(names, quantity.Replace("sd_", "", StringComparison.Ordinal));
            (Func<LaplaceEmResult, double> got, double tolerance) = quantity switch
            {
                "residual" => ((Func<LaplaceEmResult, double>)PopulationRuns.Residual, deviations * value),
                "log_likelihood" => (run => run.LogLikelihood, logLikelihood),
                ['c', 'o', 'r', '_', char first, char second] => (run => PopulationRuns.Correlation(run, first - '1', second - '1'), 1e-5),
                ['s', 'd', '_', ..] => (run => PopulationRuns.Deviation(run, at), deviations * value),
                _ => (run => run.Population.Mean[at], fixedEffects * Math.Abs(value)),
            };
            yield return Recomputed(set + "-" + quantity, what + quantity, Nlme, "-", value, tolerance, () => PopulationRuns.Furthest(runs, got, value));
        }
    }

    private static IEnumerable<OutsideCheck> Chicks()
    {
        (string What, string Unit, double Value, Func<LaplaceEmResult, double> Got)[] rows =
        [
            ("asymptote", "g", 322.482, run => run.Population.Mean[0]),
            ("middle", "d", 12.9240, run => run.Population.Mean[1]),
            ("scale", "d", 6.6753, run => run.Population.Mean[2]),
            ("deviation of the asymptote", "g", 187.788, run => PopulationRuns.Deviation(run, 0)),
            ("deviation of the middle", "d", 7.2906, run => PopulationRuns.Deviation(run, 1)),
            ("deviation of the scale", "d", 2.0456, run => PopulationRuns.Deviation(run, 2)),
            ("residual", "g", 5.2365, PopulationRuns.Residual),
            ("log-likelihood", "-", -2074.6285, run => run.LogLikelihood),
        ];
        return rows.Select((row, at) => Recomputed(
            FormattableString.Invariant($"chicks-{at + 1}"), "50 chicks as one population, logistic: " + row.What, Program, row.Unit, row.Value, 1e-4 * Math.Abs(row.Value),
            () => PopulationRuns.Furthest(PopulationRuns.Chicks, row.Got, row.Value)));
    }
}
