using System.CommandLine;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>energy</c>: what one bird needs a day, by the model asked for and by the others beside it.</summary>
internal static class EnergyCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "energy", "The energy and feed that a bird needs a day, by one model and the others beside it.", "--weight 2kg --gain 70g/d --temp 12C --age 42d --diet 3100kcal/kg");
        Option<string?> weight = new("--weight") { HelpName = "2kg", Description = "Live weight.", Required = true };
        Option<string?> gain = new("--gain") { HelpName = "70g/d", Description = "Gain a day.", Required = true };
        Option<string?> temperature = new("--temp") { HelpName = "12C", Description = "Temperature of the air. [default: that of a standard house at this age]" };
        Option<string?> age = new("--age") { HelpName = "42d", Description = "Age: the standard house falls to 21 °C with it, and one model has costs by age. [default: 42d]" };
        Option<string?> sex = new("--sex") { HelpName = "mixed|male|female", Description = "The bird. [default: mixed]" };
        Option<string?> model = new("--model") { HelpName = "NAME", Description = "How it is worked out: " + EnergyModels.Names + ". [default: heat-production]" };
        Option<string?> diet = new("--diet") { HelpName = "3100kcal/kg", Description = "Metabolizable energy of the feed. [default: usual for the age]" };
        foreach (Option<string?> option in new[] { weight, gain, temperature, age, sex, model, diet })
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            Mass? live = words.Weight(weight);
            MassFlow? daily = words.DailyWeight(gain);
            if (live is { } heavy && (heavy.Grams + (daily?.GramsPerDay ?? 0) > 12_000 || heavy.Grams - (daily?.GramsPerDay ?? 0) < 10))
            {
                words.Refuse(weight.Name + ": is out of range; expected 10 g to 12 kg with a day's gain either way");
            }

            EnergyModel chosen = words.Choice(model, EnergyModels.Choices);
            Age? known = words.Age(age);
            EnergyQuestion question = new()
            {
                Weight = live ?? default,
                Gain = daily ?? default,
                Sex = words.Sex(sex),
                Temperature = words.BirdTemperature(temperature),
                Age = known,
                Model = chosen,
                Diet = words.FeedEnergy(diet),
                Level = common.Level,
            };
            if (known is null && EnergyModels.NeedsAge(chosen))
            {
                words.Refuse(age.Name + ": is missing; this model has costs by age");
            }

            return words.Problems.Count > 0 ? Exit.Refuse(errors, words.Problems) : Print(EnergyAnswer.To(question), common, output, errors);
        });
        return command;
    }

    private static int Print(EnergyAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) =>
        common.Answer(() => EnergyDocument.Of(answer).ToJson(), page => EnergyPage.Print(answer, page), output, errors);
}
