using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Which batches are simulated under which priors, and what is asked of each. The constants of the method were chosen elsewhere, on other seeds.</summary>
internal static class StudyRows
{
    /// <summary>The prior with which the method was measured: the centre of fast-growing birds by objective, birds of one sex.</summary>
    public static GrowthPrior Shipped { get; } = Prior("study-shipped", [Math.Log(7.0), Math.Log(0.0395), 38.5], [0.20, 0.10, 4]);

    /// <summary>A 13 % and k 9 % below, t* 8 % above the centre of the Gompertz truth (6 kg, 0.044/d, 41.5 d).</summary>
    public static GrowthPrior OffCentre { get; } = Prior("study-off-centre", [Math.Log(5.22), Math.Log(0.04004), 44.82], [0.27, 0.16, 4.1]);

    public static IReadOnlyList<StudyRow> All { get; } =
    [
        One("G0: Gompertz, no error of a whole weigh-in", TrueGrowth.Gompertz, error: 0),
        One("G2: Gompertz", TrueGrowth.Gompertz, asked: ([6, 4.6, 3.6, 2.6], [15, 12, 9.5, 7], [.95, .95, .95, .95], [46, 36, 28, 21])),
        One("M -0.2: matched Richards", Matched(-0.2), asked: ([6.5, 6.5, 7.5, 6.5], [18, 21.5, 18, 12.5], [.93, .93, .90, .87], [56, 50, 37, 26])),
        One("M 0.3", Matched(0.3), asked: ([6.5, 7.5, 9, 8.5], [17, 18.5, 20, 18], [.95, .95, .92, .86], [56, 50, 41, 30])),
        One("M 1", Matched(1), asked: ([12, 20, 17, 9], [30, 34, 26, 18], [.95, .93, .89, .85], [87, 67, 51, 32])),
        Published("P -0.2: like published tables", -0.2),
        Published("P 0", 0),
        Published("P 0.3", 0.3),
        Published("P 1", 1),
        One("S -0.2: same parameters", Same(-0.2), asked: (null, null, [.90, .90, .90, .90], null)),
        One("S 0.3", Same(0.3), asked: ([8, 8, 6, 4.2], [18, 15.5, 13, 9.5], [.95, .95, .95, .95], [77, 60, 43, 29])),
        One("S 1", Same(1), asked: (null, null, [.90, .90, .90, .90], null)),
        One("G2, prior off centre", TrueGrowth.Gompertz, prior: OffCentre, asked: ([5, 4.4, 3.6, 2.6], [13, 11, 9, 6.5], [.95, .95, .95, .95], [55, 41, 30, 22])),
        One("M -0.2, prior off centre", Matched(-0.2), prior: OffCentre, asked: (null, null, [.93, .93, .80, .78], null)),
        One("M 0.3, prior off centre", Matched(0.3), prior: OffCentre, asked: (null, null, [.93, .93, .80, .78], null)),
        One("M 1, prior off centre", Matched(1), prior: OffCentre, asked: (null, null, [.93, .93, .80, .78], null)),
        Unseen("López, matched", TrueGrowth.Lopez, 0.02),
        Unseen("Gompertz, error of a weigh-in 5 %", TrueGrowth.Gompertz, 0.05),
        One("Gompertz, growth slows down by 5 to 25 % from a day in 24 to 49 on", TrueGrowth.SlowDown),
        Untested("G2, irregular ages, some days twice", irregular: true),
        Untested("G2, scale drifts by 0.5 % a week", drift: 0.005),
        Untested("G2, light birds caught twice as easily", slowFirst: true),
        Mixed("G2, mixed birds caught at random", TrueGrowth.Gompertz, GrowthPrior.FastGrowingObjective(Sex.Mixed), [7, 14, 21, 28, 35, 42], [3, 4, 5, 6]),
        Outdoor("Outdoors, Gompertz", 0),
        Outdoor("Outdoors, Richards 0.3 matched to it", 0.3),
        Outdoor("Outdoors, Richards -0.2 matched to it", -0.2),
    ];

    private static TrueGrowthDraw Matched(double shape) => (ref r) => TrueGrowth.Matched(ref r, shape);

    private static TrueGrowthDraw Same(double shape) => (ref r) => TrueGrowth.Same(ref r, shape);

    private static StudyRow Published(string name, double shape) => One(
        name,
        (ref r) => TrueGrowth.PublishedLike(ref r, shape),
        asked: ([13.5, 9, 8.5, 6.5], [33, 22, 20, 14], [.88, .86, .87, .90], [80, 65, 49, 33]));

    private static StudyRow Unseen(string name, TrueGrowthDraw truth, double error) =>
        One(name, truth, error, asked: ([9.5, 7, 7.5, 7], [26, 21, 19, 17], [.93, .93, .93, .80], [63, 55, 45, 28]));

    private static StudyRow Untested(string name, bool irregular = false, double drift = 0, bool slowFirst = false) => new()
    {
        Name = name,
        Truth = TrueGrowth.Gompertz,
        PriorName = "measured",
        Prior = Shipped,
        Irregular = irregular,
        DriftPerWeek = drift,
        SlowFirst = slowFirst,
    };

    private static StudyRow Outdoor(string name, double shape) =>
        Mixed(name, (ref r) => TrueGrowth.Outdoor(ref r, shape), GrowthPrior.FastGrowingOutdoor(Sex.Mixed), [21, 35], [0, 1, 2]) with
        {
            Asked = (null, null, [.85, .85, .85], null),
        };

    private static StudyRow Mixed(string name, TrueGrowthDraw truth, GrowthPrior prior, double[] days, int[] stops) => new()
    {
        Name = name,
        Truth = truth,
        PriorName = prior.Model.Id + ", mixed",
        Prior = prior,
        Days = days,
        Stops = stops,
    };

    private static StudyRow One(
        string name,
        TrueGrowthDraw truth,
        double error = 0.02,
        GrowthPrior? prior = null,
        (double[]? Median, double[]? Ninetieth, double[]? Coverage, double[]? Width) asked = default) => new()
    {
        Name = name,
        Truth = truth,
        PriorName = prior is null ? "measured" : "off centre",
        Prior = prior ?? Shipped,
        WeighInError = error,
        Asked = asked,
    };

    /// <summary>A prior of one sex whose three parameters are independent.</summary>
    public static GrowthPrior Prior(string id, double[] means, double[] deviations) => GrowthPrior.FromMoments(
        new ModelInfo(
            id, "Prior of the study", "W = A exp(-exp(-k (t - t*)))", [new("A", "mature weight", "kg")], [new("Study", "invented", HowKnown.Assumption)], "none", HowKnown.Assumption),
        Sex.Male,
        means,
        [deviations[0] * deviations[0], 0, 0, 0, deviations[1] * deviations[1], 0, 0, 0, deviations[2] * deviations[2]]);
}
