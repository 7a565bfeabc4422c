using System.Text.Json;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>water</c> for programs.</summary>
internal sealed record WaterDocument
{
    public required double? AgeDays { get; init; }

    public required double TemperatureC { get; init; }

    public required int Birds { get; init; }

    public required IReadOnlyList<WaterNode> ByModel { get; init; }

    /// <summary>Null without an age.</summary>
    public required double? NippleMlPerMinute { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static WaterDocument Of(WaterAnswer answer) => new()
    {
        AgeDays = answer.Age?.Days,
        TemperatureC = answer.Temperature.DegreesCelsius,
        Birds = answer.Birds,
        ByModel = [.. answer.ByModel.Select(model => new WaterNode(
            model.Name,
            model.Amount.PerBird.GramsPerDay,
            model.Amount.Low.GramsPerDay,
            model.Amount.High.GramsPerDay,
            answer.Birds * model.Amount.PerBird.KilogramsPerDay,
            answer.Birds * model.Amount.Low.KilogramsPerDay,
            answer.Birds * model.Amount.High.KilogramsPerDay))],
        NippleMlPerMinute = answer.NippleFlow?.MillilitersPerMinute,
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.WaterDocument);
}
