using System.Text.Json;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The answer of <c>season</c> for programs.</summary>
internal sealed record SeasonDocument
{
    public required string File { get; init; }

    public required string Name { get; init; }

    /// <summary><c>done</c>, or why there is no season.</summary>
    public required string Status { get; init; }

    public required double? Level { get; init; }

    public required SeasonMarginNode? Margin { get; init; }

    public required IReadOnlyList<SeasonBatchNode> Batches { get; init; }

    public required IReadOnlyList<SeasonLimitNode> BindingLimits { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static SeasonDocument Of(SeasonAnswer answer) => new()
    {
        File = answer.File,
        Name = answer.Plan.Name,
        Status = answer.Season is null ? SeasonAnswer.NoSeason : "done",
        Level = answer.Season?.Margin.Interval.Level,
        Margin = answer.Season is { } season ? SeasonMarginNode.Of(season) : null,
        Batches = [.. (answer.Season?.Batches ?? []).Select(SeasonBatchNode.Of)],
        BindingLimits = [.. (answer.Season?.BindingLimits ?? []).Select(limit => new SeasonLimitNode(Codes.Of(limit.Kind), limit.Step, limit.From, limit.To, limit.Worth.Amount, limit.Range?.Low?.Amount, limit.Range?.High?.Amount))],
        Flagged = FlaggedNode.Of(answer.Suspicions),
        Cautions = CautionNode.Of(answer.Cautions),
        Sources = SourceNode.Of(SeasonAnswer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.SeasonDocument);
}

/// <summary>The margin of the season: low and high where all batches meet the same fate, and where each meets its own.</summary>
internal sealed record SeasonMarginNode(double Mean, double? Low, double? High, double? LowApart, double? HighApart, double WorstTenth)
{
    public static SeasonMarginNode Of(SeasonComparison season)
    {
        OutcomeNode alike = OutcomeNode.Of(season.Margin, money => money.Amount);
        return new(alike.Mean, alike.Low, alike.High, season.MarginApart.Low?.Amount, season.MarginApart.High?.Amount, season.BadCase.Amount);
    }
}

/// <summary>A limit that keeps the season from bringing more: low and high where all batches meet the same fate.</summary>
internal sealed record SeasonLimitNode(string Limit, string Step, DateOnly From, DateOnly To, double Worth, double? Low, double? High);

/// <summary>A batch: whether it is raised, when, and every way that was considered.</summary>
internal sealed record SeasonBatchNode(
    string Name, bool Fits, DateOnly? Placed, DateOnly? MovedOut, DateOnly? Killed, double GivenUp, double? GivenUpLow, double? GivenUpHigh, IReadOnlyList<string> GaveWayTo, IReadOnlyList<string> FreedFor, int FreedDays, string Why, IReadOnlyList<SeasonWayNode> Dates)
{
    public static SeasonBatchNode Of(SeasonOutcome batch) => new(
        batch.Candidate.Name,
        batch.Chosen is not null,
        batch.Chosen?.Option.Placed,
        batch.Chosen?.Option.MovedOut,
        batch.Chosen?.Option.Killed,
        batch.GivenUp.Amount,
        batch.GivenUpRange?.Low?.Amount,
        batch.GivenUpRange?.High?.Amount,
        batch.GaveWayTo,
        batch.FreedFor,
        batch.FreedDays,
        batch.ToString(),
        [.. batch.Days.Select(day => SeasonWayNode.Of(day, day == batch.Chosen, day == batch.Alone))]);
}

/// <summary>A way to raise a batch.</summary>
internal sealed record SeasonWayNode(
    DateOnly Placed, DateOnly Date, double AgeDays, OutcomeNode Head, OutcomeNode MeanKg, OutcomeNode Margin, double MarginPerShelterDay, bool Chosen, bool BestAlone)
{
    public static SeasonWayNode Of(SeasonDay day, bool chosen, bool alone) => new(
        day.Option.Placed,
        day.Option.Killed,
        day.Harvest.Age.Days,
        OutcomeNode.Of(day.Harvest.Head, birds => birds),
        OutcomeNode.Of(day.Harvest.MeanWeight, weight => weight.Kilograms),
        OutcomeNode.Of(day.Harvest.Margin, money => money.Amount),
        day.Harvest.MarginPerShelterDay.Value.Amount,
        chosen,
        alone);
}
