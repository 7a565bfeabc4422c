using System.Text.Json;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>standards</c> for programs.</summary>
internal sealed record StandardsDocument
{
    public required IReadOnlyList<LimitRowNode> Rows { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static StandardsDocument Of(StandardsAnswer answer) => new()
    {
        Rows = [.. answer.Limits.Select(LimitRowNode.Of)],
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.StandardsDocument);
}
