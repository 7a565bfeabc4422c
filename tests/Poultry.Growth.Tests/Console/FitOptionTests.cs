using System.Text.Json;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using static Poultry.Growth.Tests.ConsoleRuns.FitJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What is fitted, and how, is what the options say.</summary>
public sealed class FitOptionTests : IDisposable
{
    private readonly Scratch scratch = new();

    private static WeighInSeries Series => WeighInFile.Read(ConsoleRun.Demo).Series!;

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("gompertz")]
    [InlineData("logistic")]
    [InlineData("von-bertalanffy")]
    [InlineData("richards")]
    [InlineData("lopez")]
    public void Every_family_can_be_asked_for(string id)
    {
        GrowthFit fit = GrowthFit.Of(Series, CurveFamilies.Find(id));

        JsonElement json = Fit("--family", id);

        Text(json, "family").Should().Be(id);
        json.GetProperty("parameters").EnumerateObject().Select(parameter => Number(parameter.Value, "estimate"))
            .Should().Equal(fit.Parameters.Select(parameter => ConsoleRun.Known(parameter.Value)));
    }

    [Fact]
    public void Parameters_are_named_with_their_units()
    {
        Names("lopez").Should().Equal("matureWeightKg", "hatchWeightKg", "halfwayAgeDays", "exponent");
        Names("richards").Should().Equal("matureWeightKg", "ratePerDay", "inflectionAgeDays", "shape");

        static IEnumerable<string> Names(string family) => Fit("--family", family).GetProperty("parameters").EnumerateObject().Select(parameter => parameter.Name);
    }

    [Theory]
    [InlineData("equal", "kg")]
    [InlineData("proportional", "fraction")]
    [InlineData("iterated", "fraction")]
    [InlineData("sampling", "known")]
    public void Every_error_model_can_be_asked_for(string id, string unit)
    {
        JsonElement json = Fit("--errors", id);

        Text(json, "errors").Should().Be(id);
        Text(json, "residualStandardDeviationUnit").Should().Be(unit);
        Number(json.GetProperty("parameters").GetProperty("matureWeightKg"), "estimate")
            .Should().Be(ConsoleRun.Known(GrowthFit.Of(Series, errors: ErrorModel.Find(id)).Parameters[0].Value));
        json.GetProperty("degreesOfFreedom").ValueKind.Should().Be(id == "sampling" ? JsonValueKind.Null : JsonValueKind.Number);
    }

    [Fact]
    public void Sampling_error_takes_its_spread_and_the_error_of_a_weigh_in() =>
        Number(Fit("--errors", "sampling", "--cv", "12%", "--weigh-in-error", "2%").GetProperty("parameters").GetProperty("ratePerDay"), "standardError")
            .Should().Be(ConsoleRun.Known(GrowthFit.Of(Series, errors: ErrorModel.Sampling(0.12, 0.02)).Parameters[1].StandardError));

    [Fact]
    public void A_given_hatch_weight_leaves_no_profile_limits_and_says_so()
    {
        JsonElement json = Fit("--hatch-weight", "42g");

        Number(json, "hatchWeightKg").Should().Be(0.042);
        Text(json, "limits").Should().Be("none");
        Codes(json).Should().Contain("no-profile-limits");
        JsonElement mature = json.GetProperty("parameters").GetProperty("matureWeightKg");
        (mature.GetProperty("low").ValueKind, mature.GetProperty("high").ValueKind).Should().Be((JsonValueKind.Null, JsonValueKind.Null));
        ConsoleRun.Of("fit", ConsoleRun.Demo, "--hatch-weight", "42g").Output.Should().Contain("Parameters (no limits)");
    }

    [Fact]
    public void Families_are_compared_with_what_they_project()
    {
        IReadOnlyList<ComparedFamily> expected = FamilyComparison.Of(Series);

        JsonElement[] rows = [.. Fit("--compare", "--at", "56d").GetProperty("comparison").EnumerateArray()];

        rows.Select(row => Text(row, "family")).Should().Equal(expected.Select(row => row.Fit.Family.Id));
        rows.Select(row => Number(row, "aiccDifference")).Should().Equal(expected.Select(row => ConsoleRun.Known(row.AiccDifference)));
        rows.Select(row => Number(row, "evidencePercent")).Should().Equal(expected.Select(row => ConsoleRun.Known(100 * row.Weight)));
        rows.Select(row => Number(row.GetProperty("projections")[0], "meanKg"))
            .Should().Equal(expected.Select(row => ConsoleRun.Known(row.Fit.MeanAt(Age.FromDays(56)).Value.Kilograms)));
        Fit().GetProperty("comparison").GetArrayLength().Should().Be(0);
    }

    [Fact]
    public void Without_a_curve_the_reason_and_the_exponential_are_the_answer_and_exit_is_1()
    {
        string file = scratch.Write("f.csv", "age_d,weight_g\n0,40\n5,54\n10,73.5\n15,99.5\n20,135\n25,184\n");

        ConsoleRun text = ConsoleRun.Of("fit", file, "--compare", "--chart", scratch.PathOf("c.svg"));
        ConsoleRun json = ConsoleRun.Of("fit", file, "--json");

        (text.Exit, json.Exit).Should().Be((1, 1));
        text.Output.Should().Contain("No curve (no-finite-mature-weight): ").And.Contain("0.040 kg at hatch, growing 6.1").And.Contain("Sources");
        Text(json.Json, "status").Should().Be("no-finite-mature-weight");
        Text(json.Json, "reason").Should().StartWith("No finite mature weight");
        Number(json.Json.GetProperty("exponential"), "ratePerDay").Should().BeApproximately(0.061, 0.0005);
        json.Json.GetProperty("projections").GetArrayLength().Should().Be(0);
        json.Json.GetProperty("aicc").ValueKind.Should().Be(JsonValueKind.Null);
        scratch.Names().Should().Equal("f.csv");
    }

    [Fact]
    public void Too_few_ages_are_no_answer()
    {
        string file = scratch.Write("f.csv", "age_d,weight_g\n7,171\n14,440\n");

        ConsoleRun.Of("fit", file).Should().Match<ConsoleRun>(run => run.Exit == 1 && run.Output.Contains("No curve (too-few-ages): "));
    }

    [Fact]
    public void Columns_of_other_people_s_files_are_named_by_options()
    {
        // R's ChickWeight, chick 2.
        string file = scratch.Write(
            "f.csv",
            "Chick,Time,weight\n1,0,42\n2,0,40\n2,2,49\n2,4,58\n2,6,72\n2,8,84\n2,10,103\n2,12,122\n2,14,138\n2,16,162\n2,18,187\n2,20,209\n2,21,215\n");

        ConsoleRun run = ConsoleRun.Of("fit", file, "--age-column", "Time", "--weight-column", "weight", "--weight-unit", "g", "--where", "Chick=2");

        run.Exit.Should().Be(0);
        run.Output.Should().Contain("12 weigh-ins of 12 birds, 0 d to 21 d").And.Contain("do not fit --where: 1\n").And.Contain("columns Chick\n");
    }

    [Fact]
    public void An_age_before_the_law_has_any_weight_is_refused()
    {
        // W = 5 (1 - exp(-0.05 (t - 10)))^3 kg weighs nothing before 10 d.
        double[] ages = [16, 22, 28, 34, 40, 48, 56, 64];
        string rows = string.Concat(ages.Select(age => FormattableString.Invariant($"{age},{5000 * Math.Pow(1 - Math.Exp(-0.05 * (age - 10)), 3):0.00000},20\n")));
        string file = scratch.Write("f.csv", "age_d,mean_weight_g,birds\n" + rows);

        ConsoleRun run = ConsoleRun.Of("fit", file, "--family", "von-bertalanffy", "--errors", "equal", "--at", "5d");

        run.Exit.Should().Be(2);
        run.Errors.Should().Be("--at: the fitted von Bertalanffy growth curve has no weight above 0 at 5 d; expected a later age\n");
    }
}
