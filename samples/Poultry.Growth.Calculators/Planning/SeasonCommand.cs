using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary><c>season SEASON.json</c>: which batches, when their chicks come and when they are killed, so that the season brings most.</summary>
internal static class SeasonCommand
{
    public static Command Create(TextWriter output, TextWriter errors, Waiting waiting)
    {
        CalculationCommand command = new(
            "season",
            "Which batches a season holds, when their chicks come and when they are killed, within brooder, shelters, ground, hands and the plant's days.",
            "samples/Poultry.Growth.Calculators/data/meadow-season.json --draws 500");
        Argument<string?> file = new("FILE") { Description = "A season file (JSON) that names batch files, see docs/file-formats.md.", Arity = ArgumentArity.ExactlyOne };
        SimulationOptions simulation = new();
        Option<string?> report = new("--report") { HelpName = "FILE.html", Description = "Write one page with a chart to read on a phone or to print; an earlier report is replaced, no other file." };
        command.Add(file);
        simulation.AddTo(command);
        command.Add(report);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            HarvestOptions options = simulation.Read(words, common.Level, waiting);
            string path = words.Text(file)!;
            OutputFile? target = words.Text(report) is { } place ? OutputFile.OfReport(place, report.Name, words.Refuse) : null;
            FileReading<SeasonPlan> reading = SeasonFile.Read(path);
            foreach (string problem in FileProblem.Lines(reading.Problems))
            {
                words.Refuse(problem);
            }

            return reading.Value is not { } plan || words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : waiting.Run(() =>
                {
                    SeasonAnswer answer = new(path, plan, reading.Suspicions, SeasonComparison.Of(plan, options, waiting.Stop));
                    waiting.Wipe();
                    if (answer.Season is not null && target?.Write(SeasonReport.Of(answer, options, common.Units)) is { } problem)
                    {
                        return Exit.Refuse(errors, [problem]);
                    }

                    return common.Answer(
                        answer.Season is not null,
                        () => SeasonChart.Of(answer).ToSvg(),
                        () => SeasonDocument.Of(answer).ToJson(),
                        page => SeasonPage.Print(answer, page),
                        output,
                        errors);
                });
        });
        return command;
    }
}
