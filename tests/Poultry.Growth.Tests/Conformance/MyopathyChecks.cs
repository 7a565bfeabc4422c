using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Deep pectoral myopathy against its sources. "Fitted" marks figures that the model was made to meet: agreement there is no test of the model, only of the code. Tolerances of
/// fitted rows are the last printed digit of the source; those of simulated and of derived rows are argued beside them.
/// </summary>
internal static class MyopathyChecks
{
    private const string Trial = "Lien et al. 2012, J. Appl. Poult. Res., abstract";
    private const string Survey = "Bianchi et al. 2006, Poult. Sci. 85:1843, abstract";
    private const string Turkey = "Yalcin et al. 2018, Br. Poult. Sci. 59:55, abstract";
    private const string Killed = "Kijowski and Kupinska 2012, Bull. Vet. Inst. Pulawy 56:217, abstract";
    private const string Arithmetic = "own arithmetic by the formula, with a second program";
    private const string Pooled = "own computation with SciPy and R, grid 241 x 81";

    private static readonly BatchAtRisk Plain = new() { KillAge = Age.FromDays(49), IsOutdoor = false };

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        new("C1", "muscles at 45 d, no cycles", Trial, HowKnown.ReadInSource, "%", 0, 0, () => FlappingResponse.At(0).Percent),
        new("C2", "muscles at 45 d, 5 cycles; the trial saw 0 % and the model may say up to 4.6 %", Trial, HowKnown.Derived, "%", 1.13, 0.05, () => FlappingResponse.At(5).Percent),
        Recomputed("C2low", "low end at 5 cycles, 40 muscles a group, 95 %", Arithmetic, "%", 0.1, 0.1, () => FlappingResponse.RangeAt(5, 0.95).Low!.Value.Percent),
        Recomputed("C2high", "high end at 5 cycles, 40 muscles a group, 95 %; half a point for the prior chosen", Arithmetic, "%", 4.6, 0.5, () => FlappingResponse.RangeAt(5, 0.95).High!.Value.Percent),
        new("C3a", "muscles at 45 d, 10 cycles (fitted)", Trial, HowKnown.ReadInSource, "%", 7.0, 0.1, () => FlappingResponse.At(10).Percent),
        new("C3b", "muscles at 45 d, 20 cycles (fitted)", Trial, HowKnown.ReadInSource, "%", 33, 0.1, () => FlappingResponse.At(20).Percent),
        .. Susceptibility(("C4a", 26, Sex.Male, 0.10), ("C4b", 33, Sex.Male, 0.43), ("C4c", 33, Sex.Female, 0), ("C4d", 36, Sex.Male, 0.57), ("C4e", 36, Sex.Female, 0.18)),
        new("C5a", "mean of all flocks at mu -5.98 (fitted)", Survey, HowKnown.ReadInSource, "%", 0.84, 0.01, () => At(-5.98, 1.6).Mean.Percent),
        new("C5b", "worst of 151 flocks of 799, median (fitted; the survey saw 16.7, simulated 14.6 +/- 2)", Survey, HowKnown.Derived, "%", 14.6, 2, () => WorstOf151(0.5)),
        new("C5c", "the same, 5 % of such surveys have a lower worst (fitted)", Survey, HowKnown.Derived, "%", 6, 1, () => WorstOf151(0.05)),
        new("C5d", "the same, 5 % have a higher worst (fitted; 20,000 surveys simulated with R, whose own error is 0.3)", Survey, HowKnown.Derived, "%", 36.4, 1, () => WorstOf151(0.95)),
        new("C6a", "mean of 59 flocks; a factor of 2.3 between studies is a tolerance of 0.42 on the logit (fitted)", Turkey, HowKnown.ReadInSource, "logit", Math.Log(0.0073 / 0.9927), 0.42,
            () => Logit(PlanningRisk.Published.For(Plain).Mean)),
        new("C6b", "odds per 0.4 kg of live weight", Turkey, HowKnown.ReadInSource, "-", 1, 0, () => PlanningRisk.Published.For(new() { KillAge = Plain.KillAge, LiveWeight = Mass.FromKilograms(3) }).OddsRatios.Single(ratio => ratio.Code == "weight").Value),
        new("C7", "layer type, 20 cycles of every bird: less background", "Siller et al. 1978/79, abstract: 0 of 6 light hens", HowKnown.ReadInSource, "%", 0, 0,
            () => EventRisk.LayerType.For(DisturbanceLog.Of(Disturbance.At(Age.FromDays(45), "trial", FlappingDose.Of(Probability.FromFraction(1), 20))), Age.FromDays(52), Sex.Male).Events[0].Birds!.Value.Percent),
        .. Stages((1, LesionStage.Red, LesionStage.Pink), (3, LesionStage.Red, LesionStage.Pink), (5, LesionStage.Green, LesionStage.Grey), (7, LesionStage.Green, LesionStage.Grey), (14, LesionStage.Green, LesionStage.Grey)),
        .. Doses((5, 1.1, 1.5), (10, 7.0, 9.2), (15, 18.4, 23.8), (20, 33, 41)),
        Recomputed("C9i", "birds at 20 cycles, sides independent", Arithmetic, "%", 55, 0.4, () => LesionSides.Independent.Birds(FlappingResponse.At(20)).Percent),
        .. Sides((0.01, 1.50), (0.07, 1.52), (0.33, 1.60)),
        Recomputed("C11a", "birds that must do 10 cycles for 0.75 % of birds", Arithmetic, "%", 8.1, 0.1, () => 100 * 0.75 / LesionSides.Usual.Birds(FlappingResponse.At(10)).Percent),
        Recomputed("C11b", "birds that must do 20 cycles for 0.75 % of birds", Arithmetic, "%", 1.8, 0.1, () => 100 * 0.75 / LesionSides.Usual.Birds(FlappingResponse.At(20)).Percent),
        Recomputed("C12a", "cockerels of 35 d, 5 %, 15 cycles, 7 d before: birds that flapped", Arithmetic, "%", 12.6, 0.05, () => Event(Sex.Male, 35, 42, 5, 15).Events[0].Birds!.Value.Percent),
        Recomputed("C12b", "the same, all birds", Arithmetic, "%", 0.69, 0.01, () => Event(Sex.Male, 35, 42, 5, 15).Affected!.Value.Percent),
        Recomputed("C12c", "the same, pullets", Arithmetic, "%", 0.17, 0.01, () => Event(Sex.Female, 35, 42, 5, 15).Affected!.Value.Percent),
        Recomputed("C12d", "susceptibility of pullets at 35 d", Arithmetic, "-", 0.091, 0.0005, () => AgeSusceptibility.Published.Share(Age.FromDays(35), Sex.Female).Fraction),
        Recomputed("C13a", "cockerels of 44 d, 10 %, 20 cycles, 1 d before: share that shows", Arithmetic, "-", 0.333, 0.0005, () => Event(Sex.Male, 44, 45, 10, 20).Events[0].Visible.Fraction),
        Recomputed("C13b", "the same, birds that flapped", Arithmetic, "%", 39.5, 0.05, () => Event(Sex.Male, 44, 45, 10, 20).Events[0].Birds!.Value.Percent),
        Recomputed("C13c", "the same, all birds", Arithmetic, "%", 1.37, 0.02, () => Event(Sex.Male, 44, 45, 10, 20).Affected!.Value.Percent),
        .. Means((0.8, -5.16), (1.2, -5.54), (1.6, -6.06)),
        .. Updates("a", 300, 0, 0.218, 0.023, 0.745),
        .. Updates("b", 300, 5, 1.394, 0.465, 2.88),
        .. Updates("c", 1000, 8, 0.758, 0.337, 1.36),
        Recomputed("C16", "meat lost of an affected bird of 2.6 kg", Arithmetic, "kg", 0.156, 1e-12, () => MeatAtRisk.OfLiveWeight(Mass.FromKilograms(2.6)).PerAffectedBird.Kilograms),
        .. Bilateral((25, 1.60), (50, 1.33), (75, 1.14)),
        new("C18", "odds of two crosses, 1.27 % of 64,300 and 0.35 % of 56,400; high over low in the model", Survey, HowKnown.Derived, "-", 3.66, 0.02, () => Strain(StrainRisk.High) / Strain(StrainRisk.Low)),
        .. Farm("B2a", [0, 0, 0, 0, 0, 0, 0, 0, 0, 0], [0.0123, 0.0363, 0.0981], [0.857, 1.272, 1.893], [0.026, 0.085, 0.318], [0.0031, 0.0359, 0.4017]),
        .. Farm("B2b", [0, 0, 2, 0, 0, 4, 2, 1, 2, 1], [0.0802, 0.1811, 0.3775], [0.856, 1.246, 1.809], [0.182, 0.397, 1.011], [0.0177, 0.1824, 1.652]),
        .. Farm("B2c", [0, 0, 0, 0, 0, 53, 6, 5, 0, 0], [0.0551, 0.1572, 0.4086], [1.431, 1.934, 2.651], [0.326, 0.883, 2.622], [0.0047, 0.1592, 4.367]),
        .. Farm("B2d", [3, 3, 3], [0.1278, 0.3677, 0.9773], [0.844, 1.259, 1.878], [0.302, 0.815, 2.403], [0.0314, 0.3724, 3.708]),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Group sizes and age curves of the flapping trial, percentages of the Polish trial, and the flock and farm tables of the surveys were not to be had: abstracts only.",
        "No outdoor flock, no slow-growing bird and no bird above 65 d was ever surveyed: nothing here is checked for them.",
        "No odds ratio of thinning, lameness or range was found, and nobody has published flaps per bird in the field: the events model is not checked against any flock.",
        "No data of several batches of one real farm were to be had: learning is checked against other programs and simulated farms.",
    ];

    private static BatchPrevalence At(double mu, double sigma) => PlanningRisk.Of(mu, sigma).For(Plain);

    private static double Logit(BirdPrevalence share) => Math.Log(share.Share.Fraction / (1 - share.Share.Fraction));

    /// <summary>F(x)^151 = p: the worst of 151 flocks is a quantile of one flock.</summary>
    private static double WorstOf151(double probability) =>
        100 / 799.0 * At(-5.98, 1.6).Among(799, (2 * Math.Pow(probability, 1 / 151.0)) - 1).Interval.High!.Value;

    private static EventPrevalence Event(Sex sex, double days, double killDays, double percent, double cycles) => EventRisk.MeatType.For(
        DisturbanceLog.Of(Disturbance.At(Age.FromDays(days), "check", FlappingDose.Of(Probability.FromPercent(percent), cycles))), Age.FromDays(killDays), sex);

    private static double Strain(StrainRisk strain) =>
        PlanningRisk.Published.For(new() { KillAge = Plain.KillAge, Strain = strain }).OddsRatios.Single(ratio => ratio.Code == "strain").Value;

    private static IEnumerable<OutsideCheck> Susceptibility(params (string Id, double Days, Sex Sex, double Share)[] rows) => rows.Select(row => new OutsideCheck(
        row.Id, FormattableString.Invariant($"susceptibility at {row.Days} d, {row.Sex} (fitted)"), Trial, HowKnown.Derived, "-", row.Share, 0.005,
        () => AgeSusceptibility.Published.Share(Age.FromDays(row.Days), row.Sex).Fraction));

    /// <summary>1 where the most likely look is one of the two that the trial saw.</summary>
    private static IEnumerable<OutsideCheck> Stages(params (double Days, LesionStage First, LesionStage Second)[] rows) => rows.Select((row, at) => new OutsideCheck(
        "C8" + (char)('a' + at), FormattableString.Invariant($"most likely look {row.Days} d after flapping is {row.First} or {row.Second} (fitted; 1: yes)"), Killed, HowKnown.ReadInSource, "-", 1, 0,
        () => Enum.GetValues<LesionStage>().MaxBy(stage => LesionStages.Chance(stage, Duration.FromDays(row.Days)).Fraction) is var likeliest && (likeliest == row.First || likeliest == row.Second) ? 1 : 0));

    private static IEnumerable<OutsideCheck> Doses(params (double Cycles, double Muscles, double Birds)[] rows) => rows.SelectMany((row, at) => new[]
    {
        Recomputed("C9" + (char)('a' + (2 * at)), FormattableString.Invariant($"muscles at {row.Cycles} cycles"), Arithmetic, "%", row.Muscles, 0.4, () => FlappingResponse.At(row.Cycles).Percent),
        Recomputed("C9" + (char)('b' + (2 * at)), FormattableString.Invariant($"birds at {row.Cycles} cycles"), Arithmetic, "%", row.Birds, 0.4, () => LesionSides.Usual.Birds(FlappingResponse.At(row.Cycles)).Percent),
    });

    private static IEnumerable<OutsideCheck> Sides(params (double Muscles, double Sides)[] rows) => rows.Select((row, at) => Recomputed(
        "C10" + (char)('a' + at), FormattableString.Invariant($"affected sides of an affected bird at {100 * row.Muscles:G3} % of muscles"), Arithmetic, "-", row.Sides, 0.01,
        () => LesionSides.Usual.SidesPerBird(MusclePrevalence.Of(Probability.FromFraction(row.Muscles)))));

    private static IEnumerable<OutsideCheck> Means(params (double Sigma, double Mu)[] rows) => rows.Select((row, at) => Recomputed(
        "C14" + (char)('a' + at), FormattableString.Invariant($"mean at mu {row.Mu}, sigma {row.Sigma}"), Arithmetic, "%", 0.78, 0.01, () => At(row.Mu, row.Sigma).Mean.Percent));

    /// <summary>Within 2 % of each figure.</summary>
    private static IEnumerable<OutsideCheck> Updates(string id, int opened, int found, double mean, double low, double high)
    {
        BatchPrevalence After() => At(-5.54, 1.2).After(LesionInspection.Of(opened, found));
        string what = FormattableString.Invariant($"{found} of {opened} found, mu -5.54, sigma 1.2: ");
        yield return Recomputed("C15" + id, what + "mean", Arithmetic, "%", mean, 0.02 * mean, () => After().Mean.Percent);
        yield return Recomputed("C15" + id + "low", what + "2.5 %", Arithmetic, "%", low, 0.02 * low, () => After().IntervalAt(0.95).Low!.Value.Percent);
        yield return Recomputed("C15" + id + "high", what + "97.5 %", Arithmetic, "%", high, 0.02 * high, () => After().IntervalAt(0.95).High!.Value.Percent);
    }

    private static IEnumerable<OutsideCheck> Bilateral(params (double Percent, double Ratio)[] rows) => rows.Select((row, at) => Recomputed(
        "C17" + (char)('a' + at), FormattableString.Invariant($"birds over muscles where {row.Percent} % of affected birds have both sides"), Arithmetic, "-", row.Ratio, 0.01,
        () => LesionSides.OfBilateralShare(Probability.FromPercent(row.Percent)).Birds(MusclePrevalence.FromPercent(0.01)).Percent / 0.01));

    /// <summary>Ten batches or three, 400 birds opened of each: 5, 50 and 95 % points, within 1 % (of s 1.5 %) and half the last printed digit.</summary>
    private static IEnumerable<OutsideCheck> Farm(string id, int[] found, double[] level, double[] spread, double[] rate, double[] next)
    {
        FarmLesionRate farm = FarmLesionRate.Learn(found.Select((count, at) => LesionInspection.Of(400, count, FormattableString.Invariant($"batch {at}"))));
        string what = string.Join(" ", found) + " found of 400 each: ";
        double[] Points<T>(Estimate<T> estimate, Func<T, double> number)
            where T : struct, IComparable<T> => [number(estimate.Interval.Low!.Value), number(estimate.Value), number(estimate.Interval.High!.Value)];

        IEnumerable<OutsideCheck> Rows(string name, string unit, double[] expected, double part, double lastDigit, Func<double[]> got) => expected.Select((value, at) => Recomputed(
            id + name[0] + (char)('1' + at), what + name + (at == 0 ? ", 5 %" : at == 1 ? ", 50 %" : ", 95 %"), Pooled, unit, value, (part * value) + (lastDigit / 2), () => got()[at]));

        return
        [
            .. Rows("level", "%", level, 0.01, 1e-4, () => Points(farm.Level(), share => share.Percent)),
            .. Rows("spread s", "-", spread, 0.015, 1e-3, () => Points(farm.BetweenBatchesLogit(), number => number)),
            .. Rows("rate in the long run", "%", rate, 0.01, 1e-3, () => Points(farm.LongRunRate(), share => share.Percent)),
            .. Rows("next batch", "%", next, 0.01, 1e-4, () => [farm.NextBatch.Quantile(Probability.FromFraction(0.05)).Percent, farm.NextBatch.Median.Percent, farm.NextBatch.Quantile(Probability.FromFraction(0.95)).Percent]),
        ];
    }
}
