using System.Text.Json;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>energy</c> prints is what the library says.</summary>
public class EnergyCommandTests
{
    [Fact]
    public void The_figures_are_those_of_the_library()
    {
        JsonElement json = Json("--weight", "2kg", "--gain", "95g/d", "--temp", "5C", "--age", "35d", "--sex", "male", "--diet", "3100kcal/kg");
        EnergyNeed need = EnergyModel.HeatProduction.Need(Sex.Male, Mass.FromKilograms(2), MassFlow.FromGramsPerDay(95), Temperature.FromDegreesCelsius(5), Age.FromDays(35));

        json.GetProperty("model").GetString().Should().Be("heat-production");
        Number(json, "maintenanceKcalPerDay").Should().BeApproximately(365.6, 0.05);
        Number(json, "temperatureKcalPerDay").Should().BeApproximately(71.3, 0.05);
        Number(json, "gainKcalPerDay").Should().BeApproximately(192.7, 0.05);
        Number(json, "energyKcalPerDay").Should().BeApproximately(Calories.PerDay(need.Total), 1e-4);
        Number(json, "feedGPerDay").Should().BeApproximately(need.FeedPerDay(Calories.PerKilogram(3100)).Value.Grams, 1e-4);
        Number(json, "feedLowGPerDay").Should().BeLessThan(Number(json, "feedGPerDay"));
        Number(json, "energyHighKcalPerDay").Should().BeGreaterThan(Number(json, "energyKcalPerDay"));
        json.GetProperty("byModel").EnumerateArray().Should().OnlyContain(model => Number(model, "feedLowGPerDay") < Number(model, "feedGPerDay") && Number(model, "feedGPerDay") < Number(model, "feedHighGPerDay")
            && Number(model, "energyLowKcalPerDay") < Number(model, "energyKcalPerDay") && Number(model, "energyKcalPerDay") < Number(model, "energyHighKcalPerDay"));
        json.GetProperty("byModel").EnumerateArray().Select(model => model.GetProperty("model").GetString()).Should().HaveCount(8).And.Contain("longo-2006-odd-female");
    }

    [Fact]
    public void A_printed_example_is_met() // Longo et al. 2006, male, 1.5 kg, 70 g/d, 23 °C, 3.10 kcal/g
    {
        JsonElement json = Json("--weight", "1.5kg", "--gain", "70g/d", "--temp", "23C", "--age", "32d", "--sex", "male", "--diet", "3100kcal/kg", "--model", "longo-2006");

        Number(json, "maintenanceKcalPerDay").Should().BeApproximately(157.57, 0.005);
        Number(json, "gainKcalPerDay").Should().BeApproximately(294.70, 0.005);
        Number(json, "feedGPerDay").Should().BeApproximately(145.9, 0.05);
    }

    [Fact]
    public void Pounds_in_are_kilograms_in_and_what_is_assumed_is_said()
    {
        JsonElement json = Json("--weight", "4.40924524lb", "--gain", "2.4691773oz/d"), metric = Json("--weight", "2kg", "--gain", "70g/d");

        Number(json, "energyKcalPerDay").Should().BeApproximately(Number(metric, "energyKcalPerDay"), 1e-3);
        json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Equal("age-assumed", "diet-assumed", "bird-grows-as-its-type");
        ConsoleRun.Of("energy", "--weight", "2kg", "--gain", "70g/d", "--units", "us").Output.Split("\nCautions\n")[0].Should().Contain("lb").And.NotMatchRegex(@"\bkg\b");
    }

    [Fact]
    public void Wrong_words_are_told_together()
    {
        ConsoleRun run = ConsoleRun.Of("energy", "--weight", "20kg", "--gain", "70", "--temp", "70C", "--diet", "12kcal/kg", "--model", "best");

        run.Exit.Should().Be(2);
        run.ErrorLines.Select(line => line.Split(':')[0]).Should().BeEquivalentTo("--weight", "--gain", "--temp", "--diet", "--model");
        ConsoleRun.Of("energy", "--weight", "2kg", "--gain", "70g/d", "--model", "longo-2006-steps").ErrorLines.Should().ContainSingle(line => line.StartsWith("--age: is missing"));
    }

    private static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["energy", "--json", .. words]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }

    private static double Number(JsonElement node, string key) => node.GetProperty(key).GetDouble();
}
