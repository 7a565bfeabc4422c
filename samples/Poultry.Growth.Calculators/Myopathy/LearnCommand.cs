using System.CommandLine;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy learn FOLDER</c>: the farm's own rate, from inspections of past batches.</summary>
internal static class LearnCommand
{
    private const string Demo = "samples/Poultry.Growth.Calculators/data/inspections";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("learn", "What the farm's own inspections of past batches teach: its rate, and its next batch.", Demo, MyopathyCommand.Name);
        Argument<string?> folder = new("FOLDER") { Description = "Inspections, one table (CSV) or more, see docs/file-formats.md.", Arity = ArgumentArity.ExactlyOne };
        command.Add(folder);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            FarmLesionRate? farm = words.ReadFarm(words.Text(folder));
            return words.Problems.Count > 0 ? Exit.Refuse(errors, words.Problems) : Print(farm!, common, output, errors);
        });
        return command;
    }

    private static int Print(FarmLesionRate farm, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => LesionChart.Of(farm.NextBatch, "The farm's next batch", common.Level),
        () => LearnDocument.Of(farm, common.Level).ToJson(),
        page => LearnPage.Print(farm, common.Level, page),
        output,
        errors);
}
