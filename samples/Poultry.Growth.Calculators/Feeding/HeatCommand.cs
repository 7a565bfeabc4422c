using System.CommandLine;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>heat</c>: how hot the air is for the birds, and the heat and moisture that they give off.</summary>
internal static class HeatCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "heat", "How hot the air is for the birds, what they give off themselves, and at which temperature they are comfortable.", "--dry-bulb 36C --humidity 50% --wind 0.5m/s --weight 2.8kg --age 49d");
        Option<string?> dry = new("--dry-bulb") { HelpName = "36C", Description = "Temperature of the air at the birds.", Required = true };
        Option<string?> wet = new("--wet-bulb") { HelpName = "27C", Description = "Of a wet thermometer in moving air; better than --humidity." };
        Option<string?> humidity = new("--humidity") { HelpName = "50%", Description = "Relative humidity, where there is no wet thermometer." };
        Option<string?> wind = new("--wind") { HelpName = "0.5m/s", Description = "Speed of the air at the birds." };
        Option<string?> weight = new("--weight") { HelpName = "2.8kg", Description = "Mean live weight." };
        Option<string?> age = new("--age") { HelpName = "49d", Description = "Age of the birds, for what is comfortable." };
        foreach (Option<string?> option in new[] { dry, wet, humidity, wind, weight, age })
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            Temperature? air = words.BirdTemperature(dry);
            Temperature? wetBulb = words.Temperature(wet);
            double? moist = words.Percent(humidity, 5, 100);
            if ((words.Text(wet) is null) == (words.Text(humidity) is null))
            {
                words.Refuse(wet.Name + " or " + humidity.Name + ": expected one of them" + (words.Text(wet) is null ? "" : ", not both"));
            }

            if (wetBulb is { } wetAir && air is { } dryAir && (wetAir.DegreesCelsius > dryAir.DegreesCelsius || wetAir.DegreesCelsius < -40))
            {
                words.Refuse(wet.Name + ": is out of range; expected a wet thermometer no warmer than the air");
            }

            Speed? speed = words.AirSpeed(wind);
            Mass? live = words.Weight(weight);
            Age? known = words.Age(age);
            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(HeatAnswer.To(air!.Value, wetBulb, moist is { } share ? Probability.FromFraction(share) : null, speed, live, known), common, output, errors);
        });
        return command;
    }

    private static int Print(HeatAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) =>
        common.Answer(() => HeatDocument.Of(answer).ToJson(), page => HeatPage.Print(answer, page), output, errors);
}
