using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance.FeedTables;

/// <summary>
/// The models against printed feed: the targets that the default was chosen to meet, and what another program worked out, printed in whole points and held to half of one and a rounding;
/// for the steps of Longo to one, since on which day a printed class of ages ends is not said, and worth up to 0.6 points.
/// </summary>
internal static class FeedTableChecks
{
    private const string Printed = "the table's sources are in [feed tables](feed-tables.md)";
    private const string OtherProgram = "another program, from the printed tables of [feed tables](feed-tables.md)";

    private static readonly int[] LateWeeks = [6, 8, 9];

    public static IEnumerable<OutsideCheck> All =>
    [
        .. FeedTable.All.SelectMany(OfDefault),
        Recomputed("FT-max", "default, six tables at 6, 8 and 9 weeks: largest error of cumulative feed", OtherProgram, "%", 6.3, 0.05, () => Late(FeedTableModel.Default).Max(Math.Abs)),
        Recomputed("FT-mean", "the same: mean error", OtherProgram, "%", 3.2, 0.05, () => Late(FeedTableModel.Default).Average(Math.Abs)),
        .. OfModel(FeedTableModel.Default, 6.4, -6, -6, -5, 1, 2, 4, -2, 2, 5, 2, 3, 4, -3, -4, -4, 2, 2, 3),
        .. OfModel(FeedTableModel.Sakomura, 10.7, -2, -7, -9, 6, 1, 0, 2, -1, -1, 5, 1, -1, -5, -11, -13, -1, -6, -8),
        .. OfModel(FeedTableModel.LongoSteps, 14.2, 6, 0, -2, 4, 10, 10, 10, 7, 7, 5, 11, 11, 5, -2, -4, 2, 8, 8),
        .. OfModel(FeedTableModel.LongoOddFemale, 13.8, 6, 0, -2, 9, 12, 11, 10, 7, 7, 10, 13, 12, 5, -1, -4, 7, 9, 9),
        .. OfModel(FeedTableModel.Longo, 13.8, 6, 0, -2, 5, -2, -4, 10, 7, 7, 6, -2, -4, 5, -1, -4, 3, -4, -6),
        .. OfModel(FeedTableModel.Liu, 12.1, 5, 0, -1, 13, 9, 8, 9, 7, 8, 13, 9, 8, 3, -3, -5, 7, 2, 1),
        .. OfModel(FeedTableModel.Fraga, 11.0, 2, -3, -5, 10, 6, 5, 6, 4, 4, 10, 5, 4, 0, -6, -8, 4, -1, -2),
        .. OfModel(FeedTableModel.DarmaniKuhi, 7.4, 1, 1, 1, 0, -1, -1, 4, 6, 9, -1, -2, -2, -7, -8, -8, -9, -11, -10),
        Rest("FT-k0", FeedTableModel.Default, 3, corrected: false, 4.4, 0.05),
        Rest("FT-k3", FeedTableModel.Default, 3, corrected: true, 2.4, 0.05),
        Rest("FT-k4", FeedTableModel.Default, 4, corrected: true, 3.4, 0.05),
        Rest("FT-k5", FeedTableModel.Default, 5, corrected: true, 5.0, 0.05),
        Recomputed("FT-k3max", "the same from a record of 3 weeks: largest error", OtherProgram, "%", 6.3, 0.05, () => FeedTableTests.Rest(FeedTableModel.Default, 3, corrected: true).Worst),
        .. new[] { (FeedTableModel.Sakomura, 7.4, 16.0), (FeedTableModel.Liu, 4.7, 14.4), (FeedTableModel.Longo, 7.0, 21.5), (FeedTableModel.DarmaniKuhi, 5.5, 3.5) }.SelectMany((row, at) => new[]
        {
            Rest(FormattableString.Invariant($"FT-k0{(char)('a' + at)}"), row.Item1, 3, corrected: false, row.Item2, 0.06),
            Rest(FormattableString.Invariant($"FT-k3{(char)('a' + at)}"), row.Item1, 3, corrected: true, row.Item3, 0.06),
        }),
        .. SlowLines(FeedTableModel.Default, [-11, 5, 19], [-16, -9, 9]),
        .. SlowLines(FeedTableModel.Liu, [-6, 2, 9], [-13, -15, -4]),
        .. SlowLines(FeedTableModel.Fraga, [-9, -2, 5], [-16, -18, -8]),
        .. SlowLines(FeedTableModel.Sakomura, [-14, -7, -2], [-21, -23, -14]),
    ];

    private static IEnumerable<OutsideCheck> OfDefault(FeedTable table)
    {
        double[] Cumulative() => table.CumulativeErrors(FeedTableModel.Default)[3..10];
        double[] Weekly() => table.StepErrors(FeedTableModel.Default)[1..9];
        OutsideCheck Row(string id, string what, double tolerance, Func<double[]> errors) =>
            new("FT-" + id + "-" + table.Name, table.Name + what, Printed, Handbook.HowKnown(table.Name), "%", 0, tolerance, () => Furthest(errors())) { Kind = CheckKind.PublishedTable, Figures = () => errors().Length };

        yield return Row("c", ": error of cumulative feed by the default, the worst of weeks 3 to 9", 7, Cumulative);

        // Poultry CRC is noisy: its males eat a flat 1400 g in weeks 8 and 9.
        double bound = table.Name.StartsWith("Poultry CRC", StringComparison.Ordinal) ? 16 : 10;
        yield return Row("w", ": error of the feed of a single week, the worst of weeks 1 to 8", bound, Weekly);
    }

    private static IEnumerable<OutsideCheck> OfModel(FeedTableModel model, double weeklyRms, params double[] errors)
    {
        bool steps = model == FeedTableModel.LongoSteps;
        yield return Differences("FT-m-" + model.Name, model.Name + ", six tables at 6, 8 and 9 weeks: error of cumulative feed", errors, steps ? 1.1 : 0.56, () => Late(model));
        yield return Recomputed("FT-r-" + model.Name, model.Name + ": root mean square of weekly errors", OtherProgram, "%", weeklyRms, steps ? 0.3 : 0.06, () => FeedTableTests.WeeklyRms(model));
    }

    /// <summary>The other program took the fatter body of pullets for these lines; with both sexes each error is 1 to 2 points lower.</summary>
    private static IEnumerable<OutsideCheck> SlowLines(FeedTableModel model, double[] g, double[] s) => new[] { (At: 0, Errors: g), (At: 2, Errors: s) }.Select(row =>
    {
        FeedTable table = FeedTable.SlowAs(Sex.Female)[row.At];
        return Differences("FT-" + table.Name + "-" + model.Name, $"{table.Name} as pullets, {model.Name}, 4, 8 and 12 weeks: error of cumulative feed", row.Errors, 0.56, () =>
        {
            double[] errors = table.CumulativeErrors(model);
            return [errors[2], errors[4], errors[6]];
        });
    });

    private static OutsideCheck Rest(string id, FeedTableModel model, int week, bool corrected, double mean, double tolerance) => Recomputed(
        id, FormattableString.Invariant($"{model.Name}: mean error of the feed from week {week} to 9, {(corrected ? "with" : "without")} a farm's factor"), OtherProgram, "%", mean, tolerance,
        () => FeedTableTests.Rest(model, week, corrected).Mean);

    private static OutsideCheck Differences(string id, string what, double[] expected, double tolerance, Func<double[]> got) =>
        Recomputed(id, what + ", furthest from the other's", OtherProgram, "points", 0, tolerance, () => Furthest([.. got().Zip(expected, (ours, theirs) => ours - theirs)])) with { Figures = () => expected.Length };

    private static double[] Late(FeedTableModel model) => [.. FeedTable.All.SelectMany(table => LateWeeks.Select(week => table.CumulativeErrors(model)[week]))];

    private static double Furthest(double[] errors) => errors.MaxBy(Math.Abs);
}
