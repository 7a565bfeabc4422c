using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Words on the command line carry their units; whatever cannot be read is told with what was expected, and exit 2.</summary>
public sealed class OptionTests
{
    [Theory]
    [InlineData("--target", "2.6", "--target: \"2.6\" has no unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("--target", "2,6kg", "--target: \"2,6kg\" has a decimal comma; write \"2.6kg\"")]
    [InlineData("--target", "0kg", "--target: \"0kg\" is out of range; expected a weight above 0")]
    [InlineData("--target", "heavy", "--target: \"heavy\" does not start with a number; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("--hatch-weight", "42", "--hatch-weight: \"42\" has no unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("--hatch-weight", "0.1g", "--hatch-weight: \"0.1g\" is out of range; expected 20g to 80g")]
    [InlineData("--at", "49", "--at: \"49\" has no unit; expected an age with d or wk, as in 42d")]
    [InlineData("--at", "49,5d", "--at: \"49,5d\" has a decimal comma; write \"49.5d\"")]
    [InlineData("--at", "42d,x", "--at: \"x\" does not start with a number; expected an age with d or wk, as in 42d")]
    [InlineData("--at", "1001d", "--at or --on: an age is out of range; expected ages up to 1000 d")]
    [InlineData("--on", "7.6.2027", "--on: \"7.6.2027\" is not a date; expected year, month and day, as in 2027-04-12")]
    [InlineData("--on", "2027-04-11", "--on: lies before the chicks were placed; expected a later date")]
    [InlineData("--on", "2031-04-11", "--at or --on: an age is out of range; expected ages up to 1000 d")]
    [InlineData("--placed", "12 April", "--placed: \"12 April\" is not a date; expected year, month and day, as in 2027-04-12")]
    [InlineData("--age-at-placement", "1", "--age-at-placement: \"1\" has no unit; expected an age with d or wk, as in 42d")]
    [InlineData("--weight-unit", "stone", "--weight-unit: \"stone\" is no unit of weight; expected g, kg, lb, oz or lb_oz")]
    [InlineData("--errors", "none", "--errors: \"none\" is unknown; expected proportional, iterated, equal, sampling")]
    [InlineData("--cv", "12%", "--cv: belongs to --errors sampling; expected that option too")]
    [InlineData("--weigh-in-error", "2%", "--weigh-in-error: belongs to --errors sampling; expected that option too")]
    [InlineData("--units", "imperial", "--units: \"imperial\" is unknown; expected metric, us")]
    [InlineData("--level", "0,90", "--level: \"0,90\" has a decimal comma; expected a number between 0.5 and 0.999, as in 0.90")]
    [InlineData("--level", "90", "--level: \"90\" is out of range; expected a number between 0.5 and 0.999, as in 0.90")]
    [InlineData("--level", "high", "--level: \"high\" is not a number; expected a number between 0.5 and 0.999, as in 0.90")]
    [InlineData("--where", "pen", "meadow-batch.csv: where \"pen\" has no equals sign; expected column=value, as in Chick=1")]
    [InlineData("--chart", "chart.png", "--chart: \"chart.png\" is no chart; expected a name that ends in .svg")]
    [InlineData("--chart", "", "--chart: \"\" is no chart; expected a name that ends in .svg")]
    public void An_option_that_cannot_be_read_is_told(string option, string word, string message)
    {
        ConsoleRun run = ConsoleRun.Of("fit", ConsoleRun.Demo, option, word);

        run.Should().Be(new ConsoleRun(2, "", message + "\n"));
    }

    [Fact]
    public void A_choice_may_be_typed_in_capitals()
    {
        ConsoleRun.Of("fit", ConsoleRun.Demo, "--family", "Gompertz", "--units", "US").Should().Be(ConsoleRun.Of("fit", ConsoleRun.Demo, "--family", "gompertz", "--units", "us"));
        ConsoleRun.Of("project", ConsoleRun.Demo, "--prior", "Slow").Should().Be(ConsoleRun.Of("project", ConsoleRun.Demo, "--prior", "slow"));
    }

    [Fact]
    public void A_family_that_is_unknown_is_told_with_those_that_there_are() =>
        ConsoleRun.Of("fit", ConsoleRun.Demo, "--family", "straight").Errors
            .Should().Be("--family: \"straight\" is unknown; expected " + string.Join(", ", CurveFamilies.All.Select(family => family.Id)) + "\n");

    [Theory]
    [InlineData("--cv", "12", "--cv: \"12\" has no unit; expected a share with %, as in 5%")]
    [InlineData("--cv", "120%", "--cv: \"120%\" is out of range; expected 0.1 % to 99 %")]
    [InlineData("--weigh-in-error", "2,5%", "--weigh-in-error: \"2,5%\" has a decimal comma; write \"2.5%\"")]
    public void Shares_carry_their_sign(string option, string word, string message) =>
        ConsoleRun.Of("fit", ConsoleRun.Demo, "--errors", "sampling", option, word).Errors.Should().Be(message + "\n");

    [Theory]
    [InlineData("--flock", "many", "--flock: \"many\" is not a number of birds; expected a whole number of 1 or more")]
    [InlineData("--flock", "0", "--flock: \"0\" is not a number of birds; expected a whole number of 1 or more")]
    [InlineData("--flock", "2147483647", "--flock: \"2147483647\" is not a number of birds; expected a whole number of 1 or more")]
    [InlineData("--within", "5", "--within: \"5\" has no unit; expected a share with %, as in 5%")]
    [InlineData("--within", "60%", "--within: \"60%\" is out of range; expected 0.1 % to 50 %")]
    public void An_option_of_weigh_that_cannot_be_read_is_told(string option, string word, string message) =>
        ConsoleRun.Of("weigh", ConsoleRun.Demo, option, word).Should().Be(new ConsoleRun(2, "", message + "\n"));

    [Theory]
    [InlineData("Unrecognized command or argument 'grow'.", "grow")]
    [InlineData("Unrecognized command or argument '--colour'.", "weigh", "f.csv", "--colour")]
    [InlineData("Unrecognized command or argument '@words'.", "@words")]
    [InlineData("Unrecognized command or argument '[diagram]'.", "[diagram]")]
    [InlineData("Required argument 'FILE' missing for command: 'fit'.", "fit")]
    [InlineData("Option '--level' expects a single argument but 2 were provided.", "fit", "f.csv", "--level", "0.9", "--level", "0.8")]
    [InlineData("Required argument missing for option: '--target'.", "fit", "f.csv", "--target")]
    public void What_the_parser_refuses_is_exit_2(string message, params string[] args)
    {
        ConsoleRun run = ConsoleRun.Of(args);

        run.Exit.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines[0].Should().Be(message);
        run.ErrorLines[^1].Should().Be("See poultry-growth --help.");
    }

    [Fact]
    public void Every_parse_error_is_told() => ConsoleRun.Of("fit", "f.csv", "--red", "--green").ErrorLines.Should().HaveCount(3);

    [Fact]
    public void A_date_needs_a_placement()
    {
        using Scratch scratch = new();
        string file = scratch.Write("f.csv", "age_d,weight_g\n7,171\n");

        ConsoleRun.Of("fit", file, "--on", "2027-06-07").Errors.Should().Be(
            "--on: needs the day the chicks were placed and their age that day; expected --placed and --age-at-placement too\n");
    }
}
