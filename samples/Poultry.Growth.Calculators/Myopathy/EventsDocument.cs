using System.Text.Json;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer of <c>myopathy events</c> for programs.</summary>
internal sealed record EventsDocument
{
    public required double KillAgeDays { get; init; }

    public required double Level { get; init; }

    public required IReadOnlyList<EventNode> Events { get; init; }

    /// <summary>Null where no disturbance has a dose.</summary>
    public required double? AffectedPercent { get; init; }

    public required double? AffectedLowPercent { get; init; }

    public required double? AffectedHighPercent { get; init; }

    public required IReadOnlyList<CautionNode> TypicalDisturbances { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static EventsDocument Of(EventsAnswer answer) => new()
    {
        KillAgeDays = answer.KillAge.Days,
        Level = answer.Level,
        Events = [.. answer.Prevalence.Events.Select((effect, at) => EventNode.Of(effect, answer.Without[at]))],
        AffectedPercent = answer.Prevalence.Affected?.Value.Percent,
        AffectedLowPercent = answer.Prevalence.Affected?.Interval.Low?.Percent,
        AffectedHighPercent = answer.Prevalence.Affected?.Interval.High?.Percent,
        TypicalDisturbances = [.. TypicalDisturbance.All.Select(kind => new CautionNode(kind.Code, kind.Mind))],
        Cautions = CautionNode.Of(answer.Prevalence.Cautions),
        Sources = SourceNode.Of(EventsAnswer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.EventsDocument);
}
