
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>One family of a comparison.</summary>
internal sealed record ComparedNode
{
    public required string Family { get; init; }

    public required string Status { get; init; }

    public required string Reason { get; init; }

    public required double? Aicc { get; init; }

    public required double? AiccDifference { get; init; }

    /// <summary>Share among the families compared.</summary>
    public required double? EvidencePercent { get; init; }

    public required IReadOnlyList<ProjectionNode> Projections { get; init; }

    public static IReadOnlyList<ComparedNode> Of(FitAnswer answer) =>
    [
        .. answer.Comparison.Select(row => new ComparedNode
        {
            Family = row.Fit.Family.Id,
            Status = Codes.Of(row.Fit.Status),
            Reason = row.Fit.Reason,
            Aicc = row.Fit.Curve is null ? null : row.Fit.Aicc,
            AiccDifference = row.AiccDifference,
            EvidencePercent = 100 * row.Weight,
            Projections = row.Fit.Curve is null
                ? []
                : [.. answer.Ages.Select(age => ProjectedWeight.Of(row.Fit, age, answer.Level)).OfType<ProjectedWeight>().Select(at => ProjectionNode.Of(at, answer.Calendar))],
        }),
    ];
}
