using System.CommandLine;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using UnitsNet;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>No command: the demo batch is fitted, and what else can be asked is listed.</summary>
internal static class DemoCommand
{
    /// <summary>The demo batch from the root of the repository.</summary>
    public const string File = "samples/Poultry.Growth.Calculators/data/" + Name;

    /// <summary>Invented past batches from the root of the repository.</summary>
    public const string History = "samples/Poultry.Growth.Calculators/data/meadow-history";

    private const string Name = "meadow-batch.csv";

    /// <summary>The copy beside the program, which is there wherever it is started from.</summary>
    private static string Copy => Path.Combine(AppContext.BaseDirectory, "data", Name);

    public static int Run(TextWriter output, TextWriter errors, IEnumerable<Command> commands)
    {
        WeighInReading reading = WeighInFile.Read(Copy);
        if (reading.Series is null)
        {
            return Exit.Refuse(errors, FileProblem.Lines(reading.Problems));
        }

        FitQuestion question = new() { Family = CurveFamilies.Gompertz, Errors = ErrorModel.Proportional, Target = Mass.FromKilograms(2.6) };
        FitAnswer answer = FitAnswer.To(question, reading, problem => throw new InvalidOperationException(problem))!;
        Page page = new(output, Units.Metric);
        page.Line("The demo batch (invented), as by: poultry-growth fit " + File + " --target 2.6kg");
        page.Line("");
        FitPage.Print(answer, page);
        page.Title("Commands");
        foreach (Command command in commands)
        {
            page.Line("  " + command.Name.PadRight(11) + command.Description);
        }

        page.Line("  Each explains itself: poultry-growth fit --help");
        return Exit.Done;
    }
}
