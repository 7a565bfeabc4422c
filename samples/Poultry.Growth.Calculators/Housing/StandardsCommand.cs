using System.CommandLine;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Calculators.Housing;

/// <summary><c>standards</c>: the limits that the library knows, as data.</summary>
internal static class StandardsCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("standards", "The limits on space, air, transport, land and slaughter that the library knows, with how well it knows them.", "--country England --about density");
        Option<string?> country = new("--country") { HelpName = "NAME", Description = "Only limits of this place, of what it is a part of, and of its parts." };
        Option<string?> about = new("--about") { HelpName = "TEXT", Description = "Only limits with this text in quantity, scope or instrument: ammonia, crate, dark, organic, chilling." };
        Option<string?> known = new("--how-known")
        {
            HelpName = "read-in-source|secondary|memory", Description = "Only limits known this way; derived, common-practice and assumption too.",
        };
        command.Add(country);
        command.Add(about);
        command.Add(known);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            HowKnown? how = words.Text(known) is null ? null : words.Choice<HowKnown>(known, [.. Enum.GetValues<HowKnown>().Select(value => (Codes.Of(value), value))]);
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(StandardsAnswer.To(words.Text(country), words.Text(about), how), common, output, errors);
        });
        return command;
    }

    private static int Print(StandardsAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => StandardsDocument.Of(answer).ToJson(),
        page => StandardsPage.Print(answer, page),
        output,
        errors,
        isThere: answer.Limits.Count > 0);
}
