using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary><c>fit FILE</c>: the growth curve of a batch, and what it says about later ages.</summary>
internal static class FitCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "fit", "The growth curve that a batch's weigh-ins follow, and the weights it projects.", DemoCommand.File + " --target 2.6kg");
        WeighInOptions file = WeighInOptions.AddTo(command);
        FitOptions fit = FitOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            WeighInReading? reading = file.Read(words);
            FitQuestion question = fit.Read(words, reading, common.Level);
            FitAnswer? answer = words.Problems.Count == 0 ? FitAnswer.To(question, reading!, words.Refuse) : null;
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static int Print(FitAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        answer.Fit.Curve is not null,
        () => GrowthChart.Of(answer, common.Units),
        () => FitDocument.Of(answer).ToJson(),
        page => FitPage.Print(answer, page),
        output,
        errors);
}
