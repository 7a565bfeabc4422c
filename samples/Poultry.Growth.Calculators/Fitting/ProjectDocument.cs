using System.Text.Json;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The answer of <c>project</c> for programs.</summary>
internal sealed record ProjectDocument
{
    /// <summary>Null where there are no weigh-ins.</summary>
    public required string? File { get; init; }

    public required PriorNode Prior { get; init; }

    public required DateOnly? Placed { get; init; }

    public required double? AgeAtPlacementDays { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    /// <summary>Spread between birds of one sex: weighed or assumed.</summary>
    public required double CvPercent { get; init; }

    public required IReadOnlyList<ProjectionNode> Projections { get; init; }

    /// <summary>The last of the ages asked for; the chance, the share and the weigh-ins to come are about it.</summary>
    public required double BookedAgeDays { get; init; }

    public required TargetNode? Target { get; init; }

    /// <summary>That the mean is at the target or above, as a fraction; null without a target.</summary>
    public required double? ChanceAtTarget { get; init; }

    /// <summary>Of the birds, at the target or above, as a fraction; null without a target.</summary>
    public required double? ShareAtTarget { get; init; }

    public required IReadOnlyList<FlockNode> Flock { get; init; }

    public required IReadOnlyList<BandNode> Bands { get; init; }

    public required IReadOnlyList<NextWeighInNode> NextWeighIn { get; init; }

    public required IReadOnlyList<FamilyNode> Families { get; init; }

    /// <summary>Null where weigh-ins and prior agree.</summary>
    public required CautionNode? Disagreement { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static ProjectDocument Of(ProjectAnswer answer) => new()
    {
        File = answer.Reading?.File,
        Prior = PriorNode.Of(answer.Projection.Prior),
        Placed = answer.Calendar.Placed,
        AgeAtPlacementDays = answer.Calendar.AgeAtPlacement?.Days,
        Level = answer.Level,
        CvPercent = 100 * answer.Projection.CoefficientOfVariation,
        Projections = [.. answer.Projections.Select(projection => ProjectionNode.Of(projection, answer.Calendar))],
        BookedAgeDays = answer.BookedDay.Age.Days,
        Target = TargetNode.Of(answer.Target, answer.Calendar),
        ChanceAtTarget = answer.BookedDay.ChanceAtTarget?.Fraction,
        ShareAtTarget = answer.BookedDay.ShareAtTarget?.Fraction,
        Flock = [.. answer.Flock.Select(FlockNode.Of)],
        Bands = [.. answer.Flock.SelectMany(BandNode.Of)],
        NextWeighIn = [.. answer.NextWeighIns.Select(NextWeighInNode.Of)],
        Families = FamilyNode.Of(answer.Projection),
        Disagreement = answer.Projection.Disagreement is { } caution ? CautionNode.Of([caution])[0] : null,
        Flagged = FlaggedNode.Of(answer.Suspicions),
        Cautions = CautionNode.Of([.. answer.Cautions, .. answer.Beyond]),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.ProjectDocument);
}
