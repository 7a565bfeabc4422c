
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>When a weight is reached; no age where it never is, and the reason says so.</summary>
internal sealed record TargetNode
{
    public required double WeightKg { get; init; }

    public required double? AgeDays { get; init; }

    public required double? LowDays { get; init; }

    public required double? HighDays { get; init; }

    public required DateOnly? Date { get; init; }

    public required string Reason { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public static TargetNode? Of(WeightTarget? target, BatchCalendar calendar) => target is null ? null : new()
    {
        WeightKg = target.Weight.Kilograms,
        AgeDays = target.Age?.Value.Days,
        LowDays = target.Age?.Interval.Low?.Days,
        HighDays = target.Age?.Interval.High?.Days,
        Date = target.Age is { } age ? calendar.DateAt(age.Value) : null,
        Reason = target.Explanation,
        Cautions = CautionNode.Of(target.Beyond is { } beyond ? [beyond] : []),
    };
}
