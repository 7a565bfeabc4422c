using System.CommandLine;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>pasture</c>: fresh ground, land and moves of a batch in shelters, and what it leaves there.</summary>
internal static class PastureCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "pasture",
            "How much fresh ground and land a batch in moved shelters needs, and the nitrogen that it leaves there.",
            "--birds 240 --shelter-area 120ft2 --shelters 3 --moves 1,2@42d --days 35d --feed 4.6kg --protein 19% --live 2.4kg --batches 3 --interval 49d --rest 60d --limit 170kg/ha");
        PastureOptions options = PastureOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            PastureAnswer? answer = options.Read(words);
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static int Print(PastureAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => PastureDocument.Of(answer).ToJson(),
        page => PasturePage.Print(answer, page),
        output,
        errors);
}
