using System.Text.Json;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer of <c>myopathy inspect</c> for programs.</summary>
internal sealed record InspectDocument
{
    public required double Level { get; init; }

    /// <summary>Null where it was not asked, or is not attainable.</summary>
    public required int? BirdsToOpen { get; init; }

    /// <summary>Why it is not attainable; null where it is, or was not asked.</summary>
    public required string? Reason { get; init; }

    public required double? ChanceOfNone { get; init; }

    /// <summary>Null where nothing was opened.</summary>
    public required RateNode? Rate { get; init; }

    public required SpreadNode? Posterior { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static InspectDocument Of(InspectAnswer answer) => new()
    {
        Level = answer.Level,
        BirdsToOpen = answer.ToOpen?.Birds,
        Reason = answer.ToOpen?.Reason,
        ChanceOfNone = answer.ToOpen?.ChanceOfNone.Fraction,
        Rate = answer.Rate is { } rate ? RateNode.Of(rate) : null,
        Posterior = answer.Posterior is { } posterior ? SpreadNode.Of(posterior, answer.Level) : null,
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.InspectDocument);
}
