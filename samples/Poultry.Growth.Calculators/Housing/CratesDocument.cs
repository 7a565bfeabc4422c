using System.Text.Json;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>crates</c> for programs.</summary>
internal sealed record CratesDocument
{
    public required string Standard { get; init; }

    public required string HowKnown { get; init; }

    public required bool Unverified { get; init; }

    public required double WeightKg { get; init; }

    public required double CrateAreaCm2 { get; init; }

    /// <summary>As advised, and by the rule for hot days where it holds.</summary>
    public required int BirdsPerCrate { get; init; }

    /// <summary>By the text alone.</summary>
    public required int BirdsPerCrateByStandard { get; init; }

    /// <summary>Null where no bird fits.</summary>
    public required double? AreaPerBirdCm2 { get; init; }

    public required double? HeightNeededCm { get; init; }

    public required bool? HeightMet { get; init; }

    public required int? Crates { get; init; }

    public required int? Loads { get; init; }

    public required IReadOnlyList<LimitNode> Limits { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static CratesDocument Of(CratesAnswer answer) => new()
    {
        Standard = answer.Loading.Standard.ToString(),
        HowKnown = answer.Loading.Standard.IsUnverified ? "memory, unverified" : Codes.Of(answer.Loading.Standard.HowKnown),
        Unverified = answer.Loading.Standard.IsUnverified,
        WeightKg = answer.Loading.Weight.Kilograms,
        CrateAreaCm2 = answer.Loading.Crate.SquareCentimeters,
        BirdsPerCrate = answer.BirdsPerCrate,
        BirdsPerCrateByStandard = answer.Loading.BirdsByStandard,
        AreaPerBirdCm2 = answer.BirdsPerCrate > 0 ? answer.Loading.Crate.SquareCentimeters / answer.BirdsPerCrate : null,
        HeightNeededCm = answer.Loading.HeightNeeded?.Centimeters,
        HeightMet = answer.HeightMet,
        Crates = answer.Crates,
        Loads = answer.Loads,
        Limits = LimitNode.Of(answer.Limits),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.CratesDocument);
}
