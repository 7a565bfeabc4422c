using System.Text.Json;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>pasture</c> for programs.</summary>
internal sealed record PastureDocument
{
    public required int Birds { get; init; }

    /// <summary>Fresh ground of one batch.</summary>
    public required double AreaM2 { get; init; }

    public required double AreaPerBirdBatchM2 { get; init; }

    public required double ShelterAreaPerBirdM2 { get; init; }

    public required double SeasonAreaM2 { get; init; }

    /// <summary>Land that gives every spot its rest.</summary>
    public required double LandM2 { get; init; }

    public required double BirdsPerHectareSeason { get; init; }

    public required double? NitrogenPerBirdG { get; init; }

    /// <summary>Null where nothing is said of feed or nitrogen, and for spreadable nitrogen, which is no load on pasture.</summary>
    public required double? NitrogenKgPerHaPass { get; init; }

    public required double? NitrogenKgPerHaYear { get; init; }

    public required double? PhosphorusKgPerHaPass { get; init; }

    /// <summary>The most under the limit asked about; null without one.</summary>
    public required int? BirdsPerHectareYear { get; init; }

    /// <summary>Land of each of them; null where the limit lets none be kept.</summary>
    public required double? AreaPerBirdM2 { get; init; }

    public required bool? LimitMet { get; init; }

    public required IReadOnlyList<LimitNode> Limits { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static PastureDocument Of(PastureAnswer answer) => new()
    {
        Birds = answer.Plan.Birds,
        AreaM2 = answer.Plan.GroundPerBatch.SquareMeters,
        AreaPerBirdBatchM2 = answer.Plan.GroundPerBird.SquareMeters,
        ShelterAreaPerBirdM2 = answer.Plan.Density.AreaPerBird!.Value.SquareMeters,
        SeasonAreaM2 = answer.Season.GroundPerSeason.SquareMeters,
        LandM2 = answer.Season.Land.SquareMeters,
        BirdsPerHectareSeason = answer.Season.BirdsOnLand.BirdsPerHectare,
        NitrogenPerBirdG = answer.Nitrogen?.Amount.Grams,
        NitrogenKgPerHaPass = PerHectare(answer.NitrogenOfPass),
        NitrogenKgPerHaYear = PerHectare(answer.NitrogenPerYear),
        PhosphorusKgPerHaPass = PerHectare(answer.PhosphorusOfPass),
        BirdsPerHectareYear = answer.BirdsPerHectareAndYear,
        AreaPerBirdM2 = answer.BirdsPerHectareAndYear is > 0 and { } birds ? 10_000.0 / birds : null,
        LimitMet = answer.NitrogenPerYear is { } year && answer.Limit is { } limit ? year <= limit : null,
        Limits = LimitNode.Of(answer.Limits),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.PastureDocument);

    private static double? PerHectare(AreaDensity? load) => load?.KilogramsPerSquareMeter * 10_000;
}
