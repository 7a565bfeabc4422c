using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The dressing ratio that was used.</summary>
internal sealed record DressingNode(string Name, double Percent, double LowPercent, double HighPercent, string Basis, string MeasuredOn)
{
    public static DressingNode Of(DressingRatio ratio) => new(
        ratio.Name, ratio.Ratio.Likely.Percent, ratio.Ratio.Low.Percent, ratio.Ratio.High.Percent, ratio.Basis.ToString(), ratio.MeasuredOn.ToString());
}
