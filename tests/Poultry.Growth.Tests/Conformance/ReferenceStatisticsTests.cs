using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Limits of counted shares and numbers of birds to open against exact arithmetic, R and SciPy (Conformance/Data). Tolerance: whole birds none, chances and limits 1e-10 of their size.
/// </summary>
public class ReferenceStatisticsTests
{
    private const double Tolerance = 1e-10;

    [Fact]
    public void Limits_of_a_counted_share_are_those_of_exact_arithmetic()
    {
        foreach (Table.Row row in Table.Read("Data/binomial-intervals.csv").Rows)
        {
            FoundShare share = FoundShare.Of((int)row.Number("k"), (int)row.Number("n"), row.Number("level"));
            foreach ((string name, Interval<BirdPrevalence> interval) in new[] { ("cp", share.ClopperPearson), ("wilson", share.Wilson), ("cc", share.WilsonCorrected), ("jeffreys", share.Jeffreys) })
            {
                ShouldAgree(interval.Low!.Value.Share.Fraction, row.Number(name + "_low"), $"{name} low of {row.Text("k")} of {row.Text("n")}");
                ShouldAgree(interval.High!.Value.Share.Fraction, row.Number(name + "_high"), $"{name} high of {row.Text("k")} of {row.Text("n")}");
            }
        }
    }

    [Fact]
    public void Birds_to_open_are_those_of_exact_arithmetic()
    {
        foreach (Table.Row row in Table.Read("Data/detection.csv").Rows)
        {
            BirdsToOpen answer = BirdsToOpen.ToFind(
                BirdPrevalence.Of(Probability.FromFraction(row.Number("prevalence"))),
                row.Number("confidence"),
                (int?)row.NumberOrNull("flock"),
                Probability.FromFraction(row.Number("se")),
                row.Number("rho"));
            string what = $"flock {row.Text("flock")}, share {row.Text("prevalence")}, seen {row.Text("se")}, rho {row.Text("rho")}";

            answer.Birds.Should().Be((int?)row.NumberOrNull("birds"), what);
            if (row.NumberOrNull("none") is { } none)
            {
                ShouldAgree(answer.ChanceOfNone.Fraction, none, what);
            }
            else
            {
                answer.Reason.Should().Be("it takes more than 2147483647 birds");
            }
        }
    }

    private static void ShouldAgree(double got, double expected, string what) => got.Should().BeApproximately(expected, Tolerance * expected, what);
}
