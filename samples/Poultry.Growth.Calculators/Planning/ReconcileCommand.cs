using System.CommandLine;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary><c>reconcile BATCH.json PLANT.csv</c>: what came back from the plant beside the forecast, and what it teaches.</summary>
internal static class ReconcileCommand
{
    public static Command Create(TextWriter output, TextWriter errors, Waiting waiting)
    {
        CalculationCommand command = new(
            "reconcile",
            "What came back from the plant beside the forecast: head, weights, packs, losses; and what the batch teaches the next one.",
            PlanCommand.Demo + " samples/Poultry.Growth.Calculators/data/meadow-plant.csv");
        Argument<string?> file = new("BATCH") { Description = "The batch file (JSON) that was planned with.", Arity = ArgumentArity.ExactlyOne };
        Argument<string?> plant = new("PLANT") { Description = "The plant's sheet (CSV), one line a cut or a count, see docs/file-formats.md.", Arity = ArgumentArity.ExactlyOne };
        Option<string?> history = new("--history") { HelpName = "FOLDER", Description = "Add the batch to the farm's history, which the next plan reads; made where it does not exist." };
        Option<bool> replace = new("--replace") { Description = "Let the batch take the place of one of its name in the history." };
        SimulationOptions simulation = new();
        command.Add(file);
        command.Add(plant);
        command.Add(history);
        command.Add(replace);
        simulation.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            if (words.Given(replace) && words.Text(history) is null)
            {
                words.Refuse("--replace: says what to do in a history; expected --history too");
            }

            HarvestOptions options = simulation.Read(words, common.Level, waiting);
            return waiting.Run(() =>
            {
                ReconcileAnswer? answer = ReconcileAnswer.To(words, words.Text(file)!, words.Text(plant)!, (words.Text(history), words.Given(replace)), options, waiting.Stop);
                waiting.Wipe();
                return answer is null
                    ? Exit.Refuse(errors, words.Problems)
                    : common.Answer(
                        isThere: true,
                        () => ReconcileChart.Of(answer),
                        () => ReconcileDocument.Of(answer).ToJson(),
                        page => ReconcilePage.Print(answer, page),
                        output,
                        errors);
            });
        });
        return command;
    }
}
