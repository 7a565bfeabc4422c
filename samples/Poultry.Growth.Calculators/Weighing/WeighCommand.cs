using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Weighing;

/// <summary><c>weigh FILE</c>: how heavy and how alike the birds were, and how many to weigh next time.</summary>
internal static class WeighCommand
{
    /// <summary>Half the width of the interval of the mean that is usually wanted, as a fraction.</summary>
    private const double UsualPrecision = 0.05;

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "weigh", "How heavy and how alike the birds were at each age, what looks wrong, and how many to weigh.", DemoCommand.File + " --flock 300");
        WeighInOptions file = WeighInOptions.AddTo(command);
        Option<string?> flock = new("--flock") { HelpName = "300", Description = "Birds in the flock: fewer need weighing in a small one." };
        Option<string?> within = new("--within") { HelpName = "5%", Description = "How near the mean of the birds to weigh shall lie to the flock's. [default: 5%]" };
        command.Add(flock);
        command.Add(within);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            WeighInReading? reading = file.Read(words);
            int? birds = words.Birds(flock);
            double precision = words.Percent(within, 0.1, 50) ?? UsualPrecision;
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(WeighAnswer.To(reading!, precision, common.Level, birds), common, output, errors);
        });
        return command;
    }

    private static int Print(WeighAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => GrowthChart.Of(answer, common.Units),
        () => WeighDocument.Of(answer).ToJson(),
        page => WeighPage.Print(answer, page),
        output,
        errors);
}
