namespace Poultry.Growth.Calculators.Housing;

/// <summary>A floor at one age for programs.</summary>
internal sealed record SpaceNode
{
    public required double AgeDays { get; init; }

    public required double Birds { get; init; }

    public required double MeanKg { get; init; }

    public required double DensityKgPerM2 { get; init; }

    public required double BirdsPerM2 { get; init; }

    public required int? BirdsAtLimit { get; init; }

    public required string? BindingLimit { get; init; }

    public required bool? Met { get; init; }

    public required double? ChanceOverPercent { get; init; }

    public static SpaceNode Of(SpaceAtAge row) => new()
    {
        AgeDays = row.At.Age.Days,
        Birds = row.At.Verdict.Birds,
        MeanKg = row.At.Verdict.Weight.Kilograms,
        DensityKgPerM2 = row.At.Verdict.Density.KilogramsPerSquareMeter,
        BirdsPerM2 = row.At.Verdict.BirdDensity.BirdsPerSquareMeter,
        BirdsAtLimit = row.At.Verdict.BirdsAtLimit,
        BindingLimit = row.At.Verdict.Binding?.Limit.ToString(),
        Met = row.At.Verdict.IsMet,
        ChanceOverPercent = row.ChanceOver?.Percent,
    };
}
