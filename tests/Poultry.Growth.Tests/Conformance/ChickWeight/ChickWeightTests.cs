using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>
/// Fits to R's ChickWeight against references computed in 50-digit arithmetic, agreeing with R 4.2.2 (fixtures beside this file). The fit
/// starts from nothing but the weights. Tolerances: parameters 1e-6, standard errors 1e-5, profile limits 1e-3, all relative.
/// </summary>
public class ChickWeightTests
{
    private static readonly Dictionary<string, string> Symbols = new() { ["A"] = "A", ["k"] = "k", ["t*"] = "tstar", ["v"] = "d" };

    public static TheoryData<string, string> ReferenceFits() => Cases("ChickWeight/reference-fits.csv", "family");

    public static TheoryData<string, string, string> WeightedFits()
    {
        TheoryData<string, string, string> cases = [];
        foreach (Table.Row row in Table.Read("ChickWeight/reference-weighted-fits.csv").Rows)
        {
            cases.Add(row.Text("set"), row.Text("family"), row.Text("method"));
        }

        return cases;
    }

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
    public void Least_squares_agree_with_the_reference(string set, string family)
    {
        Table.Row reference = Table.Read("ChickWeight/reference-fits.csv").Rows.Single(row => row.Text("set") == set && row.Text("family") == family);
        GrowthFit fit = GrowthFit.Of(ChickWeightData.Series(set), CurveFamilies.Find(family), ErrorModel.EqualVariance);

        switch (reference.Text("status"))
        {
            case "ok":
                fit.Status.Should().Be(FitStatus.Converged);
                fit.Certificate.Should().BeLessThan(1e-6);
                foreach (FittedParameter parameter in fit.Parameters)
                {
                    string symbol = Symbols[parameter.Parameter.Symbol];
                    ShouldAgree(InGrams(parameter, parameter.Value), reference.Number(symbol), 1e-6, symbol);
                    ShouldAgree(InGrams(parameter, parameter.StandardError), reference.Number("se_" + symbol), 1e-5, "se of " + symbol);
                }

                // A density in 1/kg instead of 1/g: one ln(1000) an observation.
                fit.LogLikelihood.Should().BeApproximately(reference.Number("log_likelihood") + (fit.Observations * Math.Log(1000)), 1e-6);
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
    public void Profile_limits_agree_with_the_exact_ones_and_are_open_where_those_are(string set, string family)
    {
        Table.Row reference = Table.Read("ChickWeight/reference-fits.csv").Rows.Single(row => row.Text("set") == set && row.Text("family") == family);
        if (reference.Text("A_low").Length == 0)
        {
            reference.Text("status").Should().Match(status => status != "ok" || family == "richards", "every other fit has its limits");
            return;
        }

        GrowthFit fit = GrowthFit.Of(ChickWeightData.Series(set), CurveFamilies.Find(family), ErrorModel.EqualVariance);
        IReadOnlyList<Interval<double>> limits = fit.ProfileLimits(0.95);
        for (int i = 0; i < limits.Count; i++)
        {
            string symbol = Symbols[fit.Parameters[i].Parameter.Symbol];
            ShouldAgree(limits[i].Low is { } low ? InGrams(fit.Parameters[i], low) : null, reference.NumberOrNull(symbol + "_low"), 1e-3, symbol + " low");
            ShouldAgree(limits[i].High is { } high ? InGrams(fit.Parameters[i], high) : null, reference.NumberOrNull(symbol + "_high"), 1e-3, symbol + " high");
        }
    }

    [Theory]
    [MemberData(nameof(WeightedFits))]
    public void Weighted_fits_agree_with_the_reference(string set, string family, string method)
    {
        Table.Row reference = Table.Read("ChickWeight/reference-weighted-fits.csv").Rows
            .Single(row => row.Text("set") == set && row.Text("family") == family && row.Text("method") == method);
        (ErrorModel errors, WeighInSeries weighIns) = method switch
        {
            "irls" => (ErrorModel.ProportionalIterated, ChickWeightData.Series(set)),
            "ml" => (ErrorModel.Proportional, ChickWeightData.Series(set)),

            // Logarithms of single chicks: each is a weigh-in of its own.
            _ => (ErrorModel.Sampling(0.10), OneByOne(ChickWeightData.Series(set))),
        };
        GrowthFit fit = GrowthFit.Of(weighIns, CurveFamilies.Find(family), errors);

        fit.Status.Should().Be(FitStatus.Converged);
        foreach (FittedParameter parameter in fit.Parameters)
        {
            string symbol = Symbols[parameter.Parameter.Symbol];
            ShouldAgree(InGrams(parameter, parameter.Value), reference.Number(symbol), 1e-5, symbol);
            if (method == "irls")
            {
                ShouldAgree(InGrams(parameter, parameter.StandardError), reference.Number("se_" + symbol), 1e-5, "se of " + symbol);
            }
        }

        if (method == "ml")
        {
            fit.LogLikelihood.Should().BeApproximately(reference.Number("log_likelihood") + (fit.Observations * Math.Log(1000)), 1e-6);
        }
    }

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

    private static WeighInSeries OneByOne(WeighInSeries series) => WeighInSeries.Of(series.SelectMany(weighIn =>
        weighIn.Kind == WeighInKind.Birds ? weighIn.Weights.Select(weight => WeighIn.Birds(weighIn.Age, weight)) : [weighIn]));

    private static double InGrams(FittedParameter parameter, double value) => parameter.Parameter.Unit == "kg" ? 1000 * value : value;

    private static void ShouldAgree(double? actual, double? expected, double tolerance, string what)
    {
        actual.HasValue.Should().Be(expected.HasValue, "{0}: an open bound is an answer", what);
        if (actual is { } value && expected is { } reference)
        {
            value.Should().BeApproximately(reference, tolerance * Math.Abs(reference), what);
        }
    }
}
