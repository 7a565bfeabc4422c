using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Birds, crates, the road, and whose rule.</summary>
internal sealed class CratesOptions
{
    private readonly Option<string?> weight = new("--weight") { HelpName = "2.6kg", Description = "Mean live weight.", Required = true };

    private readonly Option<string?> spread = new("--cv") { HelpName = "11%", Description = "Spread between birds. With it the count is the smallest over the weights of 5 to 95 % of them." };

    private readonly Option<string?> birds = new("--birds") { HelpName = "300", Description = "Birds to take." };

    private readonly Option<string?> length = new("--crate-length") { HelpName = "97cm", Description = "Inside length of a crate.", Required = true };

    private readonly Option<string?> width = new("--crate-width") { HelpName = "58cm", Description = "Inside width of a crate.", Required = true };

    private readonly Option<string?> height = new("--crate-height") { HelpName = "27cm", Description = "Inside height of a crate." };

    private readonly Option<string?> standard = new("--standard")
    {
        HelpName = "germany|eu|efsa|FILE.csv",
        Description = "Whose floor for each bird: German law of 2009, EU law of 2005 (recalled, unverified), a proposal of 2022 (recalled, unverified), or your plant's own in a file of limits.",
        Required = true,
    };

    private readonly Option<string?> perLoad = new("--crates-per-load") { HelpName = "24", Description = "Crates that the trailer takes." };

    private readonly Option<string?> temperature = new("--temp") { HelpName = "27C", Description = "Outside temperature on the day." };

    private readonly Option<string?> hot = new("--heat-above") { HelpName = "24C", Description = "Your plant's or haulier's own rule: above this temperature..." };

    private readonly Option<string?> fewer = new("--fewer") { HelpName = "15%", Description = "...so many fewer birds to a crate." };

    private readonly Option<string?> road = new("--journey") { HelpName = "2h", Description = "Time on the road." };

    private readonly Option<string?> offWater = new("--off-water") { HelpName = "4h", Description = "From the last water to the plant. [default: the journey]" };

    private readonly Option<string?> offFeed = new("--off-feed") { HelpName = "12h", Description = "From the last feed to the plant. [default: the journey]" };

    private readonly Option<string?> country = new("--country") { HelpName = "NAME", Description = "For limits on the road." };

    public static CratesOptions AddTo(Command command)
    {
        CratesOptions options = new();
        foreach (Option option in (Option[])
            [options.weight, options.spread, options.birds, options.length, options.width, options.height, options.standard, options.perLoad, options.temperature, options.hot, options.fewer, options.road, options.offWater, options.offFeed, options.country])
        {
            command.Add(option);
        }

        return options;
    }

    /// <summary>The answer; null, and problems, where words are wrong.</summary>
    public CratesAnswer? Read(OptionWords words)
    {
        Mass? mean = words.Weight(weight);
        double? variation = words.Percent(spread, 0.1, 30);
        int? flock = words.Birds(birds);
        (Length? Long, Length? Wide, Length? High) crate = (Inside(words, length), Inside(words, width), Inside(words, height));
        CrateStandard? whose = Whose(words);
        int? crates = words.Count(perLoad, "crates");
        Temperature? outside = words.Temperature(temperature);
        HeatRule? rule = Rule(words, outside);
        IReadOnlyList<Measured> journey = Journey(words, outside);
        if (words.Problems.Count > 0)
        {
            return null;
        }

        Area floor = crate.Long!.Value * crate.Wide!.Value;
        try
        {
            CrateLoading loading = variation is { } cv ? CrateLoading.Of(whose!, floor, WeightDistribution.Of(mean!.Value, cv)) : CrateLoading.Of(whose!, floor, mean!.Value);
            return new(loading, flock, crates, crate.High, rule, outside, new Keeping { Place = words.Text(country), Measured = journey });
        }
        catch (ArgumentOutOfRangeException tooHeavy) when (tooHeavy.Message.Contains("says nothing about birds", StringComparison.Ordinal))
        {
            words.Refuse(weight.Name + ": " + LibraryRefusal.Said(tooHeavy));
            return null;
        }
    }

    private static Length? Inside(OptionWords words, Option<string?> option)
    {
        Length? inside = words.Length(option);
        if (inside is { Meters: <= 0 or > 20 })
        {
            words.Refuse(option.Name + ": \"" + words.Text(option) + "\" is out of range; expected a length above 0 up to 20 m");
        }

        return inside;
    }

    private CrateStandard? Whose(OptionWords words)
    {
        string name = words.Text(standard)!;
        if (!name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return words.Choice(standard, ("germany", CrateStandard.Germany2009), ("eu", CrateStandard.Eu2005), ("efsa", CrateStandard.Efsa2022));
        }

        LimitReading reading = LimitFile.Read(name);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        int texts = reading.Limits.Where(limit => limit.Subject == LimitSubject.CrateAreaPerWeight).Select(limit => limit.Instrument).Distinct().Count();
        if (reading.Problems.Count == 0 && texts != 1)
        {
            words.Refuse(standard.Name + ": " + reading.File + " holds limits on crate-area-per-weight of " + Numbers.Whole(texts) + " instruments; expected one");
        }

        return texts == 1 ? CrateStandard.Of(reading.Limits) : null;
    }

    private HeatRule? Rule(OptionWords words, Temperature? outside)
    {
        Temperature? above = words.Temperature(hot);
        double? share = words.Percent(fewer, 0, 99);
        if ((words.Text(hot) is null) != (words.Text(fewer) is null))
        {
            words.Refuse(hot.Name + " and " + fewer.Name + ": are one rule; expected both");
        }
        else if (words.Text(hot) is not null && words.Text(temperature) is null)
        {
            words.Refuse(hot.Name + ": needs the day's temperature; expected --temp too");
        }

        if (outside is { DegreesCelsius: < -60 or > 60 })
        {
            words.Refuse(temperature.Name + ": \"" + words.Text(temperature) + "\" is out of range; expected -60 C to 60 C");
        }

        if (above is { DegreesCelsius: < -20 or > 60 })
        {
            words.Refuse(hot.Name + ": \"" + words.Text(hot) + "\" is out of range; expected -20 C to 60 C");
            return null;
        }

        return above is { } limit && share is { } part ? HeatRule.Of(limit, Probability.FromFraction(part), "your") : null;
    }

    private IReadOnlyList<Measured> Journey(OptionWords words, Temperature? outside)
    {
        Duration? travel = words.Duration(road), water = words.Duration(offWater), feed = words.Duration(offFeed);
        if (travel is null && (words.Text(offWater) ?? words.Text(offFeed)) is not null && words.Text(road) is null)
        {
            words.Refuse(road.Name + ": is missing; expected the time on the road beside " + offWater.Name + " or " + offFeed.Name);
        }

        return
        [
            .. travel is { } time ? Measured.Journey(time, water ?? time, feed ?? time) : [],
            .. outside is { } air ? Measured.Temperatures(air, inside: null) : [],
        ];
    }
}
