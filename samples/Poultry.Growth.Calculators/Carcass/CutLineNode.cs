namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The birds of one line of the order; low and high as the carcasses may be off.</summary>
internal sealed record CutLineNode(string Cut, double Birds, double LiveKg, double CarcassKg, double LowCarcassKg, double HighCarcassKg, double CuttingLossKg)
{
    public static IReadOnlyList<CutLineNode> Of(CutsAnswer answer) =>
    [
        .. answer.Return.Lines.Zip(answer.Light.Lines, answer.Heavy.Lines).Select(all => new CutLineNode(
            all.First.Line.Name,
            all.First.ExpectedBirds,
            all.First.LiveWeight.Kilograms,
            all.First.Carcass.Kilograms,
            all.Second.Carcass.Kilograms,
            all.Third.Carcass.Kilograms,
            all.First.CuttingLoss.Kilograms)),
    ];
}
