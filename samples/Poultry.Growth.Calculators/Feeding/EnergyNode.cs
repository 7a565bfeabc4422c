using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A need by one model.</summary>
internal sealed record EnergyNode(string Model, double MaintenanceKcalPerDay, double TemperatureKcalPerDay, double GainKcalPerDay, double EnergyKcalPerDay, double FeedGPerDay)
{
    public static EnergyNode Of(EnergyNeed need, EnergyAnswer answer) => new(
        EnergyModels.NameOf(need.Model),
        Kilocalories.PerDay(need.Maintenance),
        Kilocalories.PerDay(need.TemperatureTerm),
        Kilocalories.PerDay(need.Gain),
        Kilocalories.PerDay(need.Total),
        need.FeedPerDay(answer.Diet).Value.Grams);
}
