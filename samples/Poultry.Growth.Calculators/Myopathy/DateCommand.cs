using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy date</c>: when the harm was done that lesions show.</summary>
internal static class DateCommand
{
    private const string Expected = "counts by look, as in I=2,III=5 or red=2,green=5";

    private static readonly (string Roman, string Colour, LesionStage Stage)[] Stages =
        [("I", "red", LesionStage.Red), ("II", "pink", LesionStage.Pink), ("III", "green", LesionStage.Green), ("IV", "grey", LesionStage.Grey)];

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "date", "When the harm was done that lesions show, by their look: days before killing, never a single day.",
            "--found I=2,III=5 --killed 2027-06-06 --hatched 2027-04-11 --sex mixed --log " + DemoLog, MyopathyCommand.Name);
        Option<string?> found = new("--found")
        {
            HelpName = "I=2,III=5", Description = "Birds with lesions by look: I red, II pink, III green, IV grey. A bird counts once, by its older side.", Required = true,
        };
        Option<string?> killed = new("--killed") { HelpName = "2027-06-06", Description = "The day the birds were killed.", Required = true };
        Option<string?> hatched = new("--hatched") { HelpName = "2027-04-11", Description = "The day they hatched.", Required = true };
        Option<string?> sex = LesionWords.Sex(isRequired: true);
        Option<string?> log = new("--log") { HelpName = "FILE", Description = "A log of disturbances, see docs/file-formats.md: which of them may it have been?" };
        Option<bool> weighted = new("--by-susceptibility") { Description = "Let days count by how susceptible the birds were; otherwise all days count alike." };
        foreach (Option option in (Option[])[found, killed, hatched, sex, log, weighted])
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            LesionCounts? counts = Counts(words, found);
            (DateOnly? last, DateOnly? first) = (words.Date(killed), words.Date(hatched));
            Sex birds = words.Sex(sex);
            if (last < first)
            {
                words.Refuse(killed.Name + ": lies before hatch; expected a later date");
            }

            Age? age = last is { } end && first is { } start && end >= start ? Age.FromDays(end.DayNumber - start.DayNumber) : null;
            DisturbanceLog? disturbances = words.Text(log) is { } file ? words.ReadLog(file, first, age) : null;
            if (disturbances is { Count: > 0 } && words.Given(weighted))
            {
                words.Refuse(weighted.Name + ": does not go with --log, whose days count alike; expected one of them");
            }

            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(DateAnswer.To(counts!, last!.Value, first!.Value, birds, disturbances, words.Given(weighted), common.Level), common, output, errors);
        });
        return command;
    }

    private const string DemoLog = "samples/Poultry.Growth.Calculators/data/disturbances.csv";

    private static LesionCounts? Counts(OptionWords words, Option<string?> option)
    {
        int?[] counts = new int?[Stages.Length];
        string text = words.Text(option) ?? "";
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] pair = part.Split('=', StringSplitOptions.TrimEntries);
            int stage = Array.FindIndex(Stages, known => pair[0].Equals(known.Roman, StringComparison.OrdinalIgnoreCase) || pair[0].Equals(known.Colour, StringComparison.OrdinalIgnoreCase));
            if (pair.Length != 2 || stage < 0 || !int.TryParse(pair[1], NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count > 1_000_000)
            {
                words.Refuse(option.Name + ": \"" + part + "\" is no count of a look; expected " + Expected);
            }
            else if (counts[stage] is not null)
            {
                words.Refuse(option.Name + ": \"" + part + "\" counts a look a second time; expected each look once");
            }
            else
            {
                counts[stage] = count;
            }
        }

        if (words.Problems.Count == 0 && counts.Sum() == 0)
        {
            words.Refuse(option.Name + ": no lesion is counted; expected " + Expected);
        }

        return counts.Sum() > 0 ? LesionCounts.Of(counts[0] ?? 0, counts[1] ?? 0, counts[2] ?? 0, counts[3] ?? 0) : null;
    }

    private static int Print(DateAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        answer.Dating.IsAnswered,
        () => DatingChart.Of(answer),
        () => DateDocument.Of(answer).ToJson(),
        page => DatePage.Print(answer, page),
        output,
        errors);
}
