using System.Text.Json;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>The answer of <c>space</c> for programs.</summary>
internal sealed record SpaceDocument
{
    public required double AreaM2 { get; init; }

    public required int? Birds { get; init; }

    public required double WeightKg { get; init; }

    public required double? AgeDays { get; init; }

    /// <summary>Null where the number of birds is not said.</summary>
    public required double? DensityKgPerM2 { get; init; }

    public required double? BirdsPerM2 { get; init; }

    /// <summary>Null where no limit is known to bind.</summary>
    public required int? BirdsAtLimit { get; init; }

    /// <summary>If deaths are as expected; null where losses are not said. Never to be read without chanceOfTooManyPercent and chicksSafeWithNoDeaths.</summary>
    public required int? ChicksToPlace { get; init; }

    public required double? ChanceOfTooManyPercent { get; init; }

    public required int? ChicksSafeWithNoDeaths { get; init; }

    public required int? ChicksAtRisk { get; init; }

    public required double RiskPercent { get; init; }

    public required string? BindingLimit { get; init; }

    public required int BirdsTooMany { get; init; }

    public required IReadOnlyList<SpaceNode> ByAge { get; init; }

    public required double? LimitReachedAgeDays { get; init; }

    public required string? LimitReached { get; init; }

    public required double? CumulativeMortalityLimitPercent { get; init; }

    public required IReadOnlyList<LimitNode> Limits { get; init; }

    public required IReadOnlyList<EquipmentNode> Equipment { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static SpaceDocument Of(SpaceAnswer answer) => new()
    {
        AreaM2 = answer.Question.Floor.SquareMeters,
        Birds = answer.Question.Birds,
        WeightKg = answer.Question.Weight.Kilograms,
        AgeDays = answer.Question.Age?.Days,
        DensityKgPerM2 = answer.Question.Birds is null ? null : answer.Verdict.Density.KilogramsPerSquareMeter,
        BirdsPerM2 = answer.Question.Birds is null ? null : answer.Verdict.BirdDensity.BirdsPerSquareMeter,
        BirdsAtLimit = answer.Verdict.BirdsAtLimit,
        ChicksToPlace = answer.Chicks?.AsExpected,
        ChanceOfTooManyPercent = answer.Chicks?.ChanceOfTooMany.Percent,
        ChicksSafeWithNoDeaths = answer.Verdict.BirdsAtLimit,
        ChicksAtRisk = answer.Chicks?.AtChance(answer.Question.Risk),
        RiskPercent = answer.Question.Risk.Percent,
        BindingLimit = answer.Verdict.Binding?.Limit.ToString(),
        BirdsTooMany = answer.Verdict.BirdsTooMany,
        ByAge = [.. answer.ByAge.Select(SpaceNode.Of)],
        LimitReachedAgeDays = answer.Reached?.Age.Days,
        LimitReached = answer.Reached?.Limit.Limit.ToString(),
        CumulativeMortalityLimitPercent = answer.MortalityLimitPercent,
        Limits = LimitNode.Of([.. answer.Verdict.Limits, .. answer.FormLimits]),
        Equipment = [.. answer.Equipment.Select(EquipmentNode.Of)],
        Flagged = FlaggedNode.Of(answer.Question.Suspicions),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.SpaceDocument);
}
