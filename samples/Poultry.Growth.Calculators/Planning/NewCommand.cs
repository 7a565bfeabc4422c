using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Planning;

/// <summary><c>new FOLDER</c>: the files of a new batch, with invented figures, so that a plan is there before the first edit.</summary>
internal static class NewCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("new", "The files of a new batch: a batch file to edit in ten places, and tables to fill in day by day. Nothing is ever replaced.", "my-batch");
        Argument<string?> folder = new("FOLDER") { Description = "Where; made where it does not exist.", Arity = ArgumentArity.ExactlyOne };
        Option<string?> units = new("--units") { HelpName = "metric|us", Description = "Units of the files. [default: metric]" };
        command.Add(folder);
        command.Add(units);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            TemplateUnits wanted = words.Choice(units, ("metric", TemplateUnits.Metric), ("us", TemplateUnits.UnitedStates));
            string path = words.Text(folder)!;
            if (string.IsNullOrWhiteSpace(path))
            {
                words.Refuse("FOLDER: is empty; expected the name of a folder");
            }

            IReadOnlyList<string> problems = words.Problems.Count > 0 ? words.Problems : BatchTemplates.Write(path, wanted);
            return problems.Count > 0 ? Exit.Refuse(errors, problems) : Print(path, wanted, new Page(output, Units.Metric));
        });
        return command;
    }

    private static int Print(string folder, TemplateUnits units, Page page)
    {
        page.Line("Written to " + folder + ", with invented figures:");
        page.Table(["<file", "<what to write when"], BatchTemplates.Names.Select(name => (IReadOnlyList<string>)[name, Purpose(name, units)]));
        page.Line("Now: poultry-growth plan " + Path.Combine(folder, BatchTemplates.BatchFileName) + (units == TemplateUnits.UnitedStates ? " --units us" : ""));
        page.Line("It answers at once, with the invented figures. It speaks of your batch after the edits named EDIT 1 of 10 to EDIT 10 of 10.");
        return Exit.Done;
    }

    /// <summary>The first line of a template says it.</summary>
    private static string Purpose(string name, TemplateUnits units) =>
        name == BatchTemplates.BatchFileName ? "Plans and prices: the ten edits." : BatchTemplates.Text(name, units).Split('\n')[0].TrimStart('#', ' ');
}
