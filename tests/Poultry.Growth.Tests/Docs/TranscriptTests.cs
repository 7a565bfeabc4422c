using System.Reflection;

namespace Poultry.Growth.Tests.Docs;

using Run = Func<string[], TextWriter, TextWriter, int>;

/// <summary>The console prints what the pages show.</summary>
[Collection(ProcessWide.Name)]
public sealed class TranscriptTests : IDisposable
{
    private readonly SamplesCopy samples = new();

    public static TheoryData<string> Pages() => [.. Markdown.Pages];

    public void Dispose() => samples.Dispose();

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_call_on_a_page_prints_what_the_page_shows(string page)
    {
        IReadOnlyList<Transcript> calls = [.. Markdown.BlocksOf(page).Where(block => block.Language == "console").SelectMany(Transcript.In)];
        Run? console = Console();

        if (console is null)
        {
            calls.ShouldBeNone("the console has no Program.Run(string[], TextWriter, TextWriter) yet that could be asked");
        }
        else
        {
            calls.Select(call => Problem(call, console)).OfType<string>().ShouldBeNone();
        }
    }

    [Fact]
    public void Every_command_has_a_heading_on_the_page_of_the_console()
    {
        string[] headings = [.. File.ReadLines(Repository.PathOf("docs/console.md")).Where(line => line.StartsWith("## ", StringComparison.Ordinal)).SelectMany(line => line[3..].Split(", "))];

        ConsoleHelp.Commands().Should().HaveCountGreaterThan(20);
        ConsoleHelp.Commands().Except(headings).ShouldBeNone();
    }

    [Fact]
    public void A_block_is_read_as_calls_with_their_output()
    {
        FencedBlock block = Markdown.Blocks(
            "page.md", ["```console", "$ poultry-growth fit \"a b.csv\" --at 42d", "one  ", "", "two", "$ dotnet run --project samples/Poultry.Growth.Calculators", "```"])[0];

        IReadOnlyList<Transcript> calls = Transcript.In(block);

        calls.Select(call => (call.Place, call.Output)).Should().Equal(("page.md(2)", "one\n\ntwo"), ("page.md(6)", ""));
        calls[0].Arguments.Should().Equal("fit", "a b.csv", "--at", "42d");
        calls[1].Arguments.ShouldBeNone();
    }

    [Theory]
    [InlineData("$ rm -r x")]
    [InlineData("poultry-growth fit")]
    public void Another_program_is_refused(string line)
    {
        Action read = () => Transcript.In(Markdown.Blocks("page.md", ["```console", line, "```"])[0]);

        read.Should().Throw<FormatException>();
    }

    [Fact]
    public void A_wrong_transcript_is_found()
    {
        Transcript call = new("page.md(2)", ["weigh"], "2.5 kg");

        Problem(call, Says("2.5 kg")).Should().BeNull();
        Problem(call, Says("2.6 kg")).Should().Contain("2.6 kg").And.Contain("page.md(2)");
    }

    private static Run Says(string answer) => (_, output, _) =>
    {
        output.WriteLine(answer);
        return 0;
    };

    private static string? Problem(Transcript call, Run console)
    {
        using StringWriter output = new() { NewLine = "\n" };
        console([.. call.Arguments], output, output);
        string printed = Transcript.Trimmed(output.ToString().Split('\n'));
        return printed == call.Output ? null : $"{call.Place} prints\n{printed}";
    }

    private static Run? Console() =>
        Assembly.Load("poultry-growth").GetType("Poultry.Growth.Calculators.Program")
            ?.GetMethod("Run", BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic, [typeof(string[]), typeof(TextWriter), typeof(TextWriter)])
            ?.CreateDelegate<Run>();
}
