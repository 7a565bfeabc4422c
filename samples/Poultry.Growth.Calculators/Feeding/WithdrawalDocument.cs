using System.Text.Json;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The answer of <c>withdrawal</c> for programs.</summary>
internal sealed record WithdrawalDocument
{
    public required double OffFeedHours { get; init; }

    public required double RoadHours { get; init; }

    public required double LiveWeightKg { get; init; }

    public required double LowKg { get; init; }

    public required double HighKg { get; init; }

    public required double ShrinkPercent { get; init; }

    /// <summary>The least loss of the sources; no interval with a chance.</summary>
    public required double LowPercent { get; init; }

    public required double HighPercent { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static WithdrawalDocument Of(WithdrawalAnswer answer) => new()
    {
        OffFeedHours = answer.OffFeed.Hours,
        RoadHours = answer.OnRoad.Hours,
        LiveWeightKg = answer.Shrink.LiveWeight.Kilograms,
        LowKg = answer.Shrink.LowLiveWeight.Kilograms,
        HighKg = answer.Shrink.HighLiveWeight.Kilograms,
        ShrinkPercent = answer.Shrink.Share.Percent,
        LowPercent = answer.Shrink.LowShare.Percent,
        HighPercent = answer.Shrink.HighShare.Percent,
        Cautions = CautionNode.Of(answer.Shrink.Cautions),
        Sources = SourceNode.Of(WithdrawalAnswer.Sources),
    };

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.WithdrawalDocument);
}
