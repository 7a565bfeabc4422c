using System.Text.Json;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The answer of <c>reconcile</c> for programs.</summary>
internal sealed record ReconcileDocument
{
    public required string File { get; init; }

    public required string PlantFile { get; init; }

    public required string Name { get; init; }

    public required DateOnly Killed { get; init; }

    public required double AgeDays { get; init; }

    /// <summary>What the forecast knew.</summary>
    public required string ForecastFrom { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    public required HeadCountNode HeadCount { get; init; }

    public required IReadOnlyList<CondemnedNode> Condemned { get; init; }

    public required IReadOnlyList<ReconciledNode> Differences { get; init; }

    /// <summary>Null where the feed to the end was not written down.</summary>
    public required FiguresDocument? Indices { get; init; }

    /// <summary>Null where no history was named.</summary>
    public required LearnedNode? Learned { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static ReconcileDocument Of(ReconcileAnswer answer)
    {
        Reconciliation reconciled = answer.Reconciled;
        return new()
        {
            File = answer.File,
            PlantFile = answer.SheetFile,
            Name = reconciled.Plan.Name,
            Killed = reconciled.Sheet.Killed,
            AgeDays = reconciled.Age.Days,
            ForecastFrom = reconciled.Knew,
            Level = reconciled.Figures[0].Interval.Level,
            HeadCount = HeadCountNode.Of(reconciled.HeadCount),
            Condemned = [.. reconciled.Sheet.Condemned.Select(line => new CondemnedNode(line.Reason, line.Birds, line.IsWholeBirds, line.Weight?.Kilograms))],
            Differences = [.. reconciled.Figures.Select(ReconciledNode.Of)],
            Indices = reconciled.Indices is { } indices ? FiguresDocument.Of(indices) : null,
            Learned = answer.After is { } after ? new(answer.History!, after.Kind.ToString(), after.Batches.Count, [.. answer.Learned.Select(LearnedPartNode.Of)]) : null,
            Flagged = FlaggedNode.Of(answer.Suspicions),
            Cautions = CautionNode.Of(answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.ReconcileDocument);
}

/// <summary>Where the birds have gone: placed is the sum of all others up to the remainder.</summary>
internal sealed record HeadCountNode(
    int Placed, int Dead, int Culled, int Missing, int DeadOnArrival, int Condemned, int Kept, int Sold, int OnHand, int Remainder, int RemainderOnFarm, int RemainderAtPlant)
{
    public static HeadCountNode Of(HeadBalance head) => new(
        head.Placed, head.Dead, head.Culled, head.Missing, head.DeadOnArrival, head.Condemned, head.Kept, head.Sold, head.OnHand, head.Remainder, head.RemainderOnFarm, head.RemainderAtPlant);
}

/// <summary>What the inspector took out.</summary>
internal sealed record CondemnedNode(string Reason, int Birds, bool WholeBirds, double? Kg);

/// <summary>A figure of the forecast beside what came of it, in the unit stated.</summary>
internal sealed record ReconciledNode(
    string Figure, string Name, string Unit, double Forecast, double? Low, double? High, double? Actual, bool? Inside, double? Difference, IReadOnlyList<PartNode> Parts, double? LeftOpen)
{
    public static ReconciledNode Of(ReconciledFigure figure) => new(
        figure.Code,
        figure.Name,
        UnitOf(figure.Unit),
        figure.Forecast,
        figure.Interval.Low,
        figure.Interval.High,
        figure.Actual,
        figure.IsInside,
        figure.Difference,
        [.. figure.Parts.Select(part => new PartNode(part.Cause, part.Difference))],
        figure.LeftOpen);

    public static string UnitOf(ReconciledUnit unit) => unit == ReconciledUnit.Kilograms ? "kg" : Codes.Of(unit);
}

/// <summary>A part of a difference.</summary>
internal sealed record PartNode(string Cause, double Difference);

/// <summary>What was learned.</summary>
internal sealed record LearnedNode(string History, string Kind, int Batches, IReadOnlyList<LearnedPartNode> Parts);

/// <summary>A part of the next plan, before and after the batch was added.</summary>
internal sealed record LearnedPartNode(string Part, string Name, string Unit, int Batches, OutcomeNode Before, OutcomeNode After)
{
    public static LearnedPartNode Of(LearnedChange change) => new(
        change.Code,
        change.Name,
        ReconciledNode.UnitOf(change.Unit),
        change.Batches,
        new() { Mean = change.Before, Low = change.BeforeInterval.Low, High = change.BeforeInterval.High },
        new() { Mean = change.After, Low = change.AfterInterval.Low, High = change.AfterInterval.High });
}
