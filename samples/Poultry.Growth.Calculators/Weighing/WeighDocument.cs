using System.Text.Json;

namespace Poultry.Growth.Calculators.Weighing;

/// <summary>The answer of <c>weigh</c> for programs.</summary>
internal sealed record WeighDocument
{
    public required string File { get; init; }

    public required DateOnly? Placed { get; init; }

    public required double? AgeAtPlacementDays { get; init; }

    public required IReadOnlyList<WeighedNode> ByAge { get; init; }

    /// <summary>CV between birds over all weigh-ins; null where none shows it.</summary>
    public required double? CvPercent { get; init; }

    /// <summary>At that CV, of the flock where its size was given; null where the CV is unknown or 0.</summary>
    public required int? BirdsToWeigh { get; init; }

    /// <summary>The same of a flock without end.</summary>
    public required int? BirdsToWeighOfLargeFlock { get; init; }

    public required int? Flock { get; init; }

    public required double WithinPercent { get; init; }

    public required double Level { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static WeighDocument Of(WeighAnswer answer) => new()
    {
        File = answer.Reading.File,
        Placed = answer.Reading.Placed,
        AgeAtPlacementDays = answer.Reading.AgeAtPlacement?.Days,
        ByAge = WeighedNode.Of(answer),
        CvPercent = 100 * answer.Spread,
        BirdsToWeigh = answer.BirdsFor(answer.Spread, answer.Flock),
        BirdsToWeighOfLargeFlock = answer.BirdsFor(answer.Spread, null),
        Flock = answer.Flock,
        WithinPercent = 100 * answer.Precision,
        Level = answer.Level,
        Flagged = FlaggedNode.Of(answer.Reading.Suspicions),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(WeighAnswer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.WeighDocument);
}
