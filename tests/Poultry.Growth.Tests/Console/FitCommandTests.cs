using System.Text.Json;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using static Poultry.Growth.Tests.ConsoleRuns.FitJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>fit</c> prints is what the library says, to nine digits in JSON.</summary>
public sealed class FitCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    private static WeighInSeries Series => WeighInFile.Read(ConsoleRun.Demo).Series!;

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_document_holds_the_library_s_numbers()
    {
        GrowthFit fit = GrowthFit.Of(Series);
        IReadOnlyList<Interval<double>> limits = fit.ProfileLimits(0.90);

        JsonElement json = Fit();

        Text(json, "status").Should().Be("converged");
        Text(json, "family").Should().Be("gompertz");
        Text(json, "errors").Should().Be("proportional");
        Text(json, "limits").Should().Be("profile");
        Number(json, "level").Should().Be(0.9);
        json.GetProperty("parameters").EnumerateObject().Select(parameter => parameter.Name)
            .Should().Equal("matureWeightKg", "ratePerDay", "inflectionAgeDays");
        foreach ((JsonProperty parameter, int at) in json.GetProperty("parameters").EnumerateObject().Select((parameter, at) => (parameter, at)))
        {
            Number(parameter.Value, "estimate").Should().Be(ConsoleRun.Known(fit.Parameters[at].Value));
            Number(parameter.Value, "standardError").Should().Be(ConsoleRun.Known(fit.Parameters[at].StandardError));
            Number(parameter.Value, "low").Should().Be(ConsoleRun.Known(limits[at].Low));
            Number(parameter.Value, "high").Should().Be(ConsoleRun.Known(limits[at].High));
        }

        Number(json, "residualStandardDeviation").Should().Be(ConsoleRun.Known(fit.ResidualStandardDeviation));
        Text(json, "residualStandardDeviationUnit").Should().Be("fraction");
        Number(json, "logLikelihood").Should().Be(ConsoleRun.Known(fit.LogLikelihood));
        Number(json, "aicc").Should().Be(ConsoleRun.Known(fit.Aicc));
        Number(json, "observations").Should().Be(fit.Observations);
        Number(json, "degreesOfFreedom").Should().Be(fit.DegreesOfFreedom);
        json.GetProperty("residuals").GetArrayLength().Should().Be(6);
    }

    [Fact]
    public void Projections_stand_at_the_last_weigh_in_and_the_weeks_after_it()
    {
        GrowthFit fit = GrowthFit.Of(Series);

        JsonElement[] projections = [.. Fit().GetProperty("projections").EnumerateArray()];

        projections.Select(at => Number(at, "ageDays")).Should().Equal(42, 49, 56, 63);
        projections.Select(at => Text(at, "date")).Should().Equal("2027-05-23", "2027-05-30", "2027-06-06", "2027-06-13");
        foreach (JsonElement at in projections)
        {
            Age age = Age.FromDays(Number(at, "ageDays")!.Value);
            Estimate<Mass> mean = fit.MeanAt(age), bird = fit.BirdAt(age)!;
            Number(at, "meanKg").Should().Be(ConsoleRun.Known(mean.Value.Kilograms));
            Number(at, "lowKg").Should().Be(ConsoleRun.Known(mean.Interval.Low!.Value.Kilograms));
            Number(at, "highKg").Should().Be(ConsoleRun.Known(mean.Interval.High!.Value.Kilograms));
            Number(at, "birdLowKg").Should().Be(ConsoleRun.Known(bird.Interval.Low!.Value.Kilograms));
            Number(at, "birdHighKg").Should().Be(ConsoleRun.Known(bird.Interval.High!.Value.Kilograms));
            Codes(at).Should().Equal(age.Days > 42 ? ["beyond-last-weigh-in"] : []);
        }
    }

    [Fact]
    public void Ages_and_dates_are_asked_in_any_order_and_once() =>
        Fit("--at", "8wk,49d", "--at", "49d", "--on", "2027-06-07,2027-05-24").GetProperty("projections").EnumerateArray()
            .Select(at => Number(at, "ageDays")).Should().Equal(43, 49, 56, 57);

    [Fact]
    public void Old_birds_are_projected_two_weeks_on()
    {
        string file = scratch.Write("f.csv", "age_d,mean_weight_g,birds,sd_g\n14,260,20,30\n35,890,20,90\n56,1560,20,150\n77,2080,20,200\n91,2300,20,230\n");

        ConsoleRun.Of("fit", file, "--json").Json.GetProperty("projections").EnumerateArray().Select(at => Number(at, "ageDays")).Should().Equal(91, 98, 105);
    }

    [Fact]
    public void Cautions_and_sources_stand_below()
    {
        JsonElement json = Fit();

        Codes(json).Should().Contain("mature-weight-extrapolated").And.HaveElementAt(Codes(json).Length - 1, "beyond-last-weigh-in");
        json.GetProperty("cautions").EnumerateArray().Should().OnlyContain(caution => Text(caution, "text")!.Length > 20);
        json.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key"))
            .Should().Equal(CurveFamilies.Gompertz.Model.Citations.Select(citation => citation.Key));
        json.GetProperty("sources").EnumerateArray().Should().OnlyContain(source =>
            Text(source, "citation")!.Length > 0 && Text(source, "howKnown")!.Length > 0 && source.GetProperty("locator").ValueKind != JsonValueKind.Undefined);
    }

    [Fact]
    public void The_target_has_its_age_and_its_day()
    {
        Estimate<Age> expected = GrowthFit.Of(Series).AgeAt(Mass.FromKilograms(2.6), 0.8)!;

        JsonElement target = Fit("--target", "2.6kg", "--level", "0.8").GetProperty("target");

        Number(target, "weightKg").Should().Be(2.6);
        Number(target, "ageDays").Should().Be(ConsoleRun.Known(expected.Value.Days));
        Number(target, "lowDays").Should().Be(ConsoleRun.Known(expected.Interval.Low!.Value.Days));
        Number(target, "highDays").Should().Be(ConsoleRun.Known(expected.Interval.High?.Days));
        Text(target, "date").Should().Be("2027-05-31");
        Codes(target).Should().Equal("beyond-last-weigh-in");
    }

    [Fact]
    public void A_target_above_the_mature_weight_is_never_reached()
    {
        JsonElement target = Fit("--target", "30lb").GetProperty("target");

        target.GetProperty("ageDays").ValueKind.Should().Be(JsonValueKind.Null);
        Text(target, "reason").Should().Be("Never 13.608 kg (30 lb): the curve tends to 5.171 kg (11.4 lb).");
        ConsoleRun.Of("fit", ConsoleRun.Demo, "--target", "30lb", "--units", "us").Output.Should().Contain("30.00 lb: " + Text(target, "reason"));
    }
}
