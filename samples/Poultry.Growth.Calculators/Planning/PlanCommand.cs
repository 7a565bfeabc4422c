using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary><c>plan BATCH.json</c>: which of the offered days to kill the batch on.</summary>
internal static class PlanCommand
{
    /// <summary>The demo plan, from the root of the repository.</summary>
    public const string Demo = "samples/Poultry.Growth.Calculators/data/meadow-batch.json";

    public static Command Create(TextWriter output, TextWriter errors, Waiting waiting)
    {
        CalculationCommand command = new(
            "plan", "Which of the offered days to kill a batch on: what each brings, what may go wrong, how sure, and what to do when.", Demo);
        Argument<string?> file = new("FILE") { Description = "A batch file (JSON) with plant, selling and costs, see docs/file-formats.md; " + BatchTemplates.BatchFileName + " of this folder where none is named.", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> history = new("--history") { HelpName = "FOLDER", Description = "The farm's finished batches, as reconcile keeps them; in place of the history that the file names." };
        SimulationOptions simulation = new();
        Option<string?> calendar = new("--ics") { HelpName = "FILE.ics", Description = "Write the timeline of the recommended day as a calendar; an earlier calendar is replaced, no other file." };
        Option<bool> everyDay = new("--every-day") { Description = "Also try every day between those offered: what the plant's calendar costs." };
        command.Add(file);
        command.Add(everyDay);
        SplitOptions split = SplitOptions.AddTo(command);
        command.Add(history);
        simulation.AddTo(command);
        Option<string?> report = new("--report") { HelpName = "FILE.html", Description = "Write one page with charts to read on a phone or to print; an earlier report is replaced, no other file." };
        command.Add(calendar);
        command.Add(report);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            HarvestOptions options = simulation.Read(words, common.Level, waiting);
            OutputFile? target = words.Text(calendar) is { } path ? OutputFile.OfCalendar(path, calendar.Name, words.Refuse) : null;
            OutputFile? page = words.Text(report) is { } place ? OutputFile.OfReport(place, report.Name, words.Refuse) : null;
            (IReadOnlyList<Probability> shares, FirstBirds birds) = (split.Shares(words), split.Birds(words));
            string batch = words.Text(file) ?? BatchTemplates.BatchFileName;
            if (words.Text(file) is null && !File.Exists(batch))
            {
                return Exit.Refuse(errors, [.. words.Problems, "FILE: is missing, and this folder holds no " + batch + "; expected a batch file, as poultry-growth new FOLDER makes one"]);
            }

            BatchFileReading reading = Read(batch, words.Text(history), words);
            if (reading.Plan is not { } plan || words.Problems.Count > 0)
            {
                return Exit.Refuse(errors, words.Problems);
            }

            PlanQuestion question = new(plan, batch, options)
            {
                Suspicions = reading.Weights!.Suspicions, History = words.Text(history), EveryDay = words.Given(everyDay), SplitShares = shares, SplitBirds = birds,
            };
            return waiting.Run(() =>
            {
                PlanAnswer answer = PlanAnswer.To(question, waiting.Stop);
                waiting.Wipe();
                return page?.Write(PlanReport.Of(answer, question, common.Units)) is { } problem
                    ? Exit.Refuse(errors, [problem])
                    : Print(answer, target, common, output, errors);
            });
        });
        return command;
    }

    private static BatchFileReading Read(string path, string? history, OptionWords words)
    {
        BatchFileReading reading = BatchFile.Read(path, history);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        if (reading.Problems.Count == 0 && reading.PlanMissing is { } missing)
        {
            words.Refuse(reading.File + ": says too little for a plan; expected " + missing);
        }

        return reading;
    }

    private static int Print(PlanAnswer answer, OutputFile? calendar, CommonOptions common, TextWriter output, TextWriter errors) =>
        calendar?.Write(answer.CalendarText()) is { } problem
            ? Exit.Refuse(errors, [problem])
            : common.Answer(
                isThere: true,
                () => PlanChart.Of(answer).ToSvg(),
                () => PlanDocument.Of(answer).ToJson(),
                page => PlanPage.Print(answer, page),
                output,
                errors);
}
