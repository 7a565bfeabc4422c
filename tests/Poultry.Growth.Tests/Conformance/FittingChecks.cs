using Poultry.Growth.Benchmarks;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Tests.Conformance.ChickWeight;
using Poultry.Growth.Tests.Conformance.MixedModels;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Fits, learning and projections. How far a family can follow a printed table is asked within 4 %, for fast birds.</summary>
internal static class FittingChecks
{
    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. ChickWeightChecks.All,
        .. MixedModelChecks.All,
        .. ProjectionChecks.All,
        .. NinePointsMinimum(7.02180864522599503, 0.0408094785832421415, 38.2121150371309127),
        .. Handbook.Tables.Keys.Where(name => !name.StartsWith("slow", StringComparison.Ordinal)).Select(table => new OutsideCheck(
            "H-" + table, table + ": root mean square of (table - curve)/curve by the family that follows it best", "that of [handbooks](handbooks.md)", Handbook.HowKnown(table), "%", 0, 4,
            () => HandbookFit.Of(table).Min(fit => fit.RmsPercent)) { Kind = CheckKind.PublishedTable }),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "How the parameters of growth curves vary together from flock to flock: nothing was to be had.",
    ];

    /// <summary>The benchmarks' fit. Its certificate of 1e-9 leaves parameters some 1e-11 off; 1e-9 is asked for.</summary>
    private static IEnumerable<OutsideCheck> NinePointsMinimum(params double[] parameters) => parameters.Select((expected, i) => OutsideCheck.Recomputed(
        "nine-" + (i + 1), $"Gompertz curve of nine weekly weights (benchmarks), least squares: {CurveFamilies.Gompertz.Parameters[i].Name}", "mpmath 1.2.1, Newton's method (findroot) with 40 digits",
        CurveFamilies.Gompertz.Parameters[i].Unit, expected, 1e-9 * expected, () => GrowthFit.Of(NinePoints.Series, errors: ErrorModel.EqualVariance).Parameters[i].Value));
}
