using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The chance that more than a share of the birds is affected.</summary>
internal sealed record ChanceNode(double Percent, double ChancePercent)
{
    public static IReadOnlyList<ChanceNode> Of(BatchPrevalence batch) =>
        [.. SpreadNode.Limits.Select(percent => new ChanceNode(percent, batch.ChanceAbove(BirdPrevalence.FromPercent(percent)).Percent))];
}
