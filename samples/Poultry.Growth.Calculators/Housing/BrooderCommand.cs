using System.CommandLine;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>brooder</c>: warmth, floor, feeder and drinker for chicks, guide by guide.</summary>
internal static class BrooderCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("brooder", "How warm, and how much floor, feeder and drinker chicks need at an age, by several guides side by side.", "--chicks 250 --age 10d");
        Option<string?> chicks = new("--chicks") { HelpName = "250", Description = "Chicks in the brooder.", Required = true };
        Option<string?> age = new("--age") { HelpName = "10d", Description = "How old they are; week 1 is 0 to 7 d.", Required = true };
        command.Add(chicks);
        command.Add(age);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            int? birds = words.Birds(chicks);
            Age? old = words.Age(age);
            if (old > WhenOptions.Oldest)
            {
                words.Refuse(age.Name + ": is out of range; expected an age up to " + WhenOptions.Oldest);
            }

            return words.Problems.Count > 0 ? Exit.Refuse(errors, words.Problems) : Print(new BrooderAnswer(birds!.Value, old!.Value), common, output, errors);
        });
        return command;
    }

    private static int Print(BrooderAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => BrooderDocument.Of(answer).ToJson(),
        page => BrooderPage.Print(answer, page),
        output,
        errors);
}
