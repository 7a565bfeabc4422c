using System.Text;
using Poultry.Growth.Calculators;
using Poultry.Growth.Calculators.CommandLine;
using Poultry.Growth.Calculators.Planning;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What holds for the program as a whole: the demo, help, who waits, and its own faults.</summary>
public sealed class ProgramTests
{
    private const string Call = "  dotnet run --project samples/Poultry.Growth.Calculators";

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
    [InlineData("history")]
    [InlineData("compare")]
    [InlineData("reconcile")]
    [InlineData("myopathy")]
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

    [Fact]
    public void A_fault_of_the_program_is_one_line_and_exit_70()
    {
        using BrokenWriter output = new();
        using StringWriter errors = new() { NewLine = "\n" };

        int exit = Program.Run(["fit", ConsoleRun.Demo], output, errors);

        exit.Should().Be(70);
        errors.ToString().Should().Be("Program error: Torn ribbon. Please report it with the command and the file.\n");
    }

    /// <summary>A fault that no input can cause.</summary>
    private sealed class BrokenWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new InvalidOperationException("Torn\nribbon.");
    }
}
