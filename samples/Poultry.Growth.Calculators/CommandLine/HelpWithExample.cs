using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>The parser's help, and below it an example that works as typed from the root of the repository.</summary>
internal sealed class HelpWithExample(HelpAction help) : SynchronousCommandLineAction
{
    /// <summary>How the examples call this program.</summary>
    public const string Call = "dotnet run --project samples/Poultry.Growth.Calculators --";

    /// <summary>As wide everywhere, since pages show it.</summary>
    private const int Width = 120;

    /// <summary>Whoever asks for help need not have typed the rest.</summary>
    public override bool ClearsParseErrors => true;

    /// <summary>Gives a command and those below it this help.</summary>
    public static void AddTo(Command root)
    {
        HelpOption option = root.Options.OfType<HelpOption>().Single();
        HelpAction help = (HelpAction)option.Action!;
        help.MaxWidth = Width;
        option.Action = new HelpWithExample(help);
    }

    public override int Invoke(ParseResult parseResult)
    {
        int exit = help.Invoke(parseResult);
        string words = parseResult.CommandResult.Command is CalculationCommand { Example: { } example } ? " " + example : "";
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Example:");
        output.WriteLine("  " + (Call + words).TrimEnd('-', ' '));
        return exit;
    }
}
