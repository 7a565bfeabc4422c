using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A counted share with its limits, all fractions from 0 to 1.</summary>
internal sealed record RateNode(double Estimate, LimitsNode Wilson, LimitsNode WilsonCorrected, LimitsNode ClopperPearson, LimitsNode Jeffreys)
{
    public static RateNode Of(FoundShare share) => new(
        share.Estimate.Share.Fraction, LimitsNode.Of(share.Wilson), LimitsNode.Of(share.WilsonCorrected), LimitsNode.Of(share.ClopperPearson), LimitsNode.Of(share.Jeffreys));
}
