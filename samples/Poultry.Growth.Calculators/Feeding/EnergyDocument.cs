using System.Text.Json;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>energy</c> for programs.</summary>
internal sealed record EnergyDocument
{
    public required string Model { get; init; }

    /// <summary>All heat of a fed bird in heat-production, maintenance in the others.</summary>
    public required double MaintenanceKcalPerDay { get; init; }

    /// <summary>0 where the model has temperature in its maintenance, or none.</summary>
    public required double TemperatureKcalPerDay { get; init; }

    public required double GainKcalPerDay { get; init; }

    public required double EnergyKcalPerDay { get; init; }

    public required double EnergyLowKcalPerDay { get; init; }

    public required double EnergyHighKcalPerDay { get; init; }

    public required double FeedGPerDay { get; init; }

    public required double FeedLowGPerDay { get; init; }

    public required double FeedHighGPerDay { get; init; }

    public required double Level { get; init; }

    public required double TemperatureC { get; init; }

    public required double AgeDays { get; init; }

    public required double DietKcalPerKg { get; init; }

    public required IReadOnlyList<EnergyNode> ByModel { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static EnergyDocument Of(EnergyAnswer answer)
    {
        EnergyNode asked = EnergyNode.Of(answer.Need, answer);
        return new()
        {
            Model = asked.Model,
            MaintenanceKcalPerDay = asked.MaintenanceKcalPerDay,
            TemperatureKcalPerDay = asked.TemperatureKcalPerDay,
            GainKcalPerDay = asked.GainKcalPerDay,
            EnergyKcalPerDay = asked.EnergyKcalPerDay,
            EnergyLowKcalPerDay = asked.EnergyLowKcalPerDay,
            EnergyHighKcalPerDay = asked.EnergyHighKcalPerDay,
            FeedGPerDay = asked.FeedGPerDay,
            FeedLowGPerDay = asked.FeedLowGPerDay,
            FeedHighGPerDay = asked.FeedHighGPerDay,
            Level = answer.Question.Level,
            TemperatureC = answer.Temperature.DegreesCelsius,
            AgeDays = answer.Age.Days,
            DietKcalPerKg = Kilocalories.PerKilogram(answer.Diet),
            ByModel = [.. answer.ByModel.Select(need => EnergyNode.Of(need, answer))],
            Cautions = CautionNode.Of(answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.EnergyDocument);
}
