
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The birds of one age against the standard; above 0 they are ahead, null where the standard does not reach.</summary>
internal sealed record DifferenceNode
{
    public required double AgeDays { get; init; }

    public required DateOnly? Date { get; init; }

    public required string Sex { get; init; }

    public required int Birds { get; init; }

    public required double MeanKg { get; init; }

    public required double? StandardKg { get; init; }

    public required double? DifferenceKg { get; init; }

    public required double? LowKg { get; init; }

    public required double? HighKg { get; init; }

    public required double? DaysAhead { get; init; }

    public required double? DaysAheadLow { get; init; }

    public required double? DaysAheadHigh { get; init; }

    public static IReadOnlyList<DifferenceNode> Of(CompareAnswer answer) =>
    [
        .. answer.ByAge.Select(age => new DifferenceNode
        {
            AgeDays = age.Age.Days,
            Date = answer.Calendar.DateAt(age.Age),
            Sex = Codes.Of(age.Sex),
            Birds = age.Birds,
            MeanKg = age.MeanWeight.Kilograms,
            StandardKg = age.StandardWeight?.Kilograms,
            DifferenceKg = age.Difference?.Value.Kilograms,
            LowKg = age.Difference?.Interval.Low?.Kilograms,
            HighKg = age.Difference?.Interval.High?.Kilograms,
            DaysAhead = age.Ahead?.Value.Days,
            DaysAheadLow = age.Ahead?.Interval.Low?.Days,
            DaysAheadHigh = age.Ahead?.Interval.High?.Days,
        }),
    ];
}
