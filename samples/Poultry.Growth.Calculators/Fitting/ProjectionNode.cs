
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Weights at one age.</summary>
internal sealed record ProjectionNode
{
    public required double AgeDays { get; init; }

    public required DateOnly? Date { get; init; }

    public required double MeanKg { get; init; }

    public required double? LowKg { get; init; }

    public required double? HighKg { get; init; }

    public required double? BirdLowKg { get; init; }

    public required double? BirdHighKg { get; init; }

    /// <summary>What goes with this age and not with the whole answer.</summary>
    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public static ProjectionNode Of(ProjectedWeight projection, BatchCalendar calendar) => new()
    {
        AgeDays = projection.Age.Days,
        Date = calendar.DateAt(projection.Age),
        MeanKg = projection.Mean.Value.Kilograms,
        LowKg = projection.Mean.Interval.Low?.Kilograms,
        HighKg = projection.Mean.Interval.High?.Kilograms,
        BirdLowKg = projection.Bird?.Interval.Low?.Kilograms,
        BirdHighKg = projection.Bird?.Interval.High?.Kilograms,
        Cautions = CautionNode.Of(projection.Beyond is { } beyond ? [beyond] : []),
    };
}
