using Poultry.Growth.Evidence;

namespace Poultry.Growth.Feeding;

/// <summary>Maintenance by temperature, and energy a gram of live gain by sex and age (Longo et al. 2006).</summary>
internal sealed class GainCostEnergy(GainCost cost) : EnergyModel(BodyComposition.Caldas2019, BodyComposition.Caldas2019)
{
    public override ModelInfo Model { get; } = new(
        cost.Id,
        "Maintenance by temperature and energy a gram of gain, 2006, " + cost.Name,
        "ME = MEm + c G; " + MaintenanceEnergy.Longo2006.Model.Equation,
        [
            new("ME", "metabolizable energy eaten", "kcal/d"),
            .. MaintenanceEnergy.Longo2006.Model.Symbols,
            new("G", "live gain", "g/d"),
            new("c", "males 3.72, 4.21, 4.51, females 3.98, 3.93, 7.04 at 1 to 21, 22 to 42, 43 to 56 d; read as the name says", "kcal/g"),
        ],
        [.. MaintenanceEnergy.Longo2006.Model.Citations, FeedingSources.FeedTables],
        "The line was put together by us from the parts of one paper. Printed steps make need jump at 21 and 42 d; the female 7.04 is 79 % above the step before and raises the female total at 9 weeks by 16 points: 4.21 (3.93 with the step of the males) stands in its place in the default reading. Cumulative feed at 9 weeks of three printed tables: 8 % off at most smoothed with 4.21, 11 to 12 % as printed; weekly errors slide from +37 to -20 %.",
        HowKnown.Derived,
        [.. MaintenanceEnergy.Longo2006.Model.Ranges, new ValidityRange("age", 1, 56, "d")]);

    internal override double CumulativeError => cost.CumulativeError;

    internal override double DailyError => 0.18;

    internal override EnergyParts On(in BirdDay day) => new(
        MaintenanceEnergy.Longo2006.KilocaloriesPerDay(day.Kilograms, day.Celsius),
        0,
        cost.KilocaloriesPerGram(day.Male, day.AgeDays) * (day.EndGrams - day.StartGrams));
}
