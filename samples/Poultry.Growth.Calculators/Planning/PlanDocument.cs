using System.Text.Json;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The answer of <c>plan</c> for programs.</summary>
internal sealed record PlanDocument
{
    public required string File { get; init; }

    public required string Name { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    /// <summary>Chicks placed.</summary>
    public required int Chicks { get; init; }

    public required IReadOnlyList<PlanOptionNode> Options { get; init; }

    public required IReadOnlyList<BeatsNode> ChanceBeats { get; init; }

    /// <summary>Every day between those offered; none where it was not asked for.</summary>
    public required IReadOnlyList<EveryDayNode> EveryDay { get; init; }

    public required CalendarCostNode? CalendarCost { get; init; }

    /// <summary>The batch on two days, the best first; none where it was not asked for.</summary>
    public required IReadOnlyList<SplitNode> Splits { get; init; }

    public required BreakEvenNode? BreakEvenPrice { get; init; }

    public required OutcomeNode MarginalDay { get; init; }

    public required WeighInValueNode? WeighInValue { get; init; }

    public required IReadOnlyList<DriverNode> SpreadDrivers { get; init; }

    public required string Recommendation { get; init; }

    public required DateOnly RecommendedDate { get; init; }

    public required IReadOnlyList<TimelineNode> Timeline { get; init; }

    /// <summary>What came from where.</summary>
    public required IReadOnlyList<OriginNode> Origins { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static PlanDocument Of(PlanAnswer answer)
    {
        HarvestComparison comparison = answer.Comparison;
        return new()
        {
            File = answer.File,
            Name = answer.Plan.Name,
            Level = comparison.Recommended.Margin.Interval.Level,
            Chicks = answer.Plan.Birds.Placed,
            Options = [.. comparison.Options.Select(PlanOptionNode.Of)],
            ChanceBeats =
            [
                .. from row in Enumerable.Range(0, comparison.Options.Count)
                   from column in Enumerable.Range(0, comparison.Options.Count)
                   where row != column
                   select new BeatsNode(comparison.Options[row].Date.Date, comparison.Options[column].Date.Date, comparison.ChanceBeats(row, column).Percent),
            ],
            EveryDay = [.. answer.Calendar?.Days.Select(EveryDayNode.Of) ?? []],
            CalendarCost = answer.Calendar is { } calendar ? CalendarCostNode.Of(calendar) : null,
            Splits = [.. answer.Splits.Select(SplitNode.Of)],
            BreakEvenPrice = comparison.Recommended.BreakEvenPrice is { } price ? BreakEvenNode.Of(price) : null,
            MarginalDay = OutcomeNode.Of(comparison.MarginalDay, money => money.Amount),
            WeighInValue = answer.WeighInWorth is { } worth ? new(answer.WeighIn.Days, PlanAnswer.BirdsWeighed, worth.Amount) : null,
            SpreadDrivers = [.. comparison.SpreadDrivers.Select(driver => new DriverNode(driver.Name, driver.Share.Percent))],
            Recommendation = comparison.Recommendation,
            RecommendedDate = comparison.Recommended.Date.Date,
            Timeline = [.. answer.Timeline.Select(TimelineNode.Of)],
            Origins = [.. answer.Plan.Origins.Select(origin => new OriginNode(origin.Part, origin.Source))],
            Flagged = FlaggedNode.Of(answer.Suspicions),
            Cautions = CautionNode.Of(answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.PlanDocument);
}

/// <summary>The chance that a day beats another.</summary>
internal sealed record BeatsNode(DateOnly Date, DateOnly Other, double Percent);

/// <summary>What a weigh-in before the deadline is worth.</summary>
internal sealed record WeighInValueNode(double AgeDays, int Birds, double Worth);

/// <summary>Where a part of the plan comes from.</summary>
internal sealed record OriginNode(string Part, string Source);

/// <summary>What the spread comes from.</summary>
internal sealed record DriverNode(string Name, double Percent);

/// <summary>Something to do.</summary>
internal sealed record TimelineNode(DateOnly Date, string? Time, string What, string Why, string Record, string? Caution)
{
    public static TimelineNode Of(TimelineEntry entry) => new(
        entry.Date, entry.Time?.ToString("HH':'mm", System.Globalization.CultureInfo.InvariantCulture), entry.What, entry.Why, entry.Record, entry.Caution?.Text);
}
