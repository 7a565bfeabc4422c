using System.Text.Json;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The answer of <c>history</c> for programs.</summary>
internal sealed record HistoryDocument
{
    public required string Folder { get; init; }

    public required KindNode Kind { get; init; }

    /// <summary>All kinds in the folder.</summary>
    public required IReadOnlyList<KindNode> Kinds { get; init; }

    /// <summary>How learning ended.</summary>
    public required string Status { get; init; }

    /// <summary>The farm's own; the shipped one unless status is learned.</summary>
    public required PriorNode Prior { get; init; }

    public required PriorNode Shipped { get; init; }

    public required IReadOnlyList<PastBatchNode> Batches { get; init; }

    /// <summary>How the flock means of batches of this kind differ.</summary>
    public required BetweenBatchesNode BetweenBatches { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    /// <summary>The next batch by the farm's own past, no bird of it weighed.</summary>
    public required IReadOnlyList<ProjectionNode> NextBatch { get; init; }

    /// <summary>The same by the shipped prior.</summary>
    public required IReadOnlyList<ProjectionNode> NextBatchShipped { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static HistoryDocument Of(HistoryAnswer answer)
    {
        BatchCalendar noCalendar = new(null, null);
        return new()
        {
            Folder = answer.Reading.Folder,
            Kind = KindNode.Of(answer.Learned.Kind, answer.Reading),
            Kinds = [.. answer.Reading.History!.Kinds.Select(kind => KindNode.Of(kind, answer.Reading))],
            Status = Codes.Of(answer.Learned.Status),
            Prior = PriorNode.Of(answer.Learned.Prior),
            Shipped = PriorNode.Of(answer.Learned.Shipped),
            Batches = [.. answer.Learned.Batches.Select(PastBatchNode.Of)],
            BetweenBatches = BetweenBatchesNode.Of(answer.Learned),
            Level = answer.Level,
            NextBatch = [.. answer.ByAge.Select(at => ProjectionNode.Of(at.Own, noCalendar))],
            NextBatchShipped = [.. answer.ByAge.Select(at => ProjectionNode.Of(at.Shipped, noCalendar))],
            Flagged = FlaggedNode.Of(answer.Reading.Suspicions),
            Cautions = CautionNode.Of(answer.Learned.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.HistoryDocument);
}
