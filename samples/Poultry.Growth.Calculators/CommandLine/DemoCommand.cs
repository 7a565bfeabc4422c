using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>No command: the demo batch is planned, and what else can be asked is listed.</summary>
internal static class DemoCommand
{
    /// <summary>The demo batch's weigh-ins from the root of the repository.</summary>
    public const string File = "samples/Poultry.Growth.Calculators/data/meadow-batch.csv";

    /// <summary>Invented past batches from the root of the repository.</summary>
    public const string History = "samples/Poultry.Growth.Calculators/data/meadow-history";

    /// <summary>The copy beside the program, which is there wherever it is started from.</summary>
    private static string Copy => Path.Combine(AppContext.BaseDirectory, "data", Path.GetFileName(PlanCommand.Demo));

    public static int Run(TextWriter output, TextWriter errors, IEnumerable<Command> commands, Waiting waiting)
    {
        BatchFileReading reading = BatchFile.Read(Copy);
        if (reading.Plan is null)
        {
            return Exit.Refuse(errors, [.. FileProblem.Lines(reading.Problems), .. reading.Problems.Count == 0 ? [reading.File + ": " + reading.PlanMissing] : Array.Empty<string>()]);
        }

        return waiting.Run(() =>
        {
            PlanAnswer answer = PlanAnswer.To(new(reading.Plan, reading.File, new() { Progress = waiting }), waiting.Stop);
            waiting.Wipe();
            Page page = new(output, Units.Metric);
            page.Line("The demo batch (invented), as by: poultry-growth plan " + PlanCommand.Demo);
            page.Line("");
            PlanPage.Print(answer, page);
            page.Title("Commands");
            foreach (Command command in commands)
            {
                page.Line("  " + command.Name.PadRight(11) + command.Description);
            }

            page.Line("  Each explains itself: poultry-growth plan --help");
            return Exit.Done;
        });
    }
}
