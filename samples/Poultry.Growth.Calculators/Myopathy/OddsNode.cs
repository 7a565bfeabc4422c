using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>An odds ratio with its range.</summary>
internal sealed record OddsNode(string Code, string Name, double OddsRatio, double Low, double High, string HowKnown, string Basis)
{
    public static OddsNode Of(OddsRatio ratio) => new(ratio.Code, ratio.Name, ratio.Value, ratio.Low, ratio.High, Codes.Of(ratio.HowKnown), ratio.Basis);
}
