using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Docs;

/// <summary>What the console says about itself.</summary>
internal static class ConsoleHelp
{
    public static string Of(string command) => ConsoleRun.Of([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]).Output;

    /// <summary>The names of the commands, as listed by the help of the program, or of a command that has some.</summary>
    public static IReadOnlyList<string> Commands(string of = "") =>
    [
        .. Of(of).Split('\n').SkipWhile(line => line != "Commands:").Skip(1).TakeWhile(line => line.StartsWith("  ", StringComparison.Ordinal))
            .Where(line => line[2] != ' ').Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[0]),
    ];
}
