using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>feed [FILE]</c>: what a batch eats, drinks and costs in feed, day by day and feed by feed.</summary>
internal static class FeedCommand
{
    /// <summary>The demo batch with its feeds, from the root of the repository.</summary>
    public const string Demo = "samples/Poultry.Growth.Calculators/data/meadow-batch.json";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "feed", "What a batch will eat, drink and cost in feed until any day, what to buy by when, and what it should have eaten by now.", Demo);
        Argument<string?> file = new("FILE") { Description = "A batch file (JSON), see docs/file-formats.md; without it the options say what the batch is.", Arity = ArgumentArity.ZeroOrOne };
        command.Add(file);
        FeedOptions feed = FeedOptions.AddTo(command);
        SeedOption seed = new();
        seed.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            int drawn = seed.Read(words);
            FeedQuestion? question = words.Text(file) is { } path ? OfFile(path, feed, words, common.Level) : feed.Read(words, common.Level);
            FeedAnswer? answer = question is not null && words.Problems.Count == 0 ? FeedAnswer.To(question, drawn, words.Refuse) : null;
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static FeedQuestion? OfFile(string path, FeedOptions feed, OptionWords words, double level)
    {
        BatchFileReading reading = BatchFile.Read(path);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        feed.RefuseBeside(words);
        return reading.Problems.Count == 0 ? FeedQuestion.Of(reading, feed.Until(words), feed.At(words), level) : null;
    }

    private static int Print(FeedAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => FeedChart.Of(answer, common.Units),
        () => FeedDocument.Of(answer).ToJson(),
        page => FeedPage.Print(answer, page),
        output,
        errors);
}
