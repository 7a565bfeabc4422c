using System.CommandLine;
using Poultry.Growth.Curves;
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
            HelpName = "NAME|FILE",
            Description = "The standard: " + string.Join(", ", GrowthStandard.All.Select(known => known.Id)) + ", or a table of text (CSV) with its name, year and source, see docs/file-formats.md.",
        };
        command.Add(standard);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            WeighInReading? reading = file.Read(words);
            ComparedStandard? against = ComparedStandard.Read(words, standard);
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(CompareAnswer.To(reading!, against!, common.Level), common, output, errors);
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
