using System.Text.Json;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>brooder</c> for programs: figures for all chicks together.</summary>
internal sealed record BrooderDocument
{
    public required int Chicks { get; init; }

    public required double AgeDays { get; init; }

    public required IReadOnlyList<RangeNode> AreaM2 { get; init; }

    /// <summary>The lowest and the highest of all guides.</summary>
    public required RangeNode? TemperatureC { get; init; }

    public required IReadOnlyList<RangeNode> TemperaturesC { get; init; }

    public required IReadOnlyList<RangeNode> FeederCm { get; init; }

    public required IReadOnlyList<RangeNode> DrinkerCm { get; init; }

    public required int LampsLow { get; init; }

    public required int LampsHigh { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static BrooderDocument Of(BrooderAnswer answer)
    {
        IReadOnlyList<RangeNode> temperatures = Each(answer, stage => stage.Temperature is { } warmth ? (warmth.Low.DegreesCelsius, warmth.High.DegreesCelsius) : null, 1);
        return new()
        {
            Chicks = answer.Chicks,
            AgeDays = answer.Age.Days,
            AreaM2 = Each(answer, stage => stage.FloorPerBird is { } floor ? (floor.Least.SquareMeters, floor.Ample.SquareMeters) : null, answer.Chicks),
            TemperatureC = temperatures.Count == 0 ? null : new(null, null, temperatures.Min(one => one.Low), temperatures.Max(one => one.High)),
            TemperaturesC = temperatures,
            FeederCm = Each(answer, stage => stage.FeederPerBird is { } feeder ? (feeder.Least.Centimeters, feeder.Ample.Centimeters) : null, answer.Chicks),
            DrinkerCm = Each(answer, stage => stage.DrinkerPerBird is { } drinker ? (drinker.Least.Centimeters, drinker.Ample.Centimeters) : null, answer.Chicks),
            LampsLow = answer.Lamps.Fewest,
            LampsHigh = answer.Lamps.Most,
            Cautions = CautionNode.Of(BrooderAnswer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.BrooderDocument);

    private static IReadOnlyList<RangeNode> Each(BrooderAnswer answer, Func<BroodingStage, (double Low, double High)?> of, int times) =>
    [
        .. answer.Guides.Select(one => (one.Guide, Range: of(one.Stage))).Where(one => one.Range is not null)
            .Select(one => new RangeNode(one.Guide.Model.Citations[0].Key, Codes.Of(one.Guide.Model.HowKnown), times * one.Range!.Value.Low, times * one.Range.Value.High)),
    ];
}
