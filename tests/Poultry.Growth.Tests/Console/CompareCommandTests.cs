using System.Text.Json;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using static Poultry.Growth.Tests.ConsoleRuns.FitJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>compare</c> prints is what the library says.</summary>
public sealed class CompareCommandTests : IDisposable
{
    private const string Label = "# name: Made up\n# year: 2022\n# source: nobody\nage_d,weight_g\n";

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_document_holds_the_library_s_numbers()
    {
        IReadOnlyList<StandardDifference> expected = StandardComparison.Of(
            WeighInFile.Read(ConsoleRun.Demo).Series!, StandardFile.Read(ConsoleRun.Standard).Standard!, 0.8);

        JsonElement json = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", ConsoleRun.Standard, "--level", "0.8", "--json").Json;

        JsonElement[] rows = [.. json.GetProperty("byAge").EnumerateArray()];
        rows.Should().HaveCount(6);
        foreach ((JsonElement row, StandardDifference age) in rows.Zip(expected))
        {
            Number(row, "ageDays").Should().Be(age.Age.Days);
            Number(row, "differenceKg").Should().Be(ConsoleRun.Known(age.Difference!.Value.Kilograms));
            Number(row, "lowKg").Should().Be(ConsoleRun.Known(age.Difference.Interval.Low!.Value.Kilograms));
            Number(row, "highKg").Should().Be(ConsoleRun.Known(age.Difference.Interval.High!.Value.Kilograms));
            Number(row, "daysAhead").Should().Be(ConsoleRun.Known(age.Ahead!.Value.Days));
            Number(row, "daysAheadLow").Should().Be(ConsoleRun.Known(age.Ahead.Interval.Low!.Value.Days));
            Number(row, "daysAheadHigh").Should().Be(ConsoleRun.Known(age.Ahead.Interval.High!.Value.Days));
        }

        Text(rows[^1], "date").Should().Be("2027-05-23");
        Number(json.GetProperty("standard"), "year").Should().Be(2027);
        Number(json, "level").Should().Be(0.8);
        Codes(json).Should().Equal("standard-is-target", "caught-birds");
        json.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key")).Should().StartWith("Standard2027").And.Contain("Student1908");
    }

    [Fact]
    public void Where_the_standard_does_not_reach_there_is_null_and_a_dash()
    {
        string standard = scratch.Write("s.csv", Label + "21,700\n28,1100\n");

        ConsoleRun text = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", standard);
        JsonElement row = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", standard, "--json").Json.GetProperty("byAge")[0];

        text.Exit.Should().Be(0);
        text.Output.Should().Contain("Standard: Made up, 2022\n").And.MatchRegex(@"\|     7 \|.*\|        - \|          - \|");
        ((string[])["standardKg", "differenceKg", "lowKg", "highKg", "daysAhead", "daysAheadLow", "daysAheadHigh"]).Select(key => Number(row, key))
            .Should().OnlyContain(number => number == null);
    }

    [Fact]
    public void A_standard_of_other_ages_and_weights_is_no_answer()
    {
        string standard = scratch.Write("s.csv", Label + "100,7000\n120,8000\n");

        ConsoleRun run = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", standard, "--chart", scratch.PathOf("c.svg"));

        run.Exit.Should().Be(1);
        run.Output.Should().Contain("No answer: the standard covers none of these ages and weights.");
        scratch.Names().Should().Equal("s.csv");
    }

    [Fact]
    public void Problems_of_both_files_are_told_at_once()
    {
        string batch = scratch.Write("b.csv", "age_d,weight_g\n7,x\n");
        string standard = scratch.Write("s.csv", "age_d,weight_g\n7,y\n14,400\n");

        ConsoleRun run = ConsoleRun.Of("compare", batch, "--standard", standard);

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().HaveCount(5).And.ContainSingle(line => line.StartsWith("b.csv:2:3: ", StringComparison.Ordinal))
            .And.ContainSingle(line => line.StartsWith("s.csv:2:3: ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_standard_is_due_and_those_that_come_with_the_library_are_listed()
    {
        ConsoleRun none = ConsoleRun.Of("compare", ConsoleRun.Demo);
        ConsoleRun unknown = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", "objectives-2013");

        (none.Exit, unknown.Exit).Should().Be((2, 2));
        none.ErrorLines[0].Should().Be("--standard: is missing; expected a file (CSV), or one of");
        unknown.ErrorLines[0].Should().Be("--standard: \"objectives-2013\" is no standard and there is no such file; expected a file (CSV), or one of");
        none.ErrorLines[1..].Should().Equal(unknown.ErrorLines[1..]).And.HaveCount(GrowthStandard.All.Count)
            .And.Contain("  objectives-2012-male    Breeder's objectives 2012, males");
    }

    [Fact]
    public void A_standard_of_the_library_is_taken_by_its_name()
    {
        IReadOnlyList<StandardDifference> expected = StandardComparison.With(WeighInFile.Read(ConsoleRun.Demo).Series!, GrowthStandard.Find("objectives-2012-female")!);

        JsonElement json = ConsoleRun.Of("compare", ConsoleRun.Demo, "--standard", "Objectives-2012-Female", "--json").Json;

        Number(json.GetProperty("byAge")[5], "differenceKg").Should().Be(ConsoleRun.Known(expected[5].Difference!.Value.Kilograms));
        (Text(json.GetProperty("standard"), "id"), Number(json.GetProperty("standard"), "year")).Should().Be(("objectives-2012-female", 2012));
        json.GetProperty("standard").GetProperty("file").ValueKind.Should().Be(JsonValueKind.Null);
        Codes(json).Should().StartWith("standard-is-target").And.Contain("standard-of-other-sex");
        Text(json.GetProperty("sources")[0], "key").Should().Be("Objectives2012");
    }
}
