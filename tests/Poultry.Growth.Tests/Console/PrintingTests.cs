using System.Globalization;
using Poultry.Growth.Calculators.Planning;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>How the program prints: units, cultures, names of files, pipes.</summary>
public sealed class PrintingTests
{
    private static readonly string[][] Calls =
    [
        [], ["--help"], ["fit", ConsoleRun.Demo, "--compare", "--target", "2.6kg"], ["fit", ConsoleRun.Demo, "--json", "--level", "0.90"],
        ["weigh", ConsoleRun.Demo, "--units", "us"], ["fit", ConsoleRun.Demo, "--level", "0,9"], ["fit"],
        ["project", ConsoleRun.Demo, "--target", "2.6kg", "--bands", "1.8kg,2.6kg", "--next-weigh-in", "20@49d"], ["project", "--json"],
        ["compare", ConsoleRun.Demo, "--standard", ConsoleRun.Standard],
        ["plan", Repository.PathOf(PlanCommand.Demo), "--draws", "100", "--split", "40%"], ["plan", Repository.PathOf(PlanCommand.Demo), "--draws", "100", "--json"],
        ["cuts", "--live", "2.9kg", "--birds", "120", "--live-state", "12h", "--order", "40%", "--prices", Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-prices.csv")],
    ];

    /// <summary>What they print in the invariant culture.</summary>
    private static readonly Lazy<ConsoleRun[]> Printed = new(() => [.. Calls.Select(ConsoleRun.Of)]);

    [Theory]
    [InlineData("fit")]
    [InlineData("weigh")]
    [InlineData("project", "--target", "2.6kg", "--bands", "2kg,3kg", "--next-weigh-in", "20@49d")]
    [InlineData("compare", "--standard", ConsoleRun.StandardFromRoot)]
    public void Pounds_and_kilograms_are_never_mixed(string command, params string[] options)
    {
        string[] words = [command, ConsoleRun.Demo, .. ConsoleRun.FromRoot(options)];
        string pounds = ConsoleRun.Of([.. words, "--units", "us"]).Output.Split("\nCautions\n")[0];

        pounds.Should().Contain("lb").And.NotMatchRegex(@"\bkg\b").And.NotMatchRegex(@"\d g\b");
        ConsoleRun.Of(words).Output.Split("\nCautions\n")[0].Should().Contain("kg").And.NotMatchRegex(@"\blb\b");
    }

    [Theory]
    [InlineData("fit")]
    [InlineData("weigh")]
    [InlineData("project", "--target", "5lb")]
    [InlineData("compare", "--standard", ConsoleRun.StandardFromRoot)]
    public void Json_is_metric_whatever_the_units(string command, params string[] options)
    {
        string[] words = [command, ConsoleRun.Demo, "--json", .. ConsoleRun.FromRoot(options)];

        ConsoleRun.Of([.. words, "--units", "us"]).Output.Should().Be(ConsoleRun.Of(words).Output).And.StartWith("{");
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ru-RU")]
    [InlineData("tr-TR")]
    public void Every_culture_prints_the_same_bytes_and_stays_as_it_was(string name)
    {
        using Scratch scratch = new();
        ConsoleRun[] expected = Printed.Value;
        ConsoleRun.Of("project", ConsoleRun.Demo, "--chart", scratch.PathOf("here.svg"));
        (CultureInfo culture, CultureInfo language) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo other = CultureInfo.GetCultureInfo(name);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (other, other);

            Calls.Select(ConsoleRun.Of).Should().Equal(expected);
            ConsoleRun.Of("project", ConsoleRun.Demo, "--chart", scratch.PathOf("there.svg"));

            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture).Should().Be((other, other));
            File.ReadAllBytes(scratch.PathOf("there.svg")).Should().Equal(File.ReadAllBytes(scratch.PathOf("here.svg")));
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, language);
        }
    }

    [Fact]
    public void Names_of_files_are_no_markup()
    {
        using Scratch scratch = new();
        string file = scratch.Write("[red]pen [2].csv", File.ReadAllText(ConsoleRun.Demo));

        ConsoleRun.Of("weigh", file).Output.Should().StartWith("Weigh-ins of [red]pen [2].csv: ");
    }

    [Fact]
    public void Tables_read_in_a_pipe()
    {
        string[] rows = [.. ConsoleRun.Of("fit", ConsoleRun.Demo).Output.Split('\n').Where(line => line.StartsWith('|') || line.StartsWith('+'))];

        rows.Should().HaveCountGreaterThan(15).And.OnlyContain(row => row.All(char.IsAscii) && row.Length <= 100);
    }
}
