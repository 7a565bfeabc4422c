using System.CommandLine;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Birds, their air, and what was measured in it.</summary>
internal sealed class AirOptions
{
    private readonly Option<string?> birds = new("--birds") { HelpName = "1000", Description = "Birds in the house.", Required = true };

    private readonly Option<string?> weight = new("--weight") { HelpName = "2kg", Description = "Mean live weight.", Required = true };

    private readonly Option<string?> inside = new("--temp") { HelpName = "20C", Description = "Temperature at the birds." };

    private readonly Option<string?> outside = new("--outside-temp") { HelpName = "5C", Description = "Temperature outside in the shade: it decides about some limits." };

    private readonly Option<string?> insideGas = new("--inside-co2") { HelpName = "3000ppm", Description = "Carbon dioxide at the birds' heads: to hold, or as measured." };

    private readonly Option<string?> outsideGas = new("--outside-co2") { HelpName = "400ppm", Description = "Carbon dioxide of the outside air, for the balance." };

    private readonly Option<string?> manure = new("--manure") { HelpName = "without|with", Description = "Whether a tenth more carbon dioxide from manure is counted. [default: without]" };

    private readonly Option<string?> heat = new("--heat") { HelpName = "1982-2000|1968|cigr", Description = "Heat of the birds: birds of 1982 to 2000, of 1968, or the CIGR line (recalled, unverified). [default: 1982-2000]" };

    private readonly Option<string?> ammonia = new("--ammonia") { HelpName = "18ppm", Description = "Ammonia at the birds' heads." };

    private readonly Option<string?> humidity = new("--humidity") { HelpName = "65%", Description = "Relative humidity inside, mean over 48 h." };

    private readonly Option<string?> area = new("--area") { HelpName = "100m2", Description = "Floor: some limits count above a density only." };

    private readonly Option<string?> age = new("--age") { HelpName = "35d", Description = "Age: some limits on darkness count from one on." };

    private readonly Option<string?> light = new("--light") { HelpName = "16h", Description = "Light in 24 h." };

    private readonly Option<string?> dark = new("--longest-dark") { HelpName = "8h", Description = "The longest darkness without a break. [default: all that is not light]" };

    private readonly KeepingOptions keeping;

    private AirOptions(Command command)
    {
        foreach (Option option in (Option[])[birds, weight, inside, outside, insideGas, outsideGas, manure, heat, ammonia, humidity, area, age, light, dark])
        {
            command.Add(option);
        }

        keeping = KeepingOptions.AddTo(command);
    }

    public static AirOptions AddTo(Command command) => new(command);

    /// <summary>The answer; null, and problems, where words are wrong.</summary>
    public AirAnswer? Read(OptionWords words)
    {
        int? flock = words.Birds(birds);
        Mass? mean = words.Weight(weight);
        Temperature? warmth = Sensible(words, inside), shade = Sensible(words, outside);
        VolumeConcentration? high = words.GasContent(insideGas), low = words.GasContent(outsideGas);
        if (low is { } out_ && high is { } in_ && in_ <= out_)
        {
            words.Refuse(insideGas.Name + ": \"" + words.Text(insideGas) + "\" is out of range; expected more than outside");
        }
        else if (words.Text(outsideGas) is not null && words.Text(insideGas) is null)
        {
            words.Refuse(outsideGas.Name + ": is half of a balance; expected " + insideGas.Name + " too");
        }

        CarbonDioxide gas = words.Choice(manure, ("without", CarbonDioxide.OfBirds), ("with", CarbonDioxide.OfBirdsAndManure));
        BirdHeat warm = words.Choice(heat, ("1982-2000", BirdHeat.ChepeteXin2001), ("1968", BirdHeat.Birds1968), ("cigr", BirdHeat.Cigr2002));
        (Keeping kept, IReadOnlyList<Limit> limits) = keeping.Read(words);
        IReadOnlyList<Measured> measured = [.. Measures(words, flock, mean, warmth, shade, high)];
        return words.Problems.Count > 0 ? null : new(flock!.Value, mean!.Value, warmth, high, low, warm, gas, kept.With(measured), limits);
    }

    private static Temperature? Sensible(OptionWords words, Option<string?> option)
    {
        Temperature? air = words.Temperature(option);
        if (air is { DegreesCelsius: < -40 or > 60 })
        {
            words.Refuse(option.Name + ": \"" + words.Text(option) + "\" is out of range; expected -40 C to 60 C");
        }

        return air;
    }

    private List<Measured> Measures(OptionWords words, int? flock, Mass? mean, Temperature? warmth, Temperature? shade, VolumeConcentration? high)
    {
        List<Measured> measured = [];
        Area? floor = words.Area(area);
        if (flock is { } count && mean is { } bird)
        {
            measured.AddRange([Measured.Flock(count), Measured.BirdWeight(bird)]);
            if (floor is { } known)
            {
                measured.Add(Measured.Density(BirdDensity.Of(count, known).At(bird)));
            }
        }

        measured.AddRange(shade is { } air ? Measured.Temperatures(air, warmth) : []);
        measured.AddRange(high is { } content ? [Measured.CarbonDioxide(content)] : []);
        measured.AddRange(words.GasContent(ammonia) is { } sharp ? [Measured.Ammonia(sharp)] : []);
        measured.AddRange(words.Percent(humidity, 0, 100) is { } damp ? [Measured.Humidity(RelativeHumidity.FromPercent(100 * damp))] : []);
        measured.AddRange(words.Age(age) is { } old ? [Measured.BirdAge(old)] : []);
        measured.AddRange(Day(words));
        return measured;
    }

    private IReadOnlyList<Measured> Day(OptionWords words)
    {
        Duration? day = words.Duration(light), night = words.Duration(dark);
        if (words.Text(light) is null && words.Text(dark) is not null)
        {
            words.Refuse(light.Name + ": is missing; expected the hours of light beside " + dark.Name);
        }

        if (day is not { } hours)
        {
            return [];
        }

        Duration rest = Duration.FromHours(24) - hours;
        if (hours.Hours > 24 || (night ?? rest) > rest)
        {
            words.Refuse(light.Name + " and " + dark.Name + ": do not fit into a day; expected 24 h or less together");
            return [];
        }

        return Measured.Day(hours, night ?? rest);
    }
}
