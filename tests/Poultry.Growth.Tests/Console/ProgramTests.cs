using System.Globalization;
using System.Text;
using Poultry.Growth.Calculators;
using Poultry.Growth.Calculators.CommandLine;
using Poultry.Growth.Calculators.Planning;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What holds for the program as a whole: the demo, help, units, cultures, and its own faults.</summary>
public sealed class ProgramTests
{
    private const string Call = "  dotnet run --project samples/Poultry.Growth.Calculators";

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

    [Fact]
    public void Without_arguments_the_demo_batch_is_planned_and_the_commands_are_listed()
    {
        ConsoleRun run = ConsoleRun.Of();

        run.Exit.Should().Be(0);
        run.Errors.Should().BeEmpty();
        run.Output.Should().StartWith("The demo batch (invented), as by: poultry-growth plan samples/").And.Contain("\nKill on 2027-06-08 at 58 d: ").And.Contain("| 2027-06-08 <- |")
            .And.Contain("\n  weigh   ").And.Contain("\n  fit     ").And.Contain("\n  plan    ").And.Contain("\n  compare  ").And.Contain("\n  myopathy ");
        run.Output.Should().Contain(ConsoleRun.Of("plan", Repository.PathOf(PlanCommand.Demo)).Output.TrimEnd(), "the demo is the command that it names");
    }

    [Fact]
    public void A_calculation_that_is_stopped_says_so_and_leaves_nothing()
    {
        using Scratch scratch = new();
        using StringWriter output = new(), errors = new() { NewLine = "\n" };
        using Waiting waiting = new(null, TimeSpan.Zero, new CancellationToken(canceled: true));

        int exit = Program.Run(
            ["plan", Repository.PathOf(PlanCommand.Demo), "--ics", scratch.PathOf("a.ics"), "--chart", scratch.PathOf("a.svg")], output, errors, waiting);

        (exit, output.ToString(), errors.ToString()).Should().Be((130, "", "Stopped. Nothing was written.\n"));
        scratch.Names().Should().BeEmpty();
    }

    [Fact]
    public void Progress_is_told_on_a_terminal_and_wiped_before_the_answer()
    {
        using StringWriter output = new(), errors = new(), terminal = new();
        using Waiting waiting = new(terminal, TimeSpan.Zero);

        Program.Run(["plan", Repository.PathOf(PlanCommand.Demo), "--draws", "500"], output, errors, waiting).Should().Be(0);

        terminal.ToString().Should().StartWith("\rTrying fates of the batch: ").And.Contain("100 %").And.EndWith(" \r");
        errors.ToString().Should().BeEmpty();
        ConsoleRun.Of("plan", Repository.PathOf(PlanCommand.Demo), "--draws", "500").Errors.Should().BeEmpty("nobody waits at a pipe");
    }

    [Fact]
    public void The_demo_says_that_it_is_invented_and_nothing_in_it_looks_wrong()
    {
        File.ReadLines(ConsoleRun.Demo).First().Should().StartWith("# Invented");
        File.ReadLines(Repository.PathOf(PlanCommand.Demo)).First().Should().StartWith("// Invented");
        ConsoleRun.Of("fit", ConsoleRun.Demo).Output.Should().NotContain("Looks wrong").And.NotContain("weigh-ins-scatter");
    }

    [Fact]
    public void Tables_come_first_then_cautions_then_sources()
    {
        string output = ConsoleRun.Of("fit", ConsoleRun.Demo, "--compare").Output;

        int[] places = [.. ((string[])["Parameters (", "Weight by age", "Curves compared", "\nCautions\n", "\nSources\n"]).Select(part => output.IndexOf(part, StringComparison.Ordinal))];
        places.Should().BeInAscendingOrder().And.NotContain(-1);
    }

    [Theory]
    [InlineData]
    [InlineData("fit")]
    [InlineData("weigh")]
    [InlineData("project")]
    [InlineData("compare")]
    [InlineData("feed")]
    [InlineData("energy")]
    [InlineData("water")]
    [InlineData("figures")]
    [InlineData("withdrawal")]
    [InlineData("heat")]
    [InlineData("cuts")]
    [InlineData("plan")]
    [InlineData("space")]
    [InlineData("brooder")]
    [InlineData("pasture")]
    [InlineData("crates")]
    [InlineData("air")]
    [InlineData("standards")]
    [InlineData("season")]
    public void Help_ends_with_an_example_that_works(params string[] command)
    {
        ConsoleRun help = ConsoleRun.Of([.. command, "--help"]);

        string example = help.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)[^1];
        string[] words = [.. example[Call.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word != "--")];
        help.Exit.Should().Be(0);
        example.Should().StartWith(Call);
        words.Take(1).Should().Equal(command);

        // As typed from the root of the repository.
        ConsoleRun run = ConsoleRun.Of([.. ConsoleRun.FromRoot(words)]);
        run.Exit.Should().Be(0, run.Errors);
    }

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
    public void A_fault_of_the_program_is_one_line_and_exit_70()
    {
        using BrokenWriter output = new();
        using StringWriter errors = new() { NewLine = "\n" };

        int exit = Program.Run(["fit", ConsoleRun.Demo], output, errors);

        exit.Should().Be(70);
        errors.ToString().Should().Be("Program error: Torn ribbon. Please report it with the command and the file.\n");
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

    /// <summary>A fault that no input can cause.</summary>
    private sealed class BrokenWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new InvalidOperationException("Torn\nribbon.");
    }
}
