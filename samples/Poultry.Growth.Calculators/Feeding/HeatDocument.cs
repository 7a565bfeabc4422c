using System.Text.Json;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>heat</c> for programs. There is no class: how long the birds have been in the heat is not known.</summary>
internal sealed record HeatDocument
{
    public required double DryBulbC { get; init; }

    public required double WetBulbC { get; init; }

    public required double Thi { get; init; }

    /// <summary>Null without wind, or outside 35 to 41 °C and 0.2 to 1.2 m/s.</summary>
    public required double? Thvi { get; init; }

    /// <summary>Of one bird; null without a weight, or above 40 °C.</summary>
    public required double? HeatW { get; init; }

    public required double? MoistureGPerHour { get; init; }

    public required IReadOnlyList<ComfortNode> Comfort { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static HeatDocument Of(HeatAnswer answer) => new()
    {
        DryBulbC = answer.DryBulb.DegreesCelsius,
        WetBulbC = answer.WetBulb.DegreesCelsius,
        Thi = answer.Thi.DegreesCelsius,
        Thvi = answer.Thvi?.DegreesCelsius,
        HeatW = (double?)answer.GivenOff?.Total.Watts,
        MoistureGPerHour = answer.GivenOff?.Moisture.GramsPerHour,
        Comfort = [.. answer.Comfort.Select(comfort => new ComfortNode(comfort.Source, comfort.Comfortable.DegreesCelsius))],
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.HeatDocument);
}
