using System.Text.Json;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>air</c> for programs: figures for all birds together.</summary>
internal sealed record AirDocument
{
    public required int Birds { get; init; }

    public required double WeightKg { get; init; }

    public required double Co2M3PerHour { get; init; }

    /// <summary>By carbon dioxide balance; null where the contents are not said.</summary>
    public required double? VentilationM3PerHour { get; init; }

    public required double MinimumByWeightM3PerHour { get; init; }

    public required double? HeatKw { get; init; }

    public required double? MoistureKgPerHour { get; init; }

    public required IReadOnlyList<EquipmentNode> Capacity { get; init; }

    public required IReadOnlyList<LimitNode> Limits { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static AirDocument Of(AirAnswer answer) => new()
    {
        Birds = answer.Birds,
        WeightKg = answer.Weight.Kilograms,
        Co2M3PerHour = answer.CarbonDioxideGiven.CubicMetersPerHour,
        VentilationM3PerHour = answer.Ventilation?.CubicMetersPerHour,
        MinimumByWeightM3PerHour = answer.MinimumByWeight.CubicMetersPerHour,
        HeatKw = answer.Given is { } given ? answer.Birds * (double)given.Total.Kilowatts : null,
        MoistureKgPerHour = answer.Birds * answer.Given?.Moisture.KilogramsPerHour,
        Capacity = [.. answer.Capacity.Select(EquipmentNode.Of)],
        Limits = LimitNode.Of(answer.Limits),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.AirDocument);
}
