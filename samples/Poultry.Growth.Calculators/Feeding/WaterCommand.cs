using System.CommandLine;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>water</c>: what the birds drink, by age and by feed and temperature.</summary>
internal static class WaterCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("water", "What the birds drink a day, by age and by feed and temperature, and the flow of their drinkers.", "--age 42d --feed 170g/d --temp 28C --birds 300");
        Option<string?> age = new("--age") { HelpName = "42d", Description = "Age of the birds." };
        Option<string?> feed = new("--feed") { HelpName = "170g/d", Description = "Feed a bird eats a day." };
        Option<string?> temperature = new("--temp") { HelpName = "28C", Description = "Temperature of the air. [default: 21C]" };
        Option<string?> birds = new("--birds") { HelpName = "300", Description = "How many birds. [default: 1]" };
        foreach (Option<string?> option in new[] { age, feed, temperature, birds })
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            if (words.Text(age) is null && words.Text(feed) is null)
            {
                words.Refuse(age.Name + " or " + feed.Name + ": is missing; expected one of them, or both");
            }

            Age? known = words.Age(age);
            MassFlow? eaten = words.DailyWeight(feed);
            Temperature? air = words.BirdTemperature(temperature);
            int count = words.Birds(birds) ?? 1;
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(WaterAnswer.To(known, eaten, air ?? Temperature.FromDegreesCelsius(21), count), common, output, errors);
        });
        return command;
    }

    private static int Print(WaterAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) =>
        common.Answer(() => WaterDocument.Of(answer).ToJson(), page => WaterPage.Print(answer, page), output, errors);
}
