using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>How many birds to have cut, and the worth of every share tried.</summary>
internal sealed record AdviceNode(double CutPercent, string Reason, IReadOnlyList<AdviceShareNode> Shares)
{
    public static AdviceNode? Of(CutAdvice? advice) => advice is null ? null : new(
        advice.Best.Share.Percent, advice.Reason, [.. advice.Shares.Select(share => new AdviceShareNode(share.Share.Percent, share.Return.Value.Amount))]);
}
