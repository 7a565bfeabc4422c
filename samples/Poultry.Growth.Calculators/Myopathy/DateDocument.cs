using System.Text.Json;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer of <c>myopathy date</c> for programs. Probabilities are 0 to 1.</summary>
internal sealed record DateDocument
{
    public required DateOnly Killed { get; init; }

    /// <summary>flat, susceptibility or log.</summary>
    public required string Prior { get; init; }

    /// <summary>Empty where no lesion can be explained.</summary>
    public required IReadOnlyList<DayNode> ByDay { get; init; }

    public required double OlderThan14Days { get; init; }

    public required double Level { get; init; }

    /// <summary>Null where there is no answer, or beyond 14 d.</summary>
    public required int? LowDays { get; init; }

    /// <summary>Null where there is no answer, or beyond 14 d.</summary>
    public required int? HighDays { get; init; }

    public required IReadOnlyList<RankedNode> Events { get; init; }

    public required int Unexplained { get; init; }

    public required string CoarseRule { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static DateDocument Of(DateAnswer answer) => new()
    {
        Killed = answer.Killed,
        Prior = Codes.Of(answer.Dating.Prior),
        ByDay = [.. answer.Dating.ByDay.Select(day => new DayNode(day.DaysBefore, day.Date, day.Share.Fraction))],
        OlderThan14Days = answer.Dating.OlderThan14Days.Fraction,
        Level = answer.Level,
        LowDays = answer.Days?.Low,
        HighDays = answer.Days?.High,
        Events = [.. answer.Dating.Events.Select(row => new RankedNode(row.Disturbance.What, row.Date, row.DaysBefore, row.Share.Fraction, row.ExpectedBirds, row.ExplainsAll))],
        Unexplained = answer.Dating.Unexplained,
        CoarseRule = answer.Dating.CoarseRule,
        Cautions = CautionNode.Of(answer.Dating.Cautions),
        Sources = SourceNode.Of(DateAnswer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.DateDocument);
}
