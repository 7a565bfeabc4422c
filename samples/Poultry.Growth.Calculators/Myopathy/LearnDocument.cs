using System.Text.Json;
using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer of <c>myopathy learn</c> for programs.</summary>
internal sealed record LearnDocument
{
    public required IReadOnlyList<InspectionNode> Inspections { get; init; }

    public required int BirdsOpened { get; init; }

    public required int BirdsFound { get; init; }

    public required double Level { get; init; }

    /// <summary>Half of the farm's batches have less.</summary>
    public required PercentNode FarmLevel { get; init; }

    /// <summary>The mean of its batches in the long run.</summary>
    public required PercentNode FarmRate { get; init; }

    /// <summary>Standard deviation of the logit of the share.</summary>
    public required NumberNode BetweenBatches { get; init; }

    public required SpreadNode NextBatch { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static LearnDocument Of(FarmLesionRate farm, double level)
    {
        Estimate<double> between = farm.BetweenBatchesLogit(level);
        return new()
        {
            Inspections = [.. farm.Inspections.Select(inspection => new InspectionNode(inspection.Batch, inspection.Killed, inspection.Opened, inspection.Found, inspection.Detection.Percent))],
            BirdsOpened = farm.Opened,
            BirdsFound = farm.Found,
            Level = level,
            FarmLevel = PercentNode.Of(farm.Level(level)),
            FarmRate = PercentNode.Of(farm.LongRunRate(level)),
            BetweenBatches = new(between.Value, between.Interval.Low!.Value, between.Interval.High!.Value),
            NextBatch = SpreadNode.Of(farm.NextBatch, level),
            Cautions = CautionNode.Of(farm.Cautions),
            Sources = SourceNode.Of(FarmLesionRate.Model.Citations),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.LearnDocument);
}
