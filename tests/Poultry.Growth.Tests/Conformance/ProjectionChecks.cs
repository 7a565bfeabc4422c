using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Fitting;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Projections against programs written apart from this library. The check case: objectives of 2012, males, 184, 477, 943 and 1550 g at 7 to 28 d as means of 50 birds, spread 10 %;
/// tolerance 0.1 %, which is what the method asks of an implementation (figures are printed to 0.001 kg). Ends left out: errors printed in whole %, held within half of that and a rounding.
/// </summary>
internal static class ProjectionChecks
{
    private const string TwoPrograms = "the check case of the method, computed twice by other programs";
    private const string Draws = "the same, 20,000 draws a node in place of Laplace's approximation, whose error the method states as 0.05 to 1.7 %";
    private const string OtherProgram = "another program; the table's sources are in [handbooks](handbooks.md)";

    private static Projection CheckCase => Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);

    public static IEnumerable<OutsideCheck> All =>
    [
        .. Limits("P", TwoPrograms, 49, 0.001, 3.298, 3.785, 4.237),
        .. Limits("P", TwoPrograms, 56, 0.001, 3.769, 4.443, 5.076),
        .. Limits("P", TwoPrograms, 63, 0.001, 4.149, 5.008, 5.828),
        Recomputed("P-g", "weight of the Gompertz curves in it", TwoPrograms, "-", 0.870, 0.00087, () => CheckCase.FamilyWeights[0].After.Fraction),
        .. Limits("PX", Draws, 56, 0.017, 3.791, 4.438, 5.033),
        .. EndLeftOut("objectives 2012 female", 16, 10, 5, 1),
        .. EndLeftOut("objectives 2012 male", 5, 2, 0, -1),
        .. EndLeftOut("NRC 1984 male", 12, -4, -3, 0),
        .. EndLeftOut("NRC 1984 female", 30, 4, -3, -3),
        .. EndLeftOut("Poultry CRC male", 9, 4, 12, 3),
        .. EndLeftOut("Poultry CRC female", 15, 9, 2, 1),
    ];

    private static IEnumerable<OutsideCheck> Limits(string id, string source, double days, double tolerance, params double[] kilograms) => kilograms.Select((expected, at) => Recomputed(
        FormattableString.Invariant($"{id}-{days}{(char)('a' + at)}"), FormattableString.Invariant($"projected mean at {days} d, {(at == 0 ? "5 %" : at == 1 ? "median" : "95 %")}"), source, "kg", expected, tolerance * expected,
        () => ProjectionCases.Kilograms(CheckCase.MeanAt(Age.FromDays(days)))[at]));

    private static IEnumerable<OutsideCheck> EndLeftOut(string table, params double[] percent) => percent.Select((expected, at) =>
    {
        double stop = LeftOut.Stops[at];
        return Recomputed(
            FormattableString.Invariant($"E-{table}-{stop}"), FormattableString.Invariant($"{table}, weighed to {stop} d: error of the projection to 56 d"), OtherProgram, "%", expected, 0.55,
            () => LeftOut.Of(table, stop).Percent);
    });
}
