using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>A batch killed on two days, for programs. Money in the farm's currency.</summary>
internal sealed record SplitNode
{
    public required DateOnly FirstDate { get; init; }

    public required DateOnly SecondDate { get; init; }

    public required double FirstSharePercent { get; init; }

    /// <summary>largest or as-caught.</summary>
    public required string FirstBirds { get; init; }

    public required OutcomeNode FirstHead { get; init; }

    public required OutcomeNode SecondHead { get; init; }

    public required OutcomeNode FirstMeanKg { get; init; }

    public required OutcomeNode SecondMeanKg { get; init; }

    public required OutcomeNode FeedKg { get; init; }

    public required double? DensityMetPercent { get; init; }

    public required OutcomeNode SoldKg { get; init; }

    public required OutcomeNode Revenue { get; init; }

    public required OutcomeNode Cost { get; init; }

    public required OutcomeNode Margin { get; init; }

    public required double MarginWorstTenth { get; init; }

    public required double ChanceOfLossPercent { get; init; }

    public required double OrdersFilledPercent { get; init; }

    /// <summary>Over the single day recommended.</summary>
    public required OutcomeNode Gain { get; init; }

    public required double ChanceBetterPercent { get; init; }

    public required double ChanceTooManyBirdsPercent { get; init; }

    public required double ChanceTooFewBirdsPercent { get; init; }

    public required DateOnly DecideBy { get; init; }

    public static SplitNode Of(HarvestSplit split) => new()
    {
        FirstDate = split.First.Date,
        SecondDate = split.Second.Date,
        FirstSharePercent = split.Share.Percent,
        FirstBirds = Codes.Of(split.Birds),
        FirstHead = OutcomeNode.Of(split.FirstHead, birds => birds),
        SecondHead = OutcomeNode.Of(split.SecondHead, birds => birds),
        FirstMeanKg = OutcomeNode.Of(split.FirstWeight),
        SecondMeanKg = OutcomeNode.Of(split.SecondWeight),
        FeedKg = OutcomeNode.Of(split.Feed),
        DensityMetPercent = split.ChanceDensityMet?.Percent,
        SoldKg = OutcomeNode.Of(split.Sold),
        Revenue = OutcomeNode.Of(split.Revenue),
        Cost = OutcomeNode.Of(split.Cost),
        Margin = OutcomeNode.Of(split.Margin),
        MarginWorstTenth = split.BadCase.Amount,
        ChanceOfLossPercent = split.ChanceOfLoss.Percent,
        OrdersFilledPercent = split.OrdersFilled.Percent,
        Gain = OutcomeNode.Of(split.Gain),
        ChanceBetterPercent = split.ChanceBetter.Percent,
        ChanceTooManyBirdsPercent = split.ChanceTooManyBirds.Percent,
        ChanceTooFewBirdsPercent = split.ChanceTooFewBirds.Percent,
        DecideBy = split.DecideBy,
    };
}
