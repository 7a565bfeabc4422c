using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Water by every source that can answer.</summary>
internal sealed class WaterAnswer
{
    public required Age? Age { get; init; }

    public required Temperature Temperature { get; init; }

    public required int Birds { get; init; }

    /// <summary>By name: the model, and for heat which of the three rules.</summary>
    public required IReadOnlyList<(string Name, WaterAmount Amount)> ByModel { get; init; }

    /// <summary>What a nipple must give; null without an age.</summary>
    public VolumeFlow? NippleFlow => Age is { } age ? DrinkingWater.NippleFlow(age) : null;

    public IReadOnlyList<Caution> Cautions =>
    [
        .. ByModel.SelectMany(model => model.Amount.Cautions).Distinct(),
        new Caution("water-never-short", "Sources part by half. Birds without water stop eating within hours and die in heat: plan pumps and drinkers for the highest figure, and read the meter."),
    ];

    public IReadOnlyList<Citation> Sources =>
        [.. ByModel.SelectMany(model => model.Amount.Model.Citations).Concat(Age is null ? [] : DrinkingWater.NippleFlowModel.Citations).DistinctBy(source => source.Key)];

    public static WaterAnswer To(Age? age, MassFlow? feed, Temperature temperature, int birds)
    {
        List<(string Name, WaterAmount Amount)> models = [];
        if (age is { } known)
        {
            models.Add((DrinkingWater.ByAgeModel.Id, DrinkingWater.ByAge(known)));
            if (DrinkingWater.ByWeek(known) is { } week)
            {
                models.Add((DrinkingWater.ByWeekModel.Id, week));
            }
        }

        if (feed is { } eaten)
        {
            // Below 21 °C the three rules for heat are one.
            WaterInHeat[] rules = temperature.DegreesCelsius > 21 ? Enum.GetValues<WaterInHeat>() : [WaterInHeat.SevenPercentOfBase];
            models.AddRange(rules.Select(rule => (DrinkingWater.ByFeedModel.Id + (rules.Length > 1 ? "-" + Codes.Of(rule) : ""), DrinkingWater.ByFeed(eaten, temperature, rule))));
        }

        return new() { Age = age, Temperature = temperature, Birds = birds, ByModel = models };
    }
}
