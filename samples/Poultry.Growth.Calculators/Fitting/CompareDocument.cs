using System.Text.Json;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The answer of <c>compare</c> for programs.</summary>
internal sealed record CompareDocument
{
    public required string File { get; init; }

    public required StandardNode Standard { get; init; }

    public required DateOnly? Placed { get; init; }

    public required double? AgeAtPlacementDays { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    public required IReadOnlyList<DifferenceNode> ByAge { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static CompareDocument Of(CompareAnswer answer) => new()
    {
        File = answer.Reading.File,
        Standard = StandardNode.Of(answer.Standard),
        Placed = answer.Reading.Placed,
        AgeAtPlacementDays = answer.Reading.AgeAtPlacement?.Days,
        Level = answer.Level,
        ByAge = DifferenceNode.Of(answer),
        Flagged = FlaggedNode.Of(answer.Reading.Suspicions),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.CompareDocument);
}
