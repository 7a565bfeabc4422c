using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary><c>plan BATCH.json</c>: which of the offered days to kill the batch on.</summary>
internal static class PlanCommand
{
    /// <summary>The demo plan, from the root of the repository.</summary>
    public const string Demo = "samples/Poultry.Growth.Calculators/data/meadow-batch.json";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "plan", "Which of the offered days to kill a batch on: what each brings, what may go wrong, how sure, and what to do when.", Demo);
        Argument<string?> file = new("FILE") { Description = "A batch file (JSON) with plant, selling and costs, see docs/file-formats.md.", Arity = ArgumentArity.ExactlyOne };
        Option<string?> draws = new("--draws") { HelpName = "4000", Description = "How many fates of the batch are tried, 100 to 1000000. [default: 4000]" };
        Option<string?> seed = new("--seed") { HelpName = "1", Description = "Of all random numbers: the same seed gives the same answer. [default: 1]" };
        Option<string?> calendar = new("--ics") { HelpName = "FILE.ics", Description = "Write the timeline of the recommended day as a calendar; an earlier calendar is replaced, no other file." };
        command.Add(file);
        command.Add(draws);
        command.Add(seed);
        command.Add(calendar);
        CommonOptions common = CommonOptions.AddTo(command);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            int tried = words.Whole(draws, 100, 1_000_000) ?? new HarvestOptions().Draws;
            int number = words.Whole(seed, 0, int.MaxValue) ?? 1;
            OutputFile? target = words.Text(calendar) is { } path ? OutputFile.OfCalendar(path, calendar.Name, words.Refuse) : null;
            BatchPlan? plan = Read(words.Text(file)!, words);
            return plan is null || words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(PlanAnswer.To(plan, words.Text(file)!, new() { Draws = tried, Seed = number, Level = common.Level }), target, common, output, errors);
        });
        return command;
    }

    private static BatchPlan? Read(string path, OptionWords words)
    {
        BatchFileReading reading = BatchFile.Read(path);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        if (reading.Problems.Count == 0 && reading.PlanMissing is { } missing)
        {
            words.Refuse(reading.File + ": says too little for a plan; expected " + missing);
        }

        return reading.Plan;
    }

    private static int Print(PlanAnswer answer, OutputFile? calendar, CommonOptions common, TextWriter output, TextWriter errors) =>
        calendar?.Write(answer.Calendar()) is { } problem
            ? Exit.Refuse(errors, [problem])
            : common.Answer(
                isThere: true,
                () => PlanChart.Of(answer),
                () => PlanDocument.Of(answer).ToJson(),
                page => PlanPage.Print(answer, page),
                output,
                errors);
}
