using System.CommandLine;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>air</c>: the least air that birds need, and what rules say about theirs.</summary>
internal static class AirCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "air",
            "The least ventilation by weight and by carbon dioxide, and limits on gases, temperature, humidity, light and dark.",
            "--birds 1000 --weight 2kg --temp 20C --inside-co2 3000ppm --outside-co2 400ppm");
        AirOptions options = AirOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            AirAnswer? answer = options.Read(words);
            return answer is null ? Exit.Refuse(errors, words.Problems) : Print(answer, common, output, errors);
        });
        return command;
    }

    private static int Print(AirAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => AirDocument.Of(answer).ToJson(),
        page => AirPage.Print(answer, page),
        output,
        errors);
}
