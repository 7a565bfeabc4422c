using System.Text.RegularExpressions;

namespace Poultry.Growth.Tests.Docs;

/// <summary>A call of the console as a page shows it, with what it prints.</summary>
/// <param name="Place">Page and line.</param>
/// <param name="Arguments">What follows the program's name.</param>
/// <param name="Output">What the page says it prints, line ends trimmed.</param>
internal sealed partial record Transcript(string Place, IReadOnlyList<string> Arguments, string Output)
{
    private const string Prompt = "$ ";

    private static readonly string[] Programs =
        ["dotnet run --project samples/Poultry.Growth.Calculators --", "dotnet run --project samples/Poultry.Growth.Calculators", "poultry-growth"];

    /// <summary>The calls in a console block.</summary>
    /// <exception cref="FormatException">It starts with something else than a call of our program.</exception>
    public static IReadOnlyList<Transcript> In(FencedBlock block)
    {
        string[] lines = block.Text.Split('\n');
        int[] calls = [.. Enumerable.Range(0, lines.Length).Where(i => lines[i].StartsWith(Prompt, StringComparison.Ordinal))];
        if (calls is not [0, ..])
        {
            throw new FormatException($"{block}: a console block starts with a call, after \"{Prompt}\".");
        }

        return
        [
            .. calls.Zip(calls.Skip(1).Append(lines.Length), (call, next) => new Transcript(
                $"{block.File}({block.Line + 1 + call})", Words(lines[call][Prompt.Length..], block), Trimmed(lines[(call + 1)..next]))),
        ];
    }

    public static string Trimmed(IEnumerable<string> lines) => string.Join('\n', lines.Select(line => line.TrimEnd())).TrimEnd();

    private static string[] Words(string command, FencedBlock block)
    {
        string program = Array.Find(Programs, name => command == name || command.StartsWith(name + " ", StringComparison.Ordinal))
            ?? throw new FormatException($"{block}: \"{command}\" is no call of our program; other commands belong in a bash block.");
        return Split(command[program.Length..]);
    }

    /// <summary>Words as a shell sees them: quotes hold one together, nothing else is special.</summary>
    private static string[] Split(string text) => [.. Word().Matches(text).Select(word => Quotes().Replace(word.Value, "$1$2"))];

    [GeneratedRegex("""(?:"[^"]*"|'[^']*'|[^\s"'])+""")]
    private static partial Regex Word();

    [GeneratedRegex("""
        "([^"]*)"|'([^']*)'
        """)]
    private static partial Regex Quotes();
}
