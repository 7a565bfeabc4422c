using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;

namespace Poultry.Growth.Calculators;

/// <summary>The console: words in, one calculation of the library, tables or JSON out.</summary>
public static class Program
{
    /// <summary>Runs one command as if typed.</summary>
    /// <param name="args">What follows the program's name.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where complaints go.</param>
    /// <returns>0 done, 1 no answer, 2 input wrong, 70 program error.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter errors)
    {
        using Waiting nobody = Waiting.Nobody();
        return Run(args, output, errors, nobody);
    }

    /// <inheritdoc cref="Run(string[], TextWriter, TextWriter)"/>
    /// <param name="args">What follows the program's name.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where complaints go.</param>
    /// <param name="waiting">Who waits; where they stop it, 130 is returned.</param>
    internal static int Run(string[] args, TextWriter output, TextWriter errors, Waiting waiting)
    {
        (CultureInfo culture, CultureInfo language) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (CultureInfo.InvariantCulture, CultureInfo.InvariantCulture);
        try
        {
            // "@words" is no response file here.
            ParseResult parsed = Root(output, errors, waiting).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
            string[] faults = [.. Directives(parsed), .. parsed.Errors.Select(error => error.Message)];
            return faults.Length > 0
                ? Exit.Refuse(errors, [.. faults, "See poultry-growth --help."])
                : parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
        }
        catch (OperationCanceledException) when (waiting.Stop.IsCancellationRequested)
        {
            errors.WriteLine("Stopped. Nothing was written.");
            return Exit.Stopped;
        }
        catch (Exception exception) when (exception is not OutOfMemoryException)
        {
            errors.WriteLine("Program error: " + exception.Message.ReplaceLineEndings(" ") + " Please report it with the command and the file.");
            return Exit.ProgramError;
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, language);
        }
    }

    /// <summary>The parser passes over words in square brackets before the command; we know none.</summary>
    private static IEnumerable<string> Directives(ParseResult parsed) => parsed.Tokens
        .Where(token => token.Type == TokenType.Directive)
        .Select(token => "Unrecognized command or argument '" + token.Value + "'.");

    private static int Main(string[] args)
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using Waiting waiting = Waiting.AtTerminal();
        return Run(args, Console.Out, Console.Error, waiting);
    }

    private static RootCommand Root(TextWriter output, TextWriter errors, Waiting waiting)
    {
        RootCommand root = new("Meat birds raised in batches: their growth, feed, room, plant and packs, and which day to kill them on. Without a command the demo batch is planned.");
        root.Directives.Clear();
        root.Add(WeighCommand.Create(output, errors));
        root.Add(FitCommand.Create(output, errors));
        root.Add(ProjectCommand.Create(output, errors));
        root.Add(HistoryCommand.Create(output, errors));
        root.Add(CompareCommand.Create(output, errors));
        root.Add(CutsCommand.Create(output, errors));
        root.Add(NewCommand.Create(output, errors));
        root.Add(PlanCommand.Create(output, errors, waiting));
        root.Add(ReconcileCommand.Create(output, errors, waiting));
        root.Add(SeasonCommand.Create(output, errors, waiting));
        root.Add(FeedCommand.Create(output, errors));
        root.Add(EnergyCommand.Create(output, errors));
        root.Add(WaterCommand.Create(output, errors));
        root.Add(FiguresCommand.Create(output, errors));
        root.Add(WithdrawalCommand.Create(output, errors));
        root.Add(HeatCommand.Create(output, errors));
        root.Add(MyopathyCommand.Create(output, errors));
        root.Add(SpaceCommand.Create(output, errors));
        root.Add(BrooderCommand.Create(output, errors));
        root.Add(PastureCommand.Create(output, errors));
        root.Add(CratesCommand.Create(output, errors));
        root.Add(AirCommand.Create(output, errors));
        root.Add(StandardsCommand.Create(output, errors));
        root.SetAction(_ => DemoCommand.Run(output, errors, root.Subcommands, waiting));
        HelpWithExample.AddTo(root);
        return root;
    }
}
