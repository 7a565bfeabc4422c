using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.ManyFigures;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Counted shares, birds to open and what is known after an inspection, against the fixtures of Conformance/Data. Whole birds are exact.</summary>
internal static class InspectionChecks
{
    private const string Exact = "exact rational arithmetic, R and SciPy, agreeing to 1e-12";
    private const string Grid = "R 4.2, a grid a hundred times finer";

    private static readonly Lazy<(Table.Row Row, FoundShare Share)[]> Shares = new(() =>
        [.. Table.Read("Data/binomial-intervals.csv").Rows.Select(row => (row, FoundShare.Of((int)row.Number("k"), (int)row.Number("n"), row.Number("level"))))]);

    private static readonly Lazy<(Table.Row Row, BirdsToOpen Answer)[]> Openings = new(() => [.. Table.Read("Data/detection.csv").Rows.Select(row => (row, ToFind(row)))]);

    private static readonly Lazy<(Table.Row Row, BatchPrevalence After)[]> Posteriors = new(() => [.. Table.Read("Data/lesion-posterior.csv").Rows.Select(row => (
        row, PlanningRisk.Of(row.Number("mu"), row.Number("sigma")).For(new() { KillAge = Age.FromDays(49) }).After(LesionInspection.Of((int)row.Number("n"), (int)row.Number("x")))))]);

    public static IEnumerable<OutsideCheck> All =>
    [
        Limits("cp", "Clopper and Pearson", share => share.ClopperPearson),
        Limits("wilson", "Wilson", share => share.Wilson),
        Limits("cc", "Wilson with a correction for continuity", share => share.WilsonCorrected),
        Limits("jeffreys", "Jeffreys", share => share.Jeffreys),
        Recomputed("open-n", "birds to open: cases that differ", Exact, "cases", 0, 0, () => Openings.Value.Count(one => one.Answer.Birds != (int?)one.Row.NumberOrNull("birds"))) with
        {
            Figures = () => Openings.Value.Length,
        },
        Digits("open-0", "chance that none of them shows it", Exact, 10, () => Openings.Value.Where(one => one.Row.NumberOrNull("none") is not null)
            .Select(one => new Compared($"{one.Row}", one.Answer.ChanceOfNone.Fraction, one.Row.Number("none")))),
        Digits("post-m", "mean share of a batch after an inspection", Grid, 6, () => Posteriors.Value.Select(one => new Compared($"{one.Row}", one.After.Mean.Share.Fraction, one.Row.Number("mean")))),
        Digits("post-q", "its 2.5, 5, 50, 95 and 97.5 % points", Grid, 5, () => Posteriors.Value.SelectMany(one => new (string Column, double Probability)[]
        {
            ("q025", 0.025), ("q05", 0.05), ("q50", 0.5), ("q95", 0.95), ("q975", 0.975),
        }.Select(point => new Compared($"{one.Row}: {point.Column}", one.After.Quantile(Probability.FromFraction(point.Probability)).Share.Fraction, one.Row.Number(point.Column))))),
    ];

    private static OutsideCheck Limits(string id, string by, Func<FoundShare, Interval<BirdPrevalence>> interval) => Digits(
        "lim-" + id, "limits of a counted share by " + by, Exact, 10, () => Shares.Value.SelectMany(one => new[]
        {
            new Compared($"{one.Row}: low", interval(one.Share).Low!.Value.Share.Fraction, one.Row.Number(id + "_low")),
            new Compared($"{one.Row}: high", interval(one.Share).High!.Value.Share.Fraction, one.Row.Number(id + "_high")),
        }));

    private static BirdsToOpen ToFind(Table.Row row) => BirdsToOpen.ToFind(
        BirdPrevalence.Of(Probability.FromFraction(row.Number("prevalence"))),
        row.Number("confidence"),
        (int?)row.NumberOrNull("flock"),
        Probability.FromFraction(row.Number("se")),
        row.Number("rho"));
}
