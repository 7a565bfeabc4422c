using System.CommandLine;
using Poultry.Growth.Curves;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A batch in words, where there is no file for it.</summary>
internal sealed class FeedOptions
{
    private readonly Option<string?> until = new("--until") { HelpName = "56d", Description = "The last age. [default: that of the file, or 56d]" };

    private readonly Option<string?> at = new("--at") { HelpName = "35d", Description = "What should the batch have eaten by this age? [default: the age of the farm's record]" };

    private readonly Option<string?> curve = new("--curve") { HelpName = "FILE", Description = "Without a FILE: a table of weights by age (a standard) that the batch is taken to follow. [default: the usual projection of its type]" };

    private readonly Option<string?> birds = new("--birds") { HelpName = "300", Description = "Without a FILE: chicks placed. [default: 1]" };

    private readonly Option<string?> ageAtPlacement = new("--age-at-placement") { HelpName = "1d", Description = "Without a FILE: how old they were. [default: 1d]" };

    private readonly Option<string?> placed = new("--placed") { HelpName = "2027-04-12", Description = "Without a FILE: the day they were placed." };

    private readonly Option<string?> sex = new("--sex") { HelpName = "mixed|male|female", Description = "Without a FILE: the birds. [default: mixed]" };

    private readonly Option<string?> type = new("--type") { HelpName = "fast|slow", Description = "Without a FILE: how they grow. [default: fast]" };

    private readonly Option<string?> diet = new("--diet") { HelpName = "3100kcal/kg", Description = "Without a FILE: energy of the feed, one feed all life. [default: usual by age]" };

    private readonly Option<string?> waste = new("--waste") { HelpName = "3%", Description = "Without a FILE: feed spilt. [default: 0%]" };

    private readonly Option<string?> moveOut = new("--move-out") { HelpName = "21d", Description = "Without a FILE: when the birds go outdoors; needs --temp." };

    private readonly Option<string?> temperature = new("--temp") { HelpName = "14C", Description = "Without a FILE: temperature outside after --move-out, or all life. [default: a heated house]" };

    private readonly Option<string?> model = new("--model") { HelpName = "NAME", Description = "Without a FILE: how energy is worked out: " + EnergyModels.Names + ". [default: by type]" };

    private FeedOptions(Command command)
    {
        foreach (Option<string?> option in (Option<string?>[])[until, at, .. OfBatch])
        {
            command.Add(option);
        }
    }

    /// <summary>What a file says itself.</summary>
    private Option<string?>[] OfBatch => [curve, birds, ageAtPlacement, placed, sex, type, diet, waste, moveOut, temperature, model];

    public static FeedOptions AddTo(Command command) => new(command);

    public Age? Until(OptionWords words) => words.Age(until);

    public Age? At(OptionWords words) => words.Age(at);

    /// <summary>A batch has one description.</summary>
    public void RefuseBeside(OptionWords words)
    {
        foreach (Option<string?> option in OfBatch.Where(option => words.Text(option) is not null))
        {
            words.Refuse(option.Name + ": is said by the file; expected it there");
        }
    }

    public FeedQuestion? Read(OptionWords words, double level)
    {
        Sex ofBirds = words.Sex(sex);
        BirdType kind = words.Choice(type, ("fast", BirdType.Fast), ("slow", BirdType.Slow));
        Age young = words.Age(ageAtPlacement) ?? Age.FromDays(1);
        int count = words.Birds(birds) ?? 1;
        Temperature? air = words.BirdTemperature(temperature);
        Age? outdoors = words.Age(moveOut);
        if (words.Text(moveOut) is not null && words.Text(temperature) is null)
        {
            words.Refuse(temperature.Name + ": is missing; birds outdoors need the temperature there");
        }

        if (outdoors is { Days: 0 })
        {
            words.Refuse(moveOut.Name + ": is 0; expected an age above 0");
        }

        TabulatedCurve? table = words.Text(curve) is { } path ? Table(path, words) : null;
        SpecificEnergy? energy = words.FeedEnergy(diet);
        double spilt = words.Percent(waste, 0, 30) ?? 0;
        EnergyModel asked = words.Text(model) is null ? EnergyModel.DefaultFor(kind) : words.Choice(model, EnergyModels.Choices);
        (Age? last, Age? toDate, DateOnly? day) = (Until(words), At(words), words.Date(placed));
        if (words.Problems.Count > 0)
        {
            return null;
        }

        Temperatures temperatures = air is not { } warm ? Temperatures.StandardHouse
            : outdoors is { } moved ? Temperatures.HouseThen(moved, Temperatures.Constant(warm))
            : Temperatures.Constant(warm);
        return new()
        {
            Title = "a batch of " + Numbers.Whole(count) + (count == 1 ? " bird" : " birds"),
            Placed = day,
            HeadCount = words.Text(birds) is null ? HeadCountPath.Expected(1, young, Survival.WithoutLoss) : HeadCountPath.Expected(count, young, Survival.FastGrowingOutdoor),
            Table = table,
            Projection = table is null ? Projection.Of(kind == BirdType.Fast ? GrowthPrior.FastGrowingOutdoor(ofBirds) : GrowthPrior.SlowGrowing(ofBirds)) : null,
            Plan = energy is { } one ? FeedingPlan.OneFeed(one) : FeedingPlan.UsualDiets,
            Conditions = new()
            {
                Temperatures = temperatures,
                Sex = ofBirds,
                Type = kind,
                Model = asked,
                Waste = Probability.FromFraction(spilt),
                HatchWeight = table is null || table.Rows.Min(row => row.Age) > young ? Mass.FromGrams(42) : null,
            },
            Until = last ?? FeedQuestion.UsualEnd,
            At = toDate,
            Level = level,
        };
    }

    private static TabulatedCurve? Table(string path, OptionWords words)
    {
        StandardReading reading = StandardFile.Read(path);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Standard;
    }
}
