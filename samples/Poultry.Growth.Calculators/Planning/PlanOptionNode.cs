using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>One day of killing, for programs. Money in the farm's currency.</summary>
internal sealed record PlanOptionNode
{
    public required DateOnly Date { get; init; }

    public required double AgeDays { get; init; }

    public required OutcomeNode Head { get; init; }

    public required OutcomeNode MeanKg { get; init; }

    public required OutcomeNode? ShareInBandPercent { get; init; }

    public required OutcomeNode FeedKg { get; init; }

    public required double? DensityMetPercent { get; init; }

    public required OutcomeNode SoldKg { get; init; }

    public required OutcomeNode Revenue { get; init; }

    public required OutcomeNode Cost { get; init; }

    public required OutcomeNode Margin { get; init; }

    public required double MarginWorstTenth { get; init; }

    public required double ChanceOfLossPercent { get; init; }

    public required double OrdersFilledPercent { get; init; }

    public required double ChanceOrdersMissedPercent { get; init; }

    public required OutcomeNode MarginPerBird { get; init; }

    public required OutcomeNode? MarginPerKg { get; init; }

    public required OutcomeNode MarginPerShelterDay { get; init; }

    public required OutcomeNode DeadOnArrival { get; init; }

    public required OutcomeNode Condemned { get; init; }

    public required OutcomeNode MyopathyLossKg { get; init; }

    public required IReadOnlyList<PackOutlookNode> Packs { get; init; }

    public required double ChanceTooManyBirdsPercent { get; init; }

    public required double ChanceTooFewBirdsPercent { get; init; }

    public required DateOnly DecideBy { get; init; }

    public static PlanOptionNode Of(HarvestOption option) => new()
    {
        Date = option.Date.Date,
        AgeDays = option.Age.Days,
        Head = OutcomeNode.Of(option.Head, birds => birds),
        MeanKg = OutcomeNode.Of(option.MeanWeight),
        ShareInBandPercent = option.ShareWanted is { } share ? OutcomeNode.Of(share, part => part.Percent) : null,
        FeedKg = OutcomeNode.Of(option.Feed),
        DensityMetPercent = option.ChanceDensityMet?.Percent,
        SoldKg = OutcomeNode.Of(option.Sold),
        Revenue = OutcomeNode.Of(option.Revenue),
        Cost = OutcomeNode.Of(option.Cost),
        Margin = OutcomeNode.Of(option.Margin),
        MarginWorstTenth = option.BadCase.Amount,
        ChanceOfLossPercent = option.ChanceOfLoss.Percent,
        OrdersFilledPercent = option.OrdersFilled.Percent,
        ChanceOrdersMissedPercent = option.ChanceOrdersMissed.Percent,
        MarginPerBird = OutcomeNode.Of(option.MarginPerBird),
        MarginPerKg = option.MarginPerKilogram is { } margin ? OutcomeNode.Of(margin) : null,
        MarginPerShelterDay = OutcomeNode.Of(option.MarginPerShelterDay),
        DeadOnArrival = OutcomeNode.Of(option.DeadOnArrival, birds => birds),
        Condemned = OutcomeNode.Of(option.Condemned, birds => birds),
        MyopathyLossKg = OutcomeNode.Of(option.LesionLoss),
        Packs = [.. option.Packs.Select(PackOutlookNode.Of)],
        ChanceTooManyBirdsPercent = option.ChanceTooManyBirds.Percent,
        ChanceTooFewBirdsPercent = option.ChanceTooFewBirds.Percent,
        DecideBy = option.DecideBy,
    };
}
