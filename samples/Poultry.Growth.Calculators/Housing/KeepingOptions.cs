using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Where and how the birds are kept: what decides which limits apply. There is no default country.</summary>
internal sealed class KeepingOptions
{
    private readonly Option<string?> country = new("--country")
    {
        HelpName = "NAME", Description = "Country, or the part of it with its own rules: Germany, England, USA, California. Without it no law can be said to apply.",
    };

    private readonly Option<string?> system = new("--system")
    {
        HelpName = "indoor|barn|free-range|organic|shelter",
        Description = "How the birds are kept, in the words of the rules; traditional-free-range too. shelter: moved over pasture, without a marketing term.",
    };

    private readonly Option<string?> house = new("--house") { HelpName = "fixed|mobile", Description = "Whether the house stays where it is." };

    private readonly Option<string[]> meets = new("--meets")
    {
        HelpName = "annex-ii", Description = "A condition that you vouch for, by its code in the answer; repeatable, or with commas.",
    };

    private readonly Option<string[]> standard = new("--standard")
    {
        HelpName = "NAME|FILE.csv",
        Description = "Hold to a standard by choice: a part of an instrument's name, or a file of your own limits (docs/file-formats.md); repeatable.",
    };

    public static KeepingOptions AddTo(Command command)
    {
        KeepingOptions options = new();
        command.Add(options.country);
        command.Add(options.system);
        command.Add(options.house);
        command.Add(options.meets);
        command.Add(options.standard);
        return options;
    }

    /// <summary>The keeping without figures, and the limits: the shipped ones and those of files.</summary>
    public (Keeping Keeping, IReadOnlyList<Limit> Limits) Read(OptionWords words)
    {
        List<Limit> limits = [.. LimitBook.Shipped];
        List<string> chosen = [];
        foreach (string name in words.Texts(standard))
        {
            chosen.AddRange(name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? OwnFile(name, limits, words) : Named(name, words));
        }

        RearingSystem? kept = words.Text(system) is null ? null : words.Choice<RearingSystem>(system, [.. Enum.GetValues<RearingSystem>().Select(value => (Codes.Of(value), value))]);
        HouseKind? kind = words.Text(house) is null ? null : words.Choice(house, ("fixed", HouseKind.Fixed), ("mobile", HouseKind.Mobile));
        Keeping keeping = new()
        {
            Place = words.Text(country),
            System = kept,
            House = kind,
            Meets = [.. words.Texts(meets).SelectMany(text => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))],
            Chosen = chosen,
        };
        foreach (string code in keeping.Meets.Where(code => !limits.Exists(limit => code.Equals(limit.Requires, StringComparison.OrdinalIgnoreCase))))
        {
            words.Refuse(meets.Name + ": \"" + code + "\" is the condition of no limit; expected a code that the answer names, as in annex-ii");
        }

        return (keeping, limits);
    }

    private static List<string> OwnFile(string path, List<Limit> limits, OptionWords words)
    {
        LimitReading reading = LimitFile.Read(path);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        limits.AddRange(reading.Limits);
        return [.. reading.Limits.Select(limit => limit.Instrument.Name).Distinct()];
    }

    private List<string> Named(string name, OptionWords words)
    {
        List<string> found = [.. LimitBook.Shipped.Select(limit => limit.Instrument.Name).Where(known => known.Contains(name, StringComparison.OrdinalIgnoreCase)).Distinct()];
        if (name.Length == 0 || found.Count == 0)
        {
            words.Refuse(standard.Name + ": \"" + name + "\" is part of no instrument's name; expected one that the command standards lists, or a file that ends in .csv");
        }

        return found;
    }
}
