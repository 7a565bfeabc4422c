using System.Globalization;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Fitting;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The first batch of every row of docs/studies/projection.md, projected again: the study was run with this method. Figures are printed to nine digits, exp may differ by machine in the last.</summary>
public class ProjectionStudyTests
{
    private static readonly GrowthPrior OffCentre = ProjectionCases.Prior(Sex.Male, [Math.Log(5.22), Math.Log(0.04004), 44.82], [0.27, 0.16, 4.1]);

    [Fact]
    public void First_cases_come_out_as_in_the_study()
    {
        string[] lines = [.. File.ReadLines(Repository.PathOf("docs/studies/projection-first-cases.csv")).Skip(1)];

        lines.Should().HaveCountGreaterThan(90);
        foreach (string[] cells in lines.Select(line => line.Split(',')))
        {
            Projection projection = cells[2].Length == 0 ? Projection.Of(Prior(cells[1])) : Projection.Of(Series(cells[2]), Prior(cells[1]));
            double[] ours = [.. new double[] { 49, 56, 63 }.SelectMany(days => ProjectionCases.Kilograms(projection.MeanAt(Age.FromDays(days))))];

            ours.Zip(cells.Skip(3).Select(Number), (mine, printed) => Math.Abs((mine / printed) - 1)).Max().Should().BeLessThan(1e-6, "{0} {1}", cells[0], cells[2]);
        }
    }

    private static GrowthPrior Prior(string name) => name switch
    {
        "measured" => ProjectionCases.Measured,
        "off centre" => OffCentre,
        "prior-fast-objective mixed" => GrowthPrior.FastGrowingObjective(Sex.Mixed),
        _ => GrowthPrior.FastGrowingOutdoor(Sex.Mixed),
    };

    private static WeighInSeries Series(string text) => WeighInSeries.Of(text.Split(' ').Select(weighIn => weighIn.Split(':')).Select(cells => WeighIn.Mean(
        Age.FromDays(Number(cells[0])), Mass.FromKilograms(Number(cells[2])), (int)Number(cells[1]), Mass.FromKilograms(Number(cells[3])))));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
