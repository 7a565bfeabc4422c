using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary><c>history FOLDER</c>: what the farm's own past batches teach about the next one.</summary>
internal static class HistoryCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("history", "What the farm's own past batches teach about the next one: how heavy, how alike, and how sure that is.", DemoCommand.History);
        Argument<string?> folder = new("FOLDER") { Description = "One weigh-in file (CSV) a batch, see docs/file-formats.md." };
        command.Add(folder);
        PastBatchOptions past = PastBatchOptions.AddTo(command, "Of the past batches, those of these birds.");
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            BatchHistoryReading reading = BatchHistoryFolder.Read(words.Text(folder)!);
            LearnedPrior? learned = past.Learn(words, reading);
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(new HistoryAnswer(reading, learned!, common.Level), common, output, errors);
        });
        return command;
    }

    private static int Print(HistoryAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        answer.HasAnswer,
        () => HistoryChart.Of(answer, common.Units),
        () => HistoryDocument.Of(answer).ToJson(),
        page => HistoryPage.Print(answer, page),
        output,
        errors);
}
