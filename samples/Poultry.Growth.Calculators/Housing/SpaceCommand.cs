using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>space [FILE]</c>: how many birds fit now and at harvest weight, which limit binds first and when.</summary>
internal static class SpaceCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "space",
            "How many birds fit, how many chicks to place, which limit on space binds and when it is passed.",
            DemoCommand.File + " --area 18m2 --birds 190 --limit 6lb/ft2 --mortality 8%");
        WeighInOptions file = WeighInOptions.AddOptionalTo(command);
        SpaceOptions options = SpaceOptions.AddTo(command);
        SeedOption seed = new();
        seed.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            int drawn = seed.Read(words);
            (bool hasFile, WeighInReading? reading, BatchCalendar? calendar) = file.ReadIfGiven(words);
            SpaceQuestion? question = options.Read(words, reading, hasFile, calendar);
            if (common.Chart is not null && (question is { Curve: null } or { Birds: null }))
            {
                words.Refuse("--chart: draws density over age; expected --birds, and a FILE of weigh-ins or --prior, too");
            }

            return words.Problems.Count > 0 || question is null
                ? Exit.Refuse(errors, words.Problems)
                : Print(SpaceAnswer.To(question, drawn), common, output, errors);
        });
        return command;
    }

    private static int Print(SpaceAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => DensityChart.Of(answer, common.Units),
        () => SpaceDocument.Of(answer).ToJson(),
        page => SpacePage.Print(answer, page),
        output,
        errors);
}
