using System.Text.Json;
using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>figures</c> for programs; null where what a figure needs was not given.</summary>
internal sealed record FiguresDocument
{
    public required double LiveWeightKg { get; init; }

    public required double MeanLiveWeightKg { get; init; }

    public required double LivabilityPercent { get; init; }

    public required double AverageDailyGainG { get; init; }

    public required double FeedConversionLive { get; init; }

    public required double? FeedConversionGain { get; init; }

    public required double? FeedConversionMortalityAdjusted { get; init; }

    public required IReadOnlyList<WeightCorrectedNode> FeedConversionWeightCorrected { get; init; }

    public required double? CaloricConversionKcalPerKg { get; init; }

    public required double ProductionEfficiencyFactor { get; init; }

    public required double BroilerIndex { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static FiguresDocument Of(BatchFigures figures) => new()
    {
        LiveWeightKg = figures.Batch.LiveWeight.Kilograms,
        MeanLiveWeightKg = figures.MeanLiveWeight.Kilograms,
        LivabilityPercent = figures.Livability.Percent,
        AverageDailyGainG = figures.AverageDailyGain.GramsPerDay,
        FeedConversionLive = figures.ByLiveWeight.Ratio,
        FeedConversionGain = figures.ByGain?.Ratio,
        FeedConversionMortalityAdjusted = figures.MortalityAdjusted?.Ratio,
        FeedConversionWeightCorrected =
        [
            .. figures.WeightCorrected.Select(corrected => new WeightCorrectedNode(
                corrected.Rule.Model.Id, corrected.Rule.Reference.Kilograms, corrected.Ratio, corrected.Rule.Model.Ranges is [var range] ? range.ToString() : null, corrected.Caution is null)),
        ],
        CaloricConversionKcalPerKg = figures.CaloricConversion is { } caloric ? Kilocalories.PerKilogram(caloric) : null,
        ProductionEfficiencyFactor = figures.ProductionEfficiencyFactor,
        BroilerIndex = figures.BroilerIndex,
        Cautions = CautionNode.Of(figures.Cautions),
        Sources = SourceNode.Of(FiguresPage.SourcesOf(figures)),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.FiguresDocument);
}
