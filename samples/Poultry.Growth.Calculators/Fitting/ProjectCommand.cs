using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary><c>project [FILE]</c>: what a batch will weigh, from what was known beforehand and the weigh-ins so far.</summary>
internal static class ProjectCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "project",
            "What a batch will weigh, and how sure that is, from what was known beforehand and its weigh-ins so far: none, or any number.",
            DemoCommand.File + " --at 56d --target 2.6kg --bands 2.2kg,3kg");
        WeighInOptions file = WeighInOptions.AddOptionalTo(command);
        ProjectOptions project = ProjectOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            (_, WeighInReading? reading, BatchCalendar? calendar) = file.ReadIfGiven(words);
            ProjectQuestion? question = project.Read(words, calendar, common.Level);
            ProjectAnswer? answer = words.Problems.Count == 0 ? ProjectAnswer.To(question!, reading, calendar!, words.Refuse) : null;
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static int Print(ProjectAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => ProjectionChart.Of(answer, common.Units),
        () => ProjectDocument.Of(answer).ToJson(),
        page => ProjectPage.Print(answer, page),
        output,
        errors);
}
