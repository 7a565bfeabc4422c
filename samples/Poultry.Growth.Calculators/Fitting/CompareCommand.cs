using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary><c>compare FILE</c>: a batch against a standard.</summary>
internal static class CompareCommand
{
    /// <summary>An invented standard from the root of the repository.</summary>
    private const string DemoStandard = "samples/Poultry.Growth.Calculators/data/invented-standard.csv";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "compare", "How far a batch is ahead of a standard or behind it, in weight and in days, at each age weighed.", DemoCommand.File + " --standard " + DemoStandard);
        WeighInOptions file = WeighInOptions.AddTo(command);
        Option<string?> standard = new("--standard")
        {
            HelpName = "FILE", Description = "The standard as a table of text (CSV) with its name, year and source, see docs/file-formats.md.", Required = true,
        };
        command.Add(standard);
        CommonOptions common = CommonOptions.AddTo(command);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            WeighInReading? reading = file.Read(words);
            StandardReading table = StandardFile.Read(words.Text(standard)!);
            foreach (string problem in FileProblem.Lines(table.Problems))
            {
                words.Refuse(problem);
            }

            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(CompareAnswer.To(reading!, table, common.Level), common, output, errors);
        });
        return command;
    }

    private static int Print(CompareAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        answer.HasAnswer,
        () => GrowthChart.Of(answer, common.Units),
        () => CompareDocument.Of(answer).ToJson(),
        page => ComparePage.Print(answer, page),
        output,
        errors);
}
