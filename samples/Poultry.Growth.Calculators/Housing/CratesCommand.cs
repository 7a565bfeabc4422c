using System.CommandLine;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>crates</c>: birds to a crate, crates and loads, by the standard that binds you.</summary>
internal static class CratesCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "crates",
            "How many birds go into a crate, how many crates and loads a flock needs, and limits on the road. There is no default standard.",
            "--weight 2.6kg --cv 11% --birds 300 --crate-length 97cm --crate-width 58cm --standard germany");
        CratesOptions options = CratesOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            CratesAnswer? answer = options.Read(words);
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static int Print(CratesAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => CratesDocument.Of(answer).ToJson(),
        page => CratesPage.Print(answer, page),
        output,
        errors,
        isThere: answer.BirdsPerCrate > 0);
}
