using System.CommandLine;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>The weigh-in file, and what it does not say itself.</summary>
internal sealed class WeighInOptions
{
    private readonly Argument<string?> file = new("FILE") { Description = "Weigh-ins as a table of text (CSV), see docs/file-formats.md." };

    private readonly Option<string?> placed = new("--placed") { HelpName = "2027-04-12", Description = "The day the chicks were placed; wins over the file." };

    private readonly Option<string?> ageAtPlacement = new("--age-at-placement")
    {
        HelpName = "1d", Description = "How old they were that day: mailed chicks are 1 to 3 days old; wins over the file.",
    };

    private readonly Option<string?> ageColumn = new("--age-column") { HelpName = "NAME", Description = "Column of ages in days, of a file with its own names." };

    private readonly Option<string?> weightColumn = new("--weight-column") { HelpName = "NAME", Description = "Column of single birds' weights, likewise." };

    private readonly Option<string?> weightUnit = new("--weight-unit") { HelpName = "g|kg|lb|oz|lb_oz", Description = "Unit of --weight-column." };

    private readonly Option<string[]> where = new("--where") { HelpName = "COLUMN=VALUE", Description = "Only rows that say so; repeatable." };

    private readonly Option<bool> excludeFlagged = new("--exclude-flagged") { Description = "Leave out what looks wrong. Without it such rows are named and kept." };

    /// <summary>Adds them to a command that can do nothing without a file.</summary>
    public static WeighInOptions AddTo(Command command) => AddTo(command, ArgumentArity.ExactlyOne);

    /// <summary>Adds them to a command that has an answer without a file too.</summary>
    public static WeighInOptions AddOptionalTo(Command command) => AddTo(command, ArgumentArity.ZeroOrOne);

    /// <summary>Reads the file; null, and problems, where it or an option cannot be read.</summary>
    public WeighInReading? Read(OptionWords words)
    {
        int before = words.Problems.Count;
        WeighInFileOptions options = new()
        {
            Placed = words.Date(placed),
            AgeAtPlacement = words.Age(ageAtPlacement),
            AgeColumn = words.Text(ageColumn),
            WeightColumn = words.Text(weightColumn),
            WeightUnit = words.WeightUnit(weightUnit),
            Where = words.Texts(where),
            ExcludeFlagged = words.Given(excludeFlagged),
        };
        if (words.Problems.Count > before)
        {
            // Read with half its options, a file would be blamed for what the other half says.
            return null;
        }

        WeighInReading reading = WeighInFile.Read(words.Text(file)!, options);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Series is null ? null : reading;
    }

    /// <summary>The file, where one is given, and when the chicks were placed by it or by the options; the calendar is null where the file cannot be read.</summary>
    public (bool IsGiven, WeighInReading? Reading, BatchCalendar? Calendar) ReadIfGiven(OptionWords words)
    {
        if (!IsGiven(words))
        {
            return (false, null, new(words.Date(placed), words.Age(ageAtPlacement)));
        }

        WeighInReading? reading = Read(words);
        return (true, reading, reading is null ? null : BatchCalendar.Of(reading));
    }

    private static WeighInOptions AddTo(Command command, ArgumentArity files)
    {
        WeighInOptions options = new();
        options.file.Arity = files;
        command.Add(options.file);
        command.Add(options.placed);
        command.Add(options.ageAtPlacement);
        command.Add(options.ageColumn);
        command.Add(options.weightColumn);
        command.Add(options.weightUnit);
        command.Add(options.where);
        command.Add(options.excludeFlagged);
        return options;
    }

    /// <summary>Whether there is a file to read; options that read one are refused where there is none.</summary>
    private bool IsGiven(OptionWords words)
    {
        bool given = words.Text(file) is not null;
        if (!given)
        {
            bool[] stray = [words.Text(ageColumn) is not null, words.Text(weightColumn) is not null, words.Text(weightUnit) is not null, words.Texts(where).Count > 0, words.Given(excludeFlagged)];
            foreach (Option option in ((Option[])[ageColumn, weightColumn, weightUnit, where, excludeFlagged]).Where((_, at) => stray[at]))
            {
                words.Refuse(option.Name + ": says how to read a file; expected a FILE too");
            }
        }

        return given;
    }
}
