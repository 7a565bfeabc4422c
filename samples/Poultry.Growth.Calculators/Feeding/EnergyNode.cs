using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A need by one model.</summary>
internal sealed record EnergyNode(
    string Model,
    double MaintenanceKcalPerDay,
    double TemperatureKcalPerDay,
    double GainKcalPerDay,
    double EnergyKcalPerDay,
    double EnergyLowKcalPerDay,
    double EnergyHighKcalPerDay,
    double FeedGPerDay,
    double FeedLowGPerDay,
    double FeedHighGPerDay)
{
    public static EnergyNode Of(EnergyNeed need, EnergyAnswer answer)
    {
        Interval<Power> energy = need.Within(answer.Question.Level);
        Estimate<Mass> feed = need.FeedPerDay(answer.Diet, answer.Question.Level);
        return new(
            EnergyModels.NameOf(need.Model),
            Kilocalories.PerDay(need.Maintenance),
            Kilocalories.PerDay(need.TemperatureTerm),
            Kilocalories.PerDay(need.Gain),
            Kilocalories.PerDay(need.Total),
            Kilocalories.PerDay(energy.Low!.Value),
            Kilocalories.PerDay(energy.High!.Value),
            feed.Value.Grams,
            feed.Interval.Low!.Value.Grams,
            feed.Interval.High!.Value.Grams);
    }
}
