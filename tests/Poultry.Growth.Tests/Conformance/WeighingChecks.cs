using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance.ChickWeight;
using Poultry.Growth.Weighing;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>How many birds to weigh, what a weigh-in says of the flock, and that real weighings hold no wrong units. Whole birds are exact.</summary>
internal static class WeighingChecks
{
    private const string Smallest = "smallest n with t(n-1) CV / sqrt(n) within the precision: R (qt) and SciPy (stats.t.ppf), agreeing";
    private const string Normal = "2 Phi(10/CV) - 1";
    private const string StudentsT = "R 4.2.2, t.test";

    private static readonly double[] FiveKilograms = [2.1, 2.3, 2.2, 2.5, 1.9];

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. BirdsToWeighAt(8, 0.5, (90, 695), (99, 1703)),
        .. BirdsToWeighAt(8, 1, (95, 249)),
        .. BirdsToWeighAt(8, 2, (90, 46), (99, 110)),
        .. BirdsToWeighAt(8, 3, (95, 30)),
        .. BirdsToWeighAt(8, 5, (90, 9), (99, 21)),
        .. BirdsToWeighAt(10, 0.5, (95, 1540)),
        .. BirdsToWeighAt(10, 1, (90, 273), (99, 668)),
        .. BirdsToWeighAt(10, 2, (95, 99)),
        .. BirdsToWeighAt(10, 3, (90, 32), (99, 78)),
        .. BirdsToWeighAt(10, 5, (95, 18)),
        .. BirdsToWeighAt(12, 0.5, (90, 1561), (99, 3826)),
        .. BirdsToWeighAt(12, 1, (95, 556)),
        .. BirdsToWeighAt(12, 2, (90, 100), (99, 243)),
        .. BirdsToWeighAt(12, 3, (95, 64)),
        .. BirdsToWeighAt(12, 5, (90, 18), (99, 43)),
        .. BirdsToWeighAt(14, 0.5, (95, 3015)),
        .. BirdsToWeighAt(14, 1, (90, 533), (99, 1305)),
        .. BirdsToWeighAt(14, 2, (95, 191)),
        .. BirdsToWeighAt(14, 3, (90, 61), (99, 149)),
        .. BirdsToWeighAt(14, 5, (95, 33)),
        new("U1", "within a tenth of the mean of 1050 g, 95 of 115 birds from 945 to 1155 g", "IASRI e-course, flock uniformity, worked example", HowKnown.ReadInSource, "%", 82.6, 0.05,
            () => 100 * Uniformity.Of(IasriFlock).ShareWithinTenPercent!.Value) { Kind = CheckKind.WorkedExample },
        .. new (double Percent, double Share)[] { (8, 78.9), (10, 68.3), (12, 59.5) }.Select(row => Derived(
            FormattableString.Invariant($"U2-{row.Percent}"), FormattableString.Invariant($"within a tenth of the mean, a normal flock with a CV of {row.Percent} %"), Normal, "%", row.Share, 0.05,
            () => 100 * Uniformity.Of(WeighIn.Mean(Age.FromDays(42), Mass.FromKilograms(2), 30, Mass.FromKilograms(0.02 * row.Percent))).ShareWithinTenPercent!.Value)),
        .. Limits("U3", "of five birds of 1.9 to 2.5 kg", StudentsT, null, 1.98681532137, 2.41318467863),
        .. Limits("U4", "the same of a flock of 20", "R 4.2.2, qt(.95, 4) sd sqrt(1/5 - 1/20)", 20, 2.01537665261, 2.38462334739),
        new("S1", "printed tables of weight by age that are suspected of a wrong unit", "those of [handbooks](handbooks.md)", HowKnown.Secondary, "tables", 0, 0,
            () => Handbook.Tables.Keys.Count(table => Handbook.Series(table, birds: 20).Suspicions.Count > 0)) { Kind = CheckKind.PublishedTable, Figures = () => Handbook.Tables.Count },
        Suspected("S2", "chicks by themselves", [.. Enumerable.Range(1, 50).Select(chick => FormattableString.Invariant($"Chick={chick}"))], series => series),
        Suspected("S3", "chicks of one diet, and all of them, in one heap", ["", .. Diets], series => series),
        Suspected("S4", "means of a diet with their spread", Diets, Means),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Spread between birds by age in flocks of one sex: nothing was to be had.",
    ];

    private static IReadOnlyList<string> Diets => ["Diet=1", "Diet=2", "Diet=3", "Diet=4"];

    private static WeighIn IasriFlock => WeighIn.Birds(
        Age.FromDays(42),
        new (int Birds, double Grams)[] { (40, 945), (40, 1155), (15, 1050), (10, 900), (10, 1200) }.SelectMany(row => Enumerable.Repeat(Mass.FromGrams(row.Grams), row.Birds)));

    private static IEnumerable<OutsideCheck> BirdsToWeighAt(double variationPercent, double precisionPercent, params (double LevelPercent, int Birds)[] rows) => rows.Select(row => Recomputed(
        FormattableString.Invariant($"N-{variationPercent}-{precisionPercent}-{row.LevelPercent}"),
        FormattableString.Invariant($"birds to weigh for {precisionPercent} % at {row.LevelPercent} %, CV {variationPercent} %"),
        Smallest,
        "birds",
        row.Birds,
        0,
        () => BirdsToWeigh.For(variationPercent / 100, precisionPercent / 100, row.LevelPercent / 100)));

    private static IEnumerable<OutsideCheck> Limits(string id, string what, string source, int? flock, double low, double high)
    {
        Interval<Mass> Interval() => Uniformity.Of(WeighIn.Birds(Age.FromDays(42), FiveKilograms.Select(kilograms => Mass.FromKilograms(kilograms)))).MeanInterval(0.90, flock);
        yield return Recomputed(id + "low", "low end of the mean at 90 %, " + what, source, "kg", low, 1e-10, () => Interval().Low!.Value.Kilograms);
        yield return Recomputed(id + "high", "high end of it", source, "kg", high, 1e-10, () => Interval().High!.Value.Kilograms);
    }

    private static OutsideCheck Suspected(string id, string what, IReadOnlyList<string> where, Func<WeighInSeries, WeighInSeries> form) => Read(
        id, what + " that are suspected of a wrong unit", "R datasets::ChickWeight (Crowder and Hand 1990, Example 5.3)", "series", 0, 0,
        () => where.Count(which => form(ChickWeightData.FromFile(which)).Suspicions.Count > 0)) with { Kind = CheckKind.OpenDataset, Figures = () => where.Count };

    private static WeighInSeries Means(WeighInSeries heap) =>
        WeighInSeries.Of(Uniformity.ByAge(heap).Select(day => WeighIn.Mean(day.Age, day.MeanWeight, day.Birds, day.StandardDeviation)));
}
