
namespace Poultry.Growth.Calculators.Weighing;

/// <summary>The birds of one age; null where the weigh-ins do not show it.</summary>
internal sealed record WeighedNode
{
    public required double AgeDays { get; init; }

    public required DateOnly? Date { get; init; }

    public required string Sex { get; init; }

    public required int Birds { get; init; }

    public required double MeanKg { get; init; }

    /// <summary>Where the flock's mean lies if birds were caught at random; null where the spread is unknown.</summary>
    public required double? LowKg { get; init; }

    public required double? HighKg { get; init; }

    public required double? SdKg { get; init; }

    public required double? CvPercent { get; init; }

    public required double? UniformityPercent { get; init; }

    /// <summary>counted, normal-curve or unknown.</summary>
    public required string UniformityBasis { get; init; }

    public required int? BirdsToWeigh { get; init; }

    public static IReadOnlyList<WeighedNode> Of(WeighAnswer answer) =>
    [
        .. answer.ByAge.Select(age => new WeighedNode
        {
            AgeDays = age.Age.Days,
            Date = answer.Calendar.DateAt(age.Age),
            Sex = Codes.Of(age.Sex),
            Birds = age.Birds,
            MeanKg = age.MeanWeight.Kilograms,
            LowKg = answer.MeanInterval(age).Low?.Kilograms,
            HighKg = answer.MeanInterval(age).High?.Kilograms,
            SdKg = age.StandardDeviation?.Kilograms,
            CvPercent = 100 * age.CoefficientOfVariation,
            UniformityPercent = 100 * age.ShareWithinTenPercent,
            UniformityBasis = Codes.Of(age.Basis),
            BirdsToWeigh = answer.BirdsFor(age.CoefficientOfVariation, answer.Flock),
        }),
    ];
}
