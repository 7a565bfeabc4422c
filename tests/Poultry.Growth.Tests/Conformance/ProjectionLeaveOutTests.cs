using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Printed weights of 7 d up to a stop, taken as means of 50 birds, projected to 56 d by the prior with which the method was measured: six series, four stops.
/// The tables are smoothed: an easy test.
/// Errors of another program, printed in whole %, are held within half of that and a rounding.
/// </summary>
public class ProjectionLeaveOutTests
{
    private static readonly double[] Stops = [21, 28, 35, 42];

    public static TheoryData<string, double[]> OtherProgram => new()
    {
        { "objectives 2012 female", [16, 10, 5, 1] },
        { "objectives 2012 male", [5, 2, 0, -1] },
        { "NRC 1984 male", [12, -4, -3, 0] },
        { "NRC 1984 female", [30, 4, -3, -3] },
        { "Poultry CRC male", [9, 4, 12, 3] },
        { "Poultry CRC female", [15, 9, 2, 1] },
    };

    [Theory]
    [MemberData(nameof(OtherProgram))]
    public void Errors_are_those_of_the_other_program(string table, double[] percent)
    {
        for (int stop = 0; stop < Stops.Length; stop++)
        {
            Error(table, Stops[stop]).Should().BeApproximately(percent[stop], 0.55, "{0} to {1} d", table, Stops[stop]);
        }
    }

    private static double Error(string table, double stop)
    {
        Projection projection = Projection.Of(Handbook.Series(table, birds: 50, fromDays: 7, toDays: stop), Fitting.ProjectionCases.Measured);
        return 100 * ((projection.MeanAt(Age.FromDays(56)).Value.Grams / Handbook.GramsAt(table, 56)) - 1);
    }
}
