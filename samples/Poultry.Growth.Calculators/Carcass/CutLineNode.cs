using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The birds of one line of the order.</summary>
internal sealed record CutLineNode(string Cut, double Birds, double LiveKg, double CarcassKg, double CuttingLossKg)
{
    public static IReadOnlyList<CutLineNode> Of(PlantReturn back) =>
    [
        .. back.Lines.Select(line => new CutLineNode(
            line.Line.Name, line.ExpectedBirds, line.LiveWeight.Kilograms, line.Carcass.Kilograms, line.CuttingLoss.Kilograms)),
    ];
}
