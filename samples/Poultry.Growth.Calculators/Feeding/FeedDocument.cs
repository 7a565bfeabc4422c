using System.Text.Json;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>feed</c> for programs.</summary>
internal sealed record FeedDocument
{
    public required string Batch { get; init; }

    public required string Model { get; init; }

    public required DateOnly? Placed { get; init; }

    public required double AgeAtPlacementDays { get; init; }

    public required int BirdsPlaced { get; init; }

    public required string Temperatures { get; init; }

    public required double Level { get; init; }

    public required IReadOnlyList<FeedDayNode> ByDay { get; init; }

    public required IReadOnlyList<FeedPhaseNode> Phases { get; init; }

    /// <summary>What the batch should have eaten by then; null where nobody asked and nothing was recorded.</summary>
    public required double? ExpectedToDateKg { get; init; }

    public required double? ExpectedToDateLowKg { get; init; }

    public required double? ExpectedToDateHighKg { get; init; }

    public required double? ExpectedToDateAgeDays { get; init; }

    /// <summary>Eaten over expected at the age of the record; null without a record.</summary>
    public required double? FarmFactor { get; init; }

    /// <summary>Null where it is not applied.</summary>
    public required double? FarmFactorLow { get; init; }

    public required double? FarmFactorHigh { get; init; }

    /// <summary>Why the rest is not corrected by it; null where it is, or there is no record.</summary>
    public required string? FarmFactorNotUsed { get; init; }

    public required double? EatenKg { get; init; }

    public required FeedTotalsNode Totals { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static FeedDocument Of(FeedAnswer answer) => new()
    {
        Batch = answer.Question.Title,
        Model = EnergyModels.NameOf(answer.Question.Conditions.Model),
        Placed = answer.Question.Placed,
        AgeAtPlacementDays = answer.Question.HeadCount.AgeAtPlacement.Days,
        BirdsPlaced = answer.Question.HeadCount.Placed,
        Temperatures = answer.Question.Conditions.Temperatures.ToString(),
        Level = answer.Question.Level,
        ByDay = [.. answer.Forecast.ByDay.Select(day => FeedDayNode.Of(day, answer.Calendar))],
        Phases = [.. answer.Forecast.Phases.Select(phase => FeedPhaseNode.Of(phase, answer.Question.Placed))],
        ExpectedToDateKg = answer.ToDate?.Feed.Value.Kilograms,
        ExpectedToDateLowKg = answer.ToDate?.Feed.Interval.Low?.Kilograms,
        ExpectedToDateHighKg = answer.ToDate?.Feed.Interval.High?.Kilograms,
        ExpectedToDateAgeDays = answer.ToDate?.Age.Days,
        FarmFactor = answer.Forecast.FarmFactor?.Ratio,
        FarmFactorLow = answer.Forecast.FarmFactor?.Interval?.Low,
        FarmFactorHigh = answer.Forecast.FarmFactor?.Interval?.High,
        FarmFactorNotUsed = answer.Forecast.FarmFactor?.Reason,
        EatenKg = answer.Forecast.FarmFactor?.Record.Eaten.Kilograms,
        Totals = FeedTotalsNode.Of(answer.Forecast),
        Flagged = FlaggedNode.Of(answer.Question.Suspicions),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(answer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.FeedDocument);
}
