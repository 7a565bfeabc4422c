using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>What fits to R's ChickWeight say of themselves; their figures are in <see cref="ChickWeightChecks"/>.</summary>
public class ChickWeightTests
{
    public static TheoryData<string, string> ReferenceFits() => Cases("ChickWeight/reference-fits.csv", "family");

    public static TheoryData<int, string> OtherChicks()
    {
        TheoryData<int, string> cases = [];
        foreach (Table.Row row in Table.Read("ChickWeight/reference-sums.csv").Rows)
        {
            cases.Add((int)row.Number("chick"), "gompertz");
            cases.Add((int)row.Number("chick"), "logistic");
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(ReferenceFits))]
    public void A_fit_says_whether_it_has_an_optimum(string set, string family)
    {
        ReferenceFit one = ReferenceFit.Of(set, family);
        GrowthFit fit = one.Fit;

        switch (one.Reference.Text("status"))
        {
            case "ok":
                fit.Status.Should().Be(FitStatus.Converged);
                fit.Certificate.Should().BeLessThan(1e-6);
                break;
            case "absurd":
                fit.Status.Should().Be(FitStatus.ImplausibleMatureWeight);
                fit.Curve.Should().BeNull();
                break;
            default:
                fit.Status.Should().BeOneOf(FitStatus.NoFiniteMatureWeight, FitStatus.NotIdentified);
                fit.Curve.Should().BeNull();
                break;
        }
    }

    [Theory]
    [MemberData(nameof(ReferenceFits))]
    public void Profile_limits_are_open_where_the_exact_ones_are(string set, string family)
    {
        ReferenceFit one = ReferenceFit.Of(set, family);

        one.HasLimits.Should().Be(one.HasOptimum && family != "richards", "every other fit has its limits");
        for (int i = 0; one.HasLimits && i < one.Limits.Count; i++)
        {
            (one.Limits[i].Low is null, one.Limits[i].High is null).Should().Be(one.IsOpen(i), "an open bound is an answer");
        }
    }

    [Fact]
    public void Weighted_fits_converge() => ReferenceFit.Weighted.Should().AllSatisfy(one => one.Fit.Status.Should().Be(FitStatus.Converged));

    [Theory]
    [MemberData(nameof(OtherChicks))]
    public void The_other_chicks_end_at_the_least_sum_that_anything_finds_or_say_why_not(int chick, string family)
    {
        WeighInSeries weighIns = ChickWeightData.Series($"chick_{chick}");
        GrowthFit fit = GrowthFit.Of(weighIns, CurveFamilies.Find(family), ErrorModel.EqualVariance);
        double? byR = Table.Read("ChickWeight/reference-sums.csv").Rows.Single(row => (int)row.Number("chick") == chick).NumberOrNull(family);
        double byGrid = StartGrid.LeastSum(weighIns, CurveFamilies.Find(family)!);

        if (fit.Status == FitStatus.Converged)
        {
            fit.Certificate.Should().BeLessThan(1e-6);
            double sum = 1e6 * fit.Residuals().Sum(residual => residual.Difference.Kilograms * residual.Difference.Kilograms);
            sum.Should().BeLessThan(byGrid * (1 + 1e-9));
            if (byR is { } least)
            {
                sum.Should().BeApproximately(least, 1e-6 * least);
            }
        }
        else
        {
            byR.Should().BeNull("R finds an optimum where there is one");
            fit.Status.Should().BeOneOf(FitStatus.NoFiniteMatureWeight, FitStatus.ImplausibleMatureWeight);
            fit.Reason.Should().Contain("mature weight");
        }
    }

    [Fact]
    public void The_sets_with_and_without_a_reference_are_all_there()
    {
        ReferenceFits().Count.Should().Be(26 * 3);
        OtherChicks().Select(row => row[0]).Distinct().Should().HaveCount(27);
        ChickWeightData.WholeChicks.Should().HaveCount(45);
    }

    private static TheoryData<string, string> Cases(string table, string column)
    {
        TheoryData<string, string> cases = [];
        foreach (Table.Row row in Table.Read(table).Rows)
        {
            cases.Add(row.Text("set"), row.Text(column));
        }

        return cases;
    }
}
