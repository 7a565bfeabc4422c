using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>A line of the mass balance; what comes in beside the birds has the kind water-in.</summary>
internal sealed record BalanceNode(string Part, string Kind, double Kg, double LowKg, double HighKg, double PercentOfLive)
{
    public static IReadOnlyList<BalanceNode> Of(CarcassBalance balance) =>
    [
        .. balance.Lines.Select(line => new BalanceNode(
            line.Name, Codes.Of(line.Kind), line.Weight.Likely.Kilograms, line.Weight.Low.Kilograms, line.Weight.High.Kilograms, line.PercentOfLive)),
    ];
}
